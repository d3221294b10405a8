// How far each line of a pull list is, summed up from what was done about it in the field. Events only ever add up, so the order in which phones send them does not matter.

/**
 * pulled, short (not to be found), damaged and swapped (another plant was pulled instead) come from the field and carry plants (a correction carries a negative
 * number); so does substituted, by which the office settles plants that are missing. A note or a photograph carries none.
 */
export const PULL_EVENT_KINDS = ["pulled", "short", "damaged", "swapped", "substituted", "note", "photo"] as const;
export type PullEventKind = (typeof PULL_EVENT_KINDS)[number];

export type PullEvent = {
  readonly id: string;
  readonly lineId: string;
  readonly kind: PullEventKind;
  readonly quantity: number;
  readonly note: string;
  /** For "swapped" and "substituted": the taxon instead, by id. For "photo": the picture's address. */
  readonly data: string;
  readonly who: string;
  /** ISO instant on the phone. */
  readonly doneAt: string;
  /** Somebody else had changed the line meanwhile, or more was done than was left: to be looked at. */
  readonly conflict: boolean;
};

export type LineProgress = {
  readonly pulled: number;
  readonly short: number;
  readonly damaged: number;
  readonly swapped: number;
  readonly substituted: number;
  /** Taxon of the latest swap. */
  readonly swappedTo: string | null;
  readonly notes: readonly string[];
  readonly photos: readonly string[];
  readonly conflict: boolean;
  readonly events: number;
};

export const NOTHING_DONE: LineProgress = { pulled: 0, short: 0, damaged: 0, swapped: 0, substituted: 0, swappedTo: null, notes: [], photos: [], conflict: false, events: 0 };

function progressAdded(before: LineProgress, event: PullEvent): LineProgress {
  const after = { ...before, conflict: before.conflict || event.conflict, events: before.events + 1, notes: event.note ? [...before.notes, event.note] : before.notes };
  switch (event.kind) {
    case "pulled":
      return { ...after, pulled: before.pulled + event.quantity };
    case "short":
      return { ...after, short: before.short + event.quantity };
    case "damaged":
      return { ...after, damaged: before.damaged + event.quantity };
    case "swapped":
      return { ...after, swapped: before.swapped + event.quantity, swappedTo: event.data || before.swappedTo };
    case "substituted":
      return { ...after, substituted: before.substituted + event.quantity };
    case "photo":
      return { ...after, photos: [...before.photos, event.data] };
    case "note":
      return after;
  }
}

/** Progress by line. An event that came twice (the same id) counts once. Sums are the same in any order of events; notes and photographs come by their time. */
export function pullProgress(events: readonly PullEvent[]): ReadonlyMap<string, LineProgress> {
  const byId = new Map(events.map((event) => [event.id, event]));
  const lines = new Map<string, LineProgress>();
  for (const event of [...byId.values()].sort((a, b) => a.doneAt.localeCompare(b.doneAt) || a.id.localeCompare(b.id)))
    lines.set(event.lineId, progressAdded(lines.get(event.lineId) ?? NOTHING_DONE, event));
  return lines;
}

/** Plants that the office has still to settle: short, damaged or swapped in the field, and nothing put into the design instead yet. */
export function lineMissing({ short, damaged, swapped, substituted }: LineProgress): number {
  return Math.max(0, short + damaged + swapped - substituted);
}

/** Plants of a line that nothing was done about yet; never below zero. @param wanted what the design wants of it now: substituted plants are no longer among them */
export function lineOpen(wanted: number, progress: LineProgress): number {
  return Math.max(0, wanted - progress.pulled - lineMissing(progress));
}

/** Why a number of plants cannot be recorded for a line, in plain words; null when it can. `wanted` plants are asked for. */
export function pullEventFault(kind: PullEventKind, quantity: number, wanted: number, progress: LineProgress): string | null {
  if (kind === "note" || kind === "photo") return quantity === 0 ? null : "A note or a picture carries no plants.";
  if (!Number.isInteger(quantity) || quantity === 0) return "A whole number of plants, such as 3.";
  if (kind === "substituted") return quantity > lineMissing(progress) ? `Only ${lineMissing(progress)} are missing on this line.` : null;
  if (quantity > 0) {
    const open = lineOpen(wanted, progress);
    return quantity > open ? `Only ${open} of ${wanted} are left to do on this line.` : null;
  }
  const done = progress[kind];
  return -quantity > done ? `Only ${done} were recorded as ${kind}.` : null;
}
