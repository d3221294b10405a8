// A smaller plant of the same look, from the dataset.
import type { Taxon } from "../plants/taxon";
import { rangeMiddle } from "./stratum";

export type LookTaxon = Pick<Taxon, "id" | "genus" | "botanical" | "kind" | "habit" | "heightFt" | "spreadFt" | "foliage" | "features" | "light" | "zoneLow" | "zoneHigh">;

/** What likeness counts for. Judgement, no source. */
const POINTS = { botanical: 4, genus: 3, habit: 2, foliage: 2, colors: 4 } as const;

/** Share of a taxon's seasonal features (kind and color) that another has too. */
function featuresShared(a: LookTaxon, b: LookTaxon): number {
  const of = (taxon: LookTaxon) => new Set(taxon.features.map(({ kind, color }) => `${kind} ${color}`));
  const [own, other] = [of(a), of(b)];
  return own.size === 0 ? 1 : [...own].filter((feature) => other.has(feature)).length / own.size;
}

/** How much of one taxon's look another keeps, 0–1: species and genus, habit, foliage, and features of the same color. */
export function lookKept(a: LookTaxon, b: LookTaxon): number {
  const points =
    (a.botanical === b.botanical ? POINTS.botanical : 0) +
    (a.genus === b.genus ? POINTS.genus : 0) +
    (a.habit === b.habit ? POINTS.habit : 0) +
    (a.foliage === b.foliage ? POINTS.foliage : 0) +
    POINTS.colors * featuresShared(a, b);
  return points / Object.values(POINTS).reduce((sum, value) => sum + value, 0);
}

/**
 * Taxa that stay within a spread and height in feet (null: any) and look most like one: of its kind, smaller than it, sharing a light and its zones.
 * The likest first, then the largest.
 */
export function smallerTaxa<T extends LookTaxon>(taxon: LookTaxon, all: readonly T[], maxSpreadFt: number | null, maxHeightFt: number | null, count: number): T[] {
  return all
    .filter(
      (other) =>
        other.id !== taxon.id &&
        other.kind === taxon.kind &&
        rangeMiddle(other.spreadFt) <= Math.min(maxSpreadFt ?? Number.POSITIVE_INFINITY, rangeMiddle(taxon.spreadFt)) &&
        rangeMiddle(other.heightFt) <= Math.min(maxHeightFt ?? Number.POSITIVE_INFINITY, rangeMiddle(taxon.heightFt)) &&
        other.light.some((light) => taxon.light.includes(light)) &&
        other.zoneLow <= taxon.zoneHigh &&
        other.zoneHigh >= taxon.zoneLow,
    )
    .map((other) => ({ other, kept: lookKept(taxon, other) }))
    .sort((a, b) => b.kept - a.kept || rangeMiddle(b.other.spreadFt) - rangeMiddle(a.other.spreadFt) || (a.other.id < b.other.id ? -1 : 1))
    .slice(0, count)
    .map(({ other }) => other);
}
