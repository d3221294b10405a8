// One value of the dataset set beside one published figure.
import type { Range, Taxon } from "./taxon";

/** What was compared, whether it agrees within the tolerance of the check, and what is said to it where it does not. */
export type CheckedValue = {
  /** The taxon's name; a genus where a list speaks of one. */
  readonly taxon: string;
  /** Field name as in the genus files: height, spread, zones, light, features.bloom … */
  readonly field: string;
  readonly ours: string;
  readonly theirs: string;
  /** Key of the table or publication. */
  readonly source: string;
  readonly agrees: boolean;
  /** Why we depart from it; null where it agrees, or where nothing is said. */
  readonly explained: string | null;
};

/** A written reason for departing from a source: of one taxon or several, or of a species or genus with all it holds. */
export type Reason = { readonly taxon: string | readonly string[]; readonly field: string; readonly source: string; readonly reason: string };

/** Tables whose rows the writers of the dataset had before them: only these does a taxon's own `why` answer. */
const TABLES_OF_WHY: readonly string[] = ["usda", "usfs"];

/** How far a range is widened on both sides before it must meet the published one. */
export const SIZE_SLACK = 0.25;

/** Whether our range, widened by the slack, meets theirs. */
export function rangesAgree(ours: Range, theirs: Range, slack: number = SIZE_SLACK): boolean {
  return ours[0] * (1 - slack) <= theirs[1] && ours[1] * (1 + slack) >= theirs[0];
}

export const rangeText = ([low, high]: Range, unit = "ft"): string => (low === high ? `${low} ${unit}` : `${low}–${high} ${unit}`);

/** The names a reason may be written under, nearest first: the taxon, its species, its genus. */
const namesOf = (taxon: Taxon): string[] => [taxon.name, taxon.botanical, taxon.genus];

/** The check of one taxon's value; `explained` is filled in by `valuesExplained`. */
export function checkedValue(taxon: Taxon | string, field: string, source: string, ours: string, theirs: string, agrees: boolean): CheckedValue & { readonly of: Taxon | null } {
  const of = typeof taxon === "string" ? null : taxon;
  return { of, taxon: typeof taxon === "string" ? taxon : taxon.name, field, source, ours, theirs, agrees, explained: null };
}
export type UnexplainedValue = ReturnType<typeof checkedValue>;

const reasonKey = (taxon: string, field: string, source: string): string => `${taxon}|${field}|${source}`;

/**
 * Gives each disagreement its reason: the taxon's `why` for that field where the source is a table the writers had, else the
 * reasons file. `unused` are the reasons that answer no disagreement any more.
 */
export function valuesExplained(values: readonly UnexplainedValue[], reasons: readonly Reason[]): { values: CheckedValue[]; unused: Reason[] } {
  const byKey = new Map<string, Reason>();
  for (const r of reasons) for (const name of typeof r.taxon === "string" ? [r.taxon] : r.taxon) byKey.set(reasonKey(name, r.field, r.source), r);
  const used = new Set<string>();
  const explained = values.map(({ of, ...value }): CheckedValue => {
    if (value.agrees) return value;
    const key = (of ? namesOf(of) : [value.taxon]).map((name) => reasonKey(name, value.field, value.source)).find((k) => byKey.has(k));
    if (key) used.add(key);
    const written = key ? (byKey.get(key)?.reason ?? null) : null;
    const why = of && TABLES_OF_WHY.includes(value.source) ? (of.why[value.field] ?? null) : null;
    return { ...value, explained: written ?? why };
  });
  const unused = [...byKey].filter(([key]) => !used.has(key)).map(([key, r]) => ({ ...r, taxon: key.slice(0, key.indexOf("|")) }));
  return { values: explained, unused };
}
