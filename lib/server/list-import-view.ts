// A held list as its screen shows it: names in groups, columns by sheet, what was skipped, and what it changes.
import { type MatchedLine, nameKey } from "../nursery/line-match";
import type { ColumnRole } from "../nursery/list-columns";
import type { SkippedRow } from "../nursery/list-read";
import type { Taxon } from "../plants/taxon";
import { importFind, type ListImport, lineTaxon } from "./list-import";
import { offersMade, supplierChange } from "./list-import-offers";
import { type TaxaHeld, taxaHeld } from "./taxa";

export type PlantShown = Pick<Taxon, "id" | "botanical" | "cultivar" | "group" | "tradeDesignation"> & { readonly common: string };
export const NAME_GROUPS = ["confirm", "none", "sure"] as const;
export type NameGroup = (typeof NAME_GROUPS)[number];
/** One written name with all its lines. */
export type NameShown = {
  readonly written: string;
  readonly lines: number;
  /** Where it stands first, and the line as written. */
  readonly sheet: string;
  readonly row: number;
  readonly text: string;
  /** Sizes of its lines, some of them. */
  readonly sizes: readonly string[];
  /** The plant it is read as, likeliest first. */
  readonly candidates: readonly PlantShown[];
  /** What a person has said: a plant, null for none of them, undefined nothing yet. */
  readonly chosen: PlantShown | null | undefined;
};
export type NamePage = { readonly names: readonly NameShown[]; readonly page: number; readonly pages: number; readonly count: number };

export type SheetShown = {
  readonly sheet: string;
  readonly headerRow: number | null;
  readonly columns: readonly { readonly heading: string; readonly role: ColumnRole; readonly samples: readonly string[] }[];
  /** The first rows, to choose the row of the headings from. */
  readonly top: readonly { readonly row: number; readonly text: string }[];
};
export type ChangeShown = { readonly lotId: string; readonly name: string; readonly size: string; readonly words: string };
export type ChangeGroups = {
  readonly first: boolean;
  readonly counts: Readonly<Record<"added" | "gone" | "more" | "fewer" | "dearer" | "cheaper" | "same" | "kept", number>>;
  /** Promises the list cannot keep, every one of them with the job. */
  readonly tooFew: readonly ChangeShown[];
  /** Some of each, the biggest change first. */
  readonly examples: Readonly<Record<"added" | "gone" | "more" | "fewer" | "dearer" | "cheaper", readonly ChangeShown[]>>;
};
export type ImportShown = {
  readonly id: string;
  readonly fileName: string;
  readonly notes: readonly string[];
  readonly recalled: boolean;
  readonly lines: number;
  readonly groups: Readonly<Record<NameGroup, { readonly names: number; readonly lines: number; readonly decided: number }>>;
  readonly skipped: readonly SkippedRow[];
  readonly skippedCount: number;
  readonly sheets: readonly SheetShown[];
};

const NAMES_A_PAGE = 40;
const SKIPPED_MAX = 400;
const SAMPLES = 3;
const SAMPLE_LENGTH = 40;

function plantShown(held: TaxaHeld, id: string | null | undefined): PlantShown | null {
  const taxon = id ? held.byId.get(id) : undefined;
  if (!taxon) return null;
  const { botanical, cultivar, group, tradeDesignation, commonNames } = taxon;
  return { id: taxon.id, botanical, cultivar, group, tradeDesignation, common: commonNames[0] ?? "" };
}

function groupOf({ reading }: MatchedLine): NameGroup {
  return reading.sure ? "sure" : reading.candidates.length ? "confirm" : "none";
}

/** Lines by written name within each group, in the order of the file. Kept for as long as the reading is. */
const grouped = new WeakMap<readonly MatchedLine[], Record<NameGroup, Map<string, MatchedLine[]>>>();
function namesGrouped({ matched }: ListImport): Record<NameGroup, Map<string, MatchedLine[]>> {
  const known = grouped.get(matched);
  if (known) return known;
  const made: Record<NameGroup, Map<string, MatchedLine[]>> = { confirm: new Map(), none: new Map(), sure: new Map() };
  for (const line of matched) {
    const own = made[groupOf(line)];
    const key = nameKey(line.written);
    const lines = own.get(key);
    if (lines) lines.push(line);
    else own.set(key, [line]);
  }
  grouped.set(matched, made);
  return made;
}

function nameShown(held: TaxaHeld, one: ListImport, key: string, lines: readonly MatchedLine[]): NameShown[] {
  const [first] = lines;
  if (!first) return [];
  const { reading } = first;
  const ids = reading.sure && reading.taxonId ? [reading.taxonId] : reading.candidates;
  const chosen = one.choices.get(key);
  return [
    {
      written: first.written,
      lines: lines.length,
      sheet: first.sheet,
      row: first.row,
      text: first.text,
      sizes: [...new Set(lines.map(({ sizeText }) => sizeText).filter(Boolean))].slice(0, 4),
      candidates: ids.flatMap((id) => plantShown(held, id) ?? []),
      chosen: chosen === undefined ? undefined : plantShown(held, chosen),
    },
  ];
}

/** A page of the names of a group; null when the list is no longer held. @param find letters that stand in the name */
export async function importNames(id: string, group: NameGroup, page: number, find = ""): Promise<NamePage | null> {
  const one = importFind(id);
  if (!one) return null;
  const held = await taxaHeld();
  const wanted = find.trim().toLowerCase();
  const all = [...namesGrouped(one)[group]].filter(([key]) => key.includes(wanted));
  const pages = Math.max(1, Math.ceil(all.length / NAMES_A_PAGE));
  const own = Math.min(Math.max(1, page), pages);
  return { names: all.slice((own - 1) * NAMES_A_PAGE, own * NAMES_A_PAGE).flatMap(([key, lines]) => nameShown(held, one, key, lines)), page: own, pages, count: all.length };
}

function sheetsShown(one: ListImport): SheetShown[] {
  return one.list.maps.map(({ sheet, map }) => {
    const rows = one.sheets.find(({ name }) => name === sheet)?.rows ?? [];
    const body = rows.slice(map.headerRow === null ? 0 : map.headerRow + map.headerRows);
    return {
      sheet,
      headerRow: map.headerRow,
      columns: map.columns.map(({ heading, role }, c) => ({
        heading,
        role,
        samples: body
          .map((row) => (row[c] ?? "").trim())
          .filter(Boolean)
          .slice(0, SAMPLES)
          .map((text) => text.slice(0, SAMPLE_LENGTH)),
      })),
      top: rows
        .slice(0, 40)
        .flatMap((row, i) =>
          row.some((cell) => cell.trim())
            ? [
                {
                  row: i,
                  text: row
                    .map((cell) => cell.trim())
                    .filter(Boolean)
                    .join(" | ")
                    .slice(0, 80),
                },
              ]
            : [],
        )
        .slice(0, 15),
    };
  });
}

/** The held list but for its names; null when it is no longer held. */
export function importShown(id: string): ImportShown | null {
  const one = importFind(id);
  if (!one) return null;
  const names = namesGrouped(one);
  const count = (group: NameGroup) => ({
    names: names[group].size,
    lines: [...names[group].values()].reduce((sum, lines) => sum + lines.length, 0),
    decided: [...names[group].keys()].filter((key) => one.choices.has(key)).length,
  });
  return {
    id,
    fileName: one.fileName,
    notes: one.notes,
    recalled: one.recalled,
    lines: one.matched.length,
    groups: { confirm: count("confirm"), none: count("none"), sure: count("sure") },
    skipped: one.list.skipped.slice(0, SKIPPED_MAX),
    skippedCount: one.list.skipped.length,
    sheets: sheetsShown(one),
  };
}

const EXAMPLES = 60;
const number = (count: number | null): string => (count === null ? "no number" : count.toLocaleString("en-US"));
const money = (cents: number | null): string => (cents === null ? "no price" : `$${(cents / 100).toFixed(2)}`);

/** What accepting would change, as things are; null when the list is no longer held. */
export async function importChange(id: string): Promise<ChangeGroups | null> {
  const one = importFind(id);
  if (!one) return null;
  const held = await taxaHeld();
  const { change, first, promises } = await supplierChange(
    one.supplierId,
    offersMade(held, one.matched, (line) => lineTaxon(one, line)),
    held,
  );
  const nameOf = (taxonId: string): string => held.byId.get(taxonId)?.name ?? taxonId;
  type Pair = (typeof change.kept)[number];
  const pair = (list: readonly Pair[], words: (pair: Pair) => string, size: (pair: Pair) => number): ChangeShown[] =>
    [...list]
      .sort((a, b) => size(b) - size(a))
      .slice(0, EXAMPLES)
      .map((both) => ({ lotId: both.lot.id, name: nameOf(both.lot.taxonId), size: both.lot.size, words: words(both) }));
  const byCount = (list: readonly Pair[]): ChangeShown[] =>
    pair(
      list,
      ({ lot, offer }) => `${number(lot.quantity)} → ${number(offer.quantity)}`,
      ({ lot, offer }) => Math.abs((offer.quantity ?? 0) - lot.quantity),
    );
  const byPrice = (list: readonly Pair[]): ChangeShown[] =>
    pair(
      list,
      ({ lot, offer }) => `${money(lot.priceCents)} → ${money(offer.priceCents)}`,
      ({ lot, offer }) => Math.abs((offer.priceCents ?? 0) / Math.max(1, lot.priceCents ?? 1) - 1),
    );
  const touched = new Set([...change.more, ...change.fewer, ...change.dearer, ...change.cheaper].map(({ lot }) => lot.id));
  const { added, gone, more, fewer, dearer, cheaper } = change;
  return {
    first,
    counts: {
      added: added.length,
      gone: gone.length,
      more: more.length,
      fewer: fewer.length,
      dearer: dearer.length,
      cheaper: cheaper.length,
      same: change.kept.length - touched.size,
      kept: change.kept.length,
    },
    tooFew: change.tooFew.map(({ lot, offered }) => ({
      lotId: lot.id,
      name: nameOf(lot.taxonId),
      size: lot.size,
      words: `${offered ? `only ${number(offered)} offered` : "gone"}; promised: ${promises.get(lot.id) ?? number(lot.reserved)}`,
    })),
    examples: {
      added: added
        .slice(0, EXAMPLES)
        .map((offer, i) => ({ lotId: `new${i}`, name: nameOf(offer.taxonId), size: offer.sizeText, words: `${number(offer.quantity)}, ${money(offer.priceCents)}` })),
      gone: gone.slice(0, EXAMPLES).map((lot) => ({ lotId: lot.id, name: nameOf(lot.taxonId), size: lot.size, words: `had ${number(lot.quantity)}` })),
      more: byCount(more),
      fewer: byCount(fewer),
      dearer: byPrice(dearer),
      cheaper: byPrice(cheaper),
    },
  };
}
