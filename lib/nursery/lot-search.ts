// The firm's lots found, filtered and put in order, as the nursery page shows them.
import { sizeFromText } from "./size-read";

/** What of a lot is looked at. `names`: every name of its plant. `step`: its place's turn on the walk. */
export type LotListed = {
  readonly taxonName: string;
  readonly names: readonly string[];
  readonly size: string;
  readonly place: string;
  readonly block: string;
  readonly step: number | null;
  readonly quantity: number;
  readonly reserved: number;
  readonly grade: string;
  readonly remarks: string;
  /** ISO instant; null: never counted. */
  readonly countedAt: string | null;
};

export const LOT_SORTS = ["name", "place", "size", "counted"] as const;
export type LotSort = (typeof LOT_SORTS)[number];

export type LotQuery = {
  /** Words of any name, place, size, grade or remark; all must be there. */
  readonly q: string;
  /** A block, as in the lot; null: all. "" is lots without one. */
  readonly block: string | null;
  /** Only lots of which plants are free. */
  readonly free: boolean;
  /** ISO date: only lots not counted on or after it; null: all. */
  readonly since: string | null;
  readonly sort: LotSort;
};

/** Letters without accents and marks, lower case, single spaces: what is compared when words are looked for. */
export function textFold(text: string): string {
  return text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .replace(/[×✕]/g, "x")
    .replace(/['’‘"“”`´()]/g, "")
    .toLowerCase()
    .replace(/[\s,;·]+/g, " ")
    .trim();
}

/** What of a lot words are looked for in, folded; each word's start counts, so " field" is found in "north field" and "ield" is not. */
const haystack = (lot: LotListed): string => ` ${textFold([lot.taxonName, ...lot.names, lot.size, lot.place, lot.grade, lot.remarks].join(" "))}`;

/** A word begins another; a figure must be whole, and may follow a dash: "2.5" is in "2-2.5 in", "1" is neither in "10" nor in "#1". */
function wordTest(word: string): (text: string) => boolean {
  if (!/^\d/.test(word)) return (text) => text.includes(` ${word}`);
  const figure = new RegExp(`[ -]${word.replace(/[^\da-z]/g, "\\$&")}(?![\\d.])`);
  return (text) => figure.test(text);
}

/** Lots that have every word, in the order given. */
export function lotsNamed<T extends LotListed>(lots: readonly T[], q: string): T[] {
  const tests = textFold(q).split(" ").filter(Boolean).map(wordTest);
  if (!tests.length) return [...lots];
  return lots.filter((lot) => {
    const text = haystack(lot);
    return tests.every((test) => test(text));
  });
}

const collator = new Intl.Collator("en-US", { numeric: true, sensitivity: "base" });
const FAR = Number.POSITIVE_INFINITY;

/** Containers by volume, then caliper, height, the rest by text. */
function sizeRank(text: string): readonly [number, number] {
  const size = sizeFromText(text);
  if (size.caliperIn) return [1, size.caliperIn[0]];
  if (size.containerGal !== null) return [0, size.containerGal];
  if (size.heightIn) return [2, size.heightIn[0]];
  return [text === "" ? 4 : 3, 0];
}

/** Lots as the query asks for them. The order is total for lots that differ in name, place or size; lots alike keep their order. */
export function lotsSorted<T extends LotListed>(lots: readonly T[], sort: LotSort): T[] {
  const byName = (a: T, b: T): number => collator.compare(a.taxonName, b.taxonName);
  const byPlace = (a: T, b: T): number => {
    const step = (a.step ?? FAR) - (b.step ?? FAR);
    return (Number.isNaN(step) ? 0 : step) || collator.compare(a.place, b.place);
  };
  if (sort === "place") return [...lots].sort((a, b) => byPlace(a, b) || byName(a, b));
  if (sort === "counted") return [...lots].sort((a, b) => (a.countedAt ?? "").localeCompare(b.countedAt ?? "") || byPlace(a, b) || byName(a, b));
  if (sort === "size") {
    const ranks = new Map([...new Set(lots.map((lot) => lot.size))].map((size) => [size, sizeRank(size)]));
    const rank = (lot: T) => ranks.get(lot.size) ?? [4, 0];
    return [...lots].sort((a, b) => rank(a)[0] - rank(b)[0] || rank(a)[1] - rank(b)[1] || collator.compare(a.size, b.size) || byName(a, b));
  }
  return [...lots].sort((a, b) => byName(a, b));
}

/** Lots that the filters let through. @param dayOf the ISO date of a count, by the clock of the firm */
export function lotsFiltered<T extends LotListed>(
  lots: readonly T[],
  { block, free, since }: Pick<LotQuery, "block" | "free" | "since">,
  dayOf: (countedAt: string) => string,
): T[] {
  return lots.filter(
    (lot) => (block === null || lot.block === block) && (!free || lot.quantity > lot.reserved) && (since === null || lot.countedAt === null || dayOf(lot.countedAt) < since),
  );
}
