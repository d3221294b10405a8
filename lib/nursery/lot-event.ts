// What was done to a lot, as its history tells it.
import { plantsText } from "./count-words";

export const LOT_EVENT_KINDS = ["add", "count", "change", "move", "write off", "reserve", "release", "pull", "list", "delete", "restore"] as const;
export type LotEventKind = (typeof LOT_EVENT_KINDS)[number];

/** What of a lot its history remembers. `place` in words, dates ISO, money cents a plant. */
export type LotState = {
  readonly quantity: number;
  readonly reserved: number;
  readonly size: string;
  readonly place: string;
  readonly readyFrom: string | null;
  readonly priceCents: number | null;
  readonly costCents: number | null;
  readonly grade: string;
  readonly remarks: string;
};

/** Of the state before and after an event only what differs is kept, and how many there were where that is not among it. */
export type LotEvent = {
  readonly id: string;
  readonly lotId: string;
  /** ISO instant. */
  readonly at: string;
  readonly who: string;
  readonly kind: LotEventKind;
  readonly why: string;
  readonly before: Partial<LotState>;
  readonly after: Partial<LotState>;
};

const dollars = (cents: number | null | undefined): string => (cents === null || cents === undefined ? "not priced" : `$${(cents / 100).toFixed(2)}`);
const said = (text: string | null | undefined, empty: string): string => (text ? `“${text}”` : empty);

/** The fields that differ between two states, before and after. */
export function lotStateDiffers(before: Partial<LotState>, after: Partial<LotState>): { readonly before: Partial<LotState>; readonly after: Partial<LotState> } {
  const keys = [...new Set([...Object.keys(before), ...Object.keys(after)])] as (keyof LotState)[];
  const differing = keys.filter((key) => before[key] !== after[key]);
  const part = (state: Partial<LotState>) => Object.fromEntries(differing.filter((key) => state[key] !== undefined).map((key) => [key, state[key]]));
  return { before: part(before), after: part(after) };
}

const FIELDS: readonly (readonly [keyof LotState, string, (state: Partial<LotState>) => string])[] = [
  ["quantity", "on hand", (s) => (s.quantity ?? 0).toLocaleString("en-US")],
  ["reserved", "promised", (s) => (s.reserved ?? 0).toLocaleString("en-US")],
  ["size", "size", (s) => said(s.size, "none")],
  ["place", "place", (s) => said(s.place, "none")],
  ["readyFrom", "ready from", (s) => s.readyFrom ?? "now"],
  ["priceCents", "price", (s) => dollars(s.priceCents)],
  ["costCents", "cost", (s) => (s.costCents === null || s.costCents === undefined ? "not known" : dollars(s.costCents))],
  ["grade", "grade", (s) => said(s.grade, "none")],
  ["remarks", "remarks", (s) => said(s.remarks, "none")],
];

const VERBS: Record<LotEventKind, string> = {
  add: "Added",
  count: "Counted",
  change: "Changed",
  move: "Moved",
  "write off": "Written off",
  reserve: "Promised",
  release: "Promise released",
  pull: "Pulled",
  list: "From a list",
  delete: "Deleted",
  restore: "Brought back",
};

/** What happened, in one line: "Written off 3 plants: on hand 12 → 9". The reason and the person are told beside it. */
export function lotEventText({ kind, before, after }: Pick<LotEvent, "kind" | "before" | "after">): string {
  const [held, holds] = [before.quantity ?? after.quantity ?? 0, after.quantity ?? before.quantity ?? 0];
  const [promised, promises] = [before.reserved ?? after.reserved ?? 0, after.reserved ?? before.reserved ?? 0];
  const moved = kind === "reserve" || kind === "release" ? Math.abs(promises - promised) : kind === "write off" || kind === "pull" ? held - holds : null;
  // A field is told as a change where it had a value before, else as it is since.
  const changes = FIELDS.flatMap(([key, name, text]) => {
    if (after[key] === undefined || before[key] === after[key]) return [];
    return before[key] === undefined
      ? after[key] === null || after[key] === "" || after[key] === 0
        ? []
        : [`${name} ${text(after)}`]
      : [`${name} ${text(before)} → ${text(after)}`];
  });
  const right = kind === "count" && held === holds ? `${holds.toLocaleString("en-US")} on hand, as was known` : "";
  const back = moved !== null && moved < 0 ? `${plantsText(-moved)} back` : moved === null || moved === 0 ? "" : plantsText(moved);
  const words = [right, ...changes].filter(Boolean).join("; ");
  return [[VERBS[kind], back].filter(Boolean).join(" "), words].filter(Boolean).join(": ");
}
