// The report on the dataset: what it holds, where it comes from, and every published figure it departs from.
import { type CheckedValue, type Reason, valuesExplained } from "./checked-value";
import { type CrossCheckTables, crossChecks } from "./cross-check";
import { type Count, countsByGenus, countsByKind, type FieldCount, featureCounts, fieldCounts, isCultivar, sourceCounts } from "./dataset-counts";
import { type GenusCoverage, generaCoverage } from "./genus-coverage";
import type { PublishedLists } from "./published-lists";
import type { LeftOut } from "./reasons-file";
import type { Taxon } from "./taxon";
import { taxonFinder } from "./taxon-finder";
import { statesOf, type UsdaNative } from "./usda-table";
import type { FeatureKind } from "./vocabulary";

/** Comparisons of one field with one source. */
export type Agreement = { readonly source: string; readonly field: string; readonly compared: number; readonly disagree: number; readonly unexplained: number };

export type DatasetReport = {
  readonly all: Count & { readonly genera: number };
  readonly kinds: ReturnType<typeof countsByKind>;
  readonly genera: ReturnType<typeof countsByGenus>;
  readonly fields: readonly FieldCount[];
  readonly features: readonly { readonly kind: FeatureKind; readonly taxa: number; readonly features: number }[];
  readonly sources: ReturnType<typeof sourceCounts>;
  readonly coverage: readonly GenusCoverage[];
  /** By source and field; the many publications of sizes and cold limits together, as "published". */
  readonly agreements: readonly Agreement[];
  readonly disagreements: readonly CheckedValue[];
  /** Reasons that answer no disagreement, and left-out genera that are in: they can go. */
  readonly stale: readonly string[];
  /** Lines that nothing is said to: disagreements without a reason, genera neither in nor listed. */
  readonly unexplained: number;
};

/** Everything the report is made from. */
export type ReportInput = {
  readonly taxa: readonly Taxon[];
  readonly tables: CrossCheckTables;
  readonly native: UsdaNative;
  readonly listedGenera: Readonly<Record<string, readonly string[]>>;
  readonly leftOut: LeftOut;
  readonly reasons: readonly Reason[];
  readonly lists: PublishedLists;
};

const SIZE_FIELDS: readonly string[] = ["height", "spread", "zones"];

/** Comparisons by source and field, in order. */
export function agreementsOf(values: readonly CheckedValue[]): readonly Agreement[] {
  const groups = new Map<string, CheckedValue[]>();
  for (const value of values) {
    const key = `${value.source}|${value.field}`;
    const group = groups.get(key);
    if (group) group.push(value);
    else groups.set(key, [value]);
  }
  return [...groups.values()].flatMap((group) => {
    const [first] = group;
    if (!first) return [];
    const apart = group.filter((v) => !v.agrees);
    return { source: first.source, field: first.field, compared: group.length, disagree: apart.length, unexplained: apart.filter((v) => v.explained === null).length };
  });
}

export function datasetReport({ taxa, tables, native, listedGenera, leftOut, reasons, lists }: ReportInput): DatasetReport {
  const { values, unused } = valuesExplained(crossChecks(taxa, tables, lists), reasons);
  const { genera: coverage, stale } = generaCoverage(listedGenera, new Set(taxa.map((t) => t.genus)), leftOut, taxonFinder(taxa));
  const disagreements = values.filter((v) => !v.agrees);
  const sizeSources = new Set(lists.sizes.map((row) => row.source));
  const isSize = (v: CheckedValue) => sizeSources.has(v.source) && SIZE_FIELDS.includes(v.field);
  const genera = countsByGenus(taxa);
  return {
    all: { taxa: taxa.length, cultivars: taxa.filter(isCultivar).length, genera: genera.length },
    kinds: countsByKind(taxa),
    genera,
    fields: fieldCounts(taxa, (t) => statesOf(t, native) !== null),
    features: featureCounts(taxa),
    sources: sourceCounts(taxa),
    coverage,
    agreements: agreementsOf(values.map((v) => (isSize(v) ? { ...v, source: "published" } : v))),
    disagreements,
    stale: [...unused.map((r) => `reason for ${r.taxon}, ${r.field}, ${r.source}`), ...stale.map((genus) => `left-out genus ${genus}`)],
    unexplained: disagreements.filter((v) => v.explained === null).length + coverage.filter((c) => c.state === "missing").length,
  };
}
