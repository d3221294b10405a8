// What to pull from the nursery for a bed or a whole job: plants totalled by taxon and size, with the split by bed.
import { nurserySizeKey, nurserySizeRank } from "../ground/nursery-size";
import type { Taxon } from "../plants/taxon";
import type { Kind } from "../plants/vocabulary";

/** What a list shows of a taxon. */
export type PullTaxon = Pick<Taxon, "id" | "name" | "genus" | "botanical" | "cultivar" | "group" | "tradeDesignation" | "commonNames" | "kind">;

/** One row of one bed. quantity: whole plants. */
export type PullRow = {
  readonly bedId: string;
  readonly bedName: string;
  readonly taxon: PullTaxon;
  readonly sizeText: string;
  readonly quantity: number;
  readonly existing: boolean;
  readonly remarks: string;
};

export type PullBed = { readonly bedId: string; readonly bedName: string };
export type PullSplit = PullBed & { readonly quantity: number };

export type PullLine = {
  readonly key: string;
  readonly taxon: PullTaxon;
  readonly sizeText: string;
  readonly quantity: number;
  /** Beds that take some, in the order of the list's beds. */
  readonly split: readonly PullSplit[];
  /** Remarks of its rows, each once. */
  readonly remarks: readonly string[];
};

export type PullGroup = { readonly kind: Kind; readonly heading: string; readonly quantity: number; readonly lines: readonly PullLine[] };

export type PullList = {
  /** Beds that take anything, by name. */
  readonly beds: readonly PullSplit[];
  readonly groups: readonly PullGroup[];
  readonly quantity: number;
};

/** Kinds in the order of a planting schedule, with their headings. */
export const KIND_HEADINGS = {
  tree: "Trees",
  conifer: "Conifers",
  shrub: "Shrubs",
  vine: "Vines",
  perennial: "Perennials",
  grass: "Grasses",
  fern: "Ferns",
  groundcover: "Groundcovers",
  bulb: "Bulbs",
  annual: "Annuals",
} as const satisfies Record<Kind, string>;
const KIND_ORDER = Object.keys(KIND_HEADINGS) as readonly Kind[];

const collator = new Intl.Collator("en-US", { numeric: true, sensitivity: "base" });

/** Order of texts for people ("Bed 2" before "Bed 10"), with a tie broken by code so that it never depends on the input's order. */
function textOrder(a: string, b: string): number {
  return collator.compare(a, b) || (a < b ? -1 : a > b ? 1 : 0);
}

/** The hybrid sign is not part of the alphabet: Acer × freemanii stands under f. */
function nameSortText(name: string): string {
  return name.replace(/[×✕]\s*/g, "");
}

/** Order of plants on a list: by botanical name without the hybrid sign, then by id. */
export function nameOrder(a: Pick<PullTaxon, "id" | "name">, b: Pick<PullTaxon, "id" | "name">): number {
  return textOrder(nameSortText(a.name), nameSortText(b.name)) || textOrder(a.id, b.id);
}

function bedOrder(a: PullBed, b: PullBed): number {
  return textOrder(a.bedName, b.bedName) || textOrder(a.bedId, b.bedId);
}

function bedsSummed(rows: readonly PullRow[]): PullSplit[] {
  const beds = new Map<string, PullSplit>();
  for (const { bedId, bedName, quantity } of rows) {
    const before = beds.get(bedId);
    beds.set(bedId, { bedId, bedName: before && textOrder(before.bedName, bedName) < 0 ? before.bedName : bedName, quantity: quantity + (before?.quantity ?? 0) });
  }
  return [...beds.values()].sort(bedOrder);
}

function quantitySummed(items: readonly { readonly quantity: number }[]): number {
  return items.reduce((sum, { quantity }) => sum + quantity, 0);
}

/** Distinct texts without blank ones, in order. */
function textsOnce(texts: readonly string[]): string[] {
  return [...new Set(texts.map((text) => text.trim()).filter((text) => text !== ""))].sort(textOrder);
}

/** Spaces tidied; of several spellings of one size the shortest stands for all. */
function sizeShown(rows: readonly PullRow[]): string {
  const spellings = textsOnce(rows.map((row) => row.sizeText.replace(/\s+/g, " ")));
  return spellings.sort((a, b) => a.length - b.length || textOrder(a, b))[0] ?? "";
}

function lineFromRows(key: string, rows: readonly PullRow[], taxon: PullTaxon): PullLine {
  return { key, taxon, sizeText: sizeShown(rows), quantity: quantitySummed(rows), split: bedsSummed(rows), remarks: textsOnce(rows.map((row) => row.remarks)) };
}

function lineOrder(a: PullLine, b: PullLine): number {
  return nameOrder(a.taxon, b.taxon) || nurserySizeRank(a.sizeText, a.taxon.kind) - nurserySizeRank(b.sizeText, b.taxon.kind) || textOrder(a.key, b.key);
}

/**
 * The pull list of rows of one bed or of a whole job. Plants that stay and rows without plants are left out. One line a taxon and size (spellings of one
 * size count as one), grouped by kind, then by botanical name, then by size. The order of the rows makes no difference, and no plant is lost or added.
 */
export function pullList(rows: readonly PullRow[]): PullList {
  const pulled = rows.filter((row) => !row.existing && row.quantity > 0);
  const byKey = new Map<string, PullRow[]>();
  for (const row of pulled) {
    const key = `${row.taxon.id} | ${nurserySizeKey(row.sizeText, row.taxon.kind)}`;
    byKey.set(key, [...(byKey.get(key) ?? []), row]);
  }
  const lines = [...byKey].flatMap(([key, same]) => (same[0] ? [lineFromRows(key, same, same[0].taxon)] : [])).sort(lineOrder);
  const groups = KIND_ORDER.map((kind) => ({ kind, lines: lines.filter((line) => line.taxon.kind === kind) }))
    .filter((group) => group.lines.length > 0)
    .map(({ kind, lines: own }) => ({ kind, heading: KIND_HEADINGS[kind], quantity: quantitySummed(own), lines: own }));
  return { beds: bedsSummed(pulled), groups, quantity: quantitySummed(pulled) };
}
