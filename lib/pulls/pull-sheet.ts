// The sheet a crew works from: every plant of a job by the place where it stands, with its ball, weight, how it is dug and who lifts it.

import { stepsText } from "../nursery/count-words";
import type { Lot } from "../nursery/lot";
import { type LineSize, SIZE_UNKNOWN, sizeFromText } from "../nursery/size-read";
import type { Kind } from "../plants/vocabulary";
import { type DigPlan, type DigPlant, digHazards, digPlan } from "./dig-method";
import type { PullTaxon } from "./pull-list";
import { type LineProgress, lineMissing, lineOpen, NOTHING_DONE } from "./pull-progress";
import { type Lift, liftClass, plantWeightLb, type RootBall, rootBall } from "./root-ball";
import { placeOrder, placeText } from "./walking-order";

/** A row of a bed's plant list, counted. */
export type SheetRow = {
  readonly bedId: string;
  readonly bedName: string;
  readonly rowId: string;
  readonly letter: string;
  readonly taxon: PullTaxon;
  readonly plant: DigPlant;
  readonly sizeText: string;
  readonly quantity: number;
  readonly existing: boolean;
  readonly remarks: string;
};

/** Plants of a lot that were promised to a row. `taxon` and `plant` are the lot's own. */
export type SheetPromise = {
  readonly id: string;
  readonly bedId: string;
  readonly rowId: string;
  readonly open: number;
  readonly pulled: number;
  readonly steps: number;
  readonly lot: Lot;
  readonly taxon: PullTaxon;
  readonly plant: DigPlant;
};

export type PullMethod = "carry" | "dig" | "buy" | "not reserved";

export type PullSheetLine = {
  /** The reservation's id, or "bedId:rowId" for plants that no lot is reserved for. */
  readonly lineId: string;
  readonly reservationId: string | null;
  readonly bedId: string;
  readonly bedName: string;
  readonly rowId: string;
  readonly letter: string;
  readonly taxon: PullTaxon;
  readonly sizeText: string;
  readonly size: LineSize;
  /** Plants that the design wants of this line now, those pulled among them. */
  readonly wanted: number;
  readonly pulled: number;
  readonly short: number;
  readonly damaged: number;
  /** Plants of another taxon that were pulled instead and stand in no bed yet. */
  readonly swapped: number;
  /** Plants that nothing was done about yet. */
  readonly open: number;
  /** What the field wrote about it, and the addresses of its photographs. */
  readonly notes: readonly string[];
  readonly photos: readonly string[];
  readonly placeText: string;
  readonly ownerText: string;
  readonly method: PullMethod;
  /** As it travels: also of balls that stand dug in the yard or are bought. */
  readonly ball: RootBall | null;
  /** Planning weight of one plant (of one tray for plugs and flats); null where the size does not tell. */
  readonly weightLb: number | null;
  readonly lift: Lift | null;
  /** How it is dug; null where it is not. */
  readonly dig: string | null;
  readonly digPlan: DigPlan | null;
  readonly hazards: readonly string[];
  readonly remarks: string;
};

export type PullStop = { readonly place: string; readonly lines: readonly PullSheetLine[] };
export type PullSheet = { readonly stops: readonly PullStop[]; readonly plants: number };

export const NOT_RESERVED = "Not reserved";

/** Words for places where plants stand that are dug or potted already. */
const YARD_WORDS = /\b(?:yard|heel(?:ed)?|holding|bench|green ?house|hoop ?house|poly ?house|shade ?house|cold ?frame|dock|shed|pad|lot)\b/i;

/** Whether a lot of the firm's own still stands in the field and has to be dug: no container, and a place with no word of a yard in it. A ball of which no place is said counts as dug already. */
export function lotIsInField({ owner, place, size }: Pick<Lot, "owner" | "place" | "size">): boolean {
  if (owner.kind !== "own" || size.containerGal !== null || size.containerClass !== null) return false;
  if (!["ball", "bare root", "unknown"].includes(size.root)) return false;
  if (size.root === "unknown" && !size.caliperIn && !size.heightIn && !size.spreadIn) return false;
  const words = [place.block, place.row, place.bay].join(" ").trim();
  return words === "" ? size.root === "unknown" : !YARD_WORDS.test(words);
}

/** A field-grown plant whose size names no root is dug with the root that the bed asks for, else with a ball. */
function sizeAsDug(size: LineSize, asked: LineSize): LineSize {
  if (size.root !== "unknown") return size;
  return { ...size, root: asked.root === "bare root" ? "bare root" : "ball" };
}

type Handling = Pick<PullSheetLine, "ball" | "weightLb" | "lift" | "dig" | "digPlan">;

function handlingOf(size: LineSize, kind: Kind, isDug: boolean): Handling {
  const ball = rootBall(size, kind);
  const weightLb = plantWeightLb(size, kind);
  const plan = isDug ? digPlan(ball) : null;
  return { ball, weightLb, lift: weightLb === null ? null : liftClass(weightLb), dig: plan?.method ?? null, digPlan: plan };
}

const sizeRead = (text: string, kind: Kind): LineSize => (text.trim() === "" ? SIZE_UNKNOWN : sizeFromText(text, kind));
const joined = (texts: readonly string[]): string => [...new Set(texts.map((text) => text.trim()).filter(Boolean))].join("; ");

type Context = { readonly digOn: string | null; readonly lastFreezeDay: number | null; readonly progress: ReadonlyMap<string, LineProgress> };

function promisedLine(promise: SheetPromise, row: SheetRow | undefined, { digOn, lastFreezeDay, progress }: Context): PullSheetLine {
  const { lot, taxon, plant } = promise;
  const done = progress.get(promise.id) ?? NOTHING_DONE;
  const asked = sizeRead(row?.sizeText ?? "", taxon.kind);
  const isDug = lotIsInField(lot);
  const read = isDug ? sizeAsDug(lot.size, asked) : lot.size;
  // A lot without a size is taken for what the bed asks for.
  const size = lot.sizeText.trim() === "" && row ? asked : read;
  const own = lot.owner.kind === "own";
  return {
    lineId: promise.id,
    reservationId: promise.id,
    bedId: promise.bedId,
    bedName: row?.bedName ?? "Bed no longer there",
    rowId: promise.rowId,
    letter: row?.letter ?? "",
    taxon,
    sizeText: lot.sizeText || row?.sizeText || "",
    size,
    wanted: promise.open + promise.pulled + lineMissing(done),
    pulled: promise.pulled,
    short: done.short,
    damaged: done.damaged,
    swapped: Math.min(done.swapped, lineMissing(done)),
    open: promise.open,
    notes: done.notes,
    photos: done.photos,
    placeText: placeText(lot),
    ownerText: lot.owner.kind === "own" ? "Own stock" : lot.owner.supplierName,
    method: own ? (isDug ? "dig" : "carry") : "buy",
    ...handlingOf(size, taxon.kind, isDug),
    hazards: isDug ? digHazards(plant, size.root, digOn, lastFreezeDay) : [],
    remarks: joined([
      promise.steps !== 0 && row?.sizeText ? `for ${row.sizeText}, ${stepsText(promise.steps)}` : "",
      lot.readyFrom !== null && digOn !== null && lot.readyFrom > digOn ? `not ready before ${lot.readyFrom}` : "",
      lot.grade,
      lot.remarks,
      row?.remarks ?? "",
    ]),
  };
}

function openLine(row: SheetRow, rest: number, done: LineProgress): PullSheetLine {
  const size = sizeRead(row.sizeText, row.taxon.kind);
  const wanted = Math.max(rest, done.pulled + lineMissing(done));
  return {
    lineId: `${row.bedId}:${row.rowId}`,
    reservationId: null,
    bedId: row.bedId,
    bedName: row.bedName,
    rowId: row.rowId,
    letter: row.letter,
    taxon: row.taxon,
    sizeText: row.sizeText,
    size,
    wanted,
    pulled: done.pulled,
    short: done.short,
    damaged: done.damaged,
    swapped: Math.min(done.swapped, lineMissing(done)),
    open: lineOpen(wanted, done),
    notes: done.notes,
    photos: done.photos,
    placeText: NOT_RESERVED,
    ownerText: "",
    method: "not reserved",
    ...handlingOf(size, row.taxon.kind, false),
    hazards: [],
    remarks: row.remarks,
  };
}

const rowKey = ({ bedId, rowId }: { readonly bedId: string; readonly rowId: string }): string => `${bedId}:${rowId}`;

/**
 * The pull sheet of rows in the order of beds and letters. Stops come as the nursery is walked, then suppliers by name; plants that no lot is reserved for come
 * last. No plant is lost or added: a row's lines sum to its quantity, or to what was promised where that is more.
 * @param digOn ISO date of digging; null: not set
 */
export function pullSheet(rows: readonly SheetRow[], promises: readonly SheetPromise[], context: Context): PullSheet {
  const byRow = new Map(rows.map((row) => [rowKey(row), row]));
  const turn = new Map(rows.map((row, index) => [rowKey(row), index]));
  const promised = promises
    .map((promise) => ({ lot: promise.lot, turn: turn.get(rowKey(promise)) ?? rows.length, line: promisedLine(promise, byRow.get(rowKey(promise)), context) }))
    .filter(({ line }) => line.wanted > 0)
    .sort((a, b) => placeOrder(a.lot, b.lot) || a.turn - b.turn || (a.line.lineId < b.line.lineId ? -1 : 1));
  const taken = new Map<string, number>();
  for (const { line } of promised) taken.set(rowKey(line), (taken.get(rowKey(line)) ?? 0) + line.wanted);
  const open = rows.flatMap((row): PullSheetLine[] => {
    if (row.existing) return [];
    const rest = Math.max(0, row.quantity - (taken.get(rowKey(row)) ?? 0));
    const line = openLine(row, rest, context.progress.get(rowKey(row)) ?? NOTHING_DONE);
    return line.wanted > 0 ? [line] : [];
  });
  const stops = new Map<string, PullSheetLine[]>();
  for (const { line } of promised) {
    const key = `${line.ownerText} | ${line.placeText}`;
    stops.set(key, [...(stops.get(key) ?? []), line]);
  }
  const all = [...stops.values()].map((lines) => ({ place: lines[0]?.placeText ?? "", lines }));
  if (open.length > 0) all.push({ place: NOT_RESERVED, lines: open });
  return { stops: all, plants: all.reduce((sum, { lines }) => sum + lines.reduce((inner, line) => inner + line.wanted, 0), 0) };
}

/** All lines of a sheet, in order. */
export function sheetLines(sheet: PullSheet): PullSheetLine[] {
  return sheet.stops.flatMap(({ lines }) => lines);
}
