// The pull list as the phone shows it: what the server last said, and what waits on this phone to be sent. Pure.
import { type LineProgress, lineMissing, lineOpen, NOTHING_DONE, type PullEvent, pullProgress } from "../pulls/pull-progress";

/** A line of the list, as much of it as the field needs. */
export type FieldLine = {
  readonly lineId: string;
  readonly letter: string;
  readonly bedName: string;
  /** Name parts are set on the phone as on paper. */
  readonly taxon: {
    readonly botanical: string;
    readonly cultivar: string | null;
    readonly group: string | null;
    readonly tradeDesignation: string | null;
    readonly commonNames: readonly string[];
  };
  readonly taxonId: string;
  readonly sizeText: string;
  readonly wanted: number;
  readonly handling: string;
  readonly cautions: readonly string[];
  readonly remarks: string;
};

/** What the server said last; kept on the phone. `pickable`: plants in stock that may be pulled instead. */
export type FieldSnapshot = {
  readonly jobId: string;
  readonly jobName: string;
  readonly stops: readonly { readonly place: string; readonly lines: readonly FieldLine[] }[];
  readonly events: readonly PullEvent[];
  readonly pickable: readonly { readonly taxonId: string; readonly name: string; readonly common: string; readonly free: number }[];
  /** ISO instant. */
  readonly at: string;
};

/** An event as it waits on the phone: `knew` as the server wants it. */
export type QueuedEvent = Omit<PullEvent, "conflict"> & { readonly knew: number };

export type ShownLine = { readonly line: FieldLine; readonly progress: LineProgress; readonly open: number; readonly missing: number; readonly waiting: number };
export type ShownStop = { readonly place: string; readonly lines: readonly ShownLine[]; readonly open: number };
export type ShownList = { readonly stops: readonly ShownStop[]; readonly wanted: number; readonly pulled: number; readonly missing: number; readonly open: number };

/** Events that are still to be sent: those the server already has are not among them. */
export function queueLeft(queue: readonly QueuedEvent[], events: readonly PullEvent[]): QueuedEvent[] {
  const known = new Set(events.map((event) => event.id));
  return queue.filter((event) => !known.has(event.id));
}

/** How many events of a line this phone knows of: what the server said, and what waits here. */
export function eventsKnown(lineId: string, snapshot: Pick<FieldSnapshot, "events">, queue: readonly QueuedEvent[]): number {
  return snapshot.events.filter((event) => event.lineId === lineId).length + queueLeft(queue, snapshot.events).filter((event) => event.lineId === lineId).length;
}

/** The list with everything counted in that is known here. */
export function fieldList(snapshot: FieldSnapshot, queue: readonly QueuedEvent[]): ShownList {
  const left = queueLeft(queue, snapshot.events);
  const progress = pullProgress([...snapshot.events, ...left.map((event) => ({ ...event, conflict: false }))]);
  const stops = snapshot.stops.map(({ place, lines }): ShownStop => {
    const shown = lines.map((line): ShownLine => {
      const done = progress.get(line.lineId) ?? NOTHING_DONE;
      return { line, progress: done, open: lineOpen(line.wanted, done), missing: lineMissing(done), waiting: left.filter((event) => event.lineId === line.lineId).length };
    });
    return { place, lines: shown, open: shown.reduce((sum, { open }) => sum + open, 0) };
  });
  const all = stops.flatMap(({ lines }) => lines);
  const total = (of: (line: ShownLine) => number) => all.reduce((sum, line) => sum + of(line), 0);
  return { stops, wanted: total(({ line }) => line.wanted), pulled: total((l) => l.progress.pulled), missing: total((l) => l.missing), open: total((l) => l.open) };
}
