// The dataset against published sizes, cold limits and growth classes.
import { checkedValue, rangesAgree, rangeText, type UnexplainedValue } from "./checked-value";
import type { PublishedGrowth, PublishedSize } from "./published-lists";
import type { Range } from "./taxon";
import { foundSubject, foundTaxa, type TaxonFinder } from "./taxon-finder";

/** Zones a cold limit may lie off the published one. */
const ZONE_SLACK = 1;

const hull = (ranges: readonly Range[]): Range => [Math.min(...ranges.map((r) => r[0])), Math.max(...ranges.map((r) => r[1]))];

/**
 * Published sizes: our range, widened by a quarter, must meet the published one; the cold limit must be within a zone.
 * A row that speaks of a genus is set beside the whole stretch of its taxa. Names the dataset does not have are passed over.
 */
export function publishedSizeChecks(rows: readonly PublishedSize[], find: TaxonFinder): UnexplainedValue[] {
  return rows.flatMap((row) => {
    const found = find(row);
    if (!found) return [];
    const taxa = foundTaxa(found);
    const check = (field: string, ours: string, theirs: string, agrees: boolean) => checkedValue(foundSubject(found), field, row.source, ours, theirs, agrees);
    const values: UnexplainedValue[] = [];
    for (const [field, theirs] of [["height", row.heightFt] as const, ["spread", row.spreadFt] as const]) {
      if (!theirs) continue;
      const ours = hull(taxa.map((t) => (field === "height" ? t.heightFt : t.spreadFt)));
      values.push(check(field, rangeText(ours), rangeText(theirs), rangesAgree(ours, theirs)));
    }
    if (row.zoneLow !== undefined) {
      const [coldest, warmest] = [Math.min(...taxa.map((t) => t.zoneLow)), Math.max(...taxa.map((t) => t.zoneLow))];
      const agrees = row.zoneLow >= coldest - ZONE_SLACK && row.zoneLow <= warmest + ZONE_SLACK;
      values.push(check("zones", coldest === warmest ? `zone ${coldest}` : `zones ${coldest}–${warmest}`, `zone ${row.zoneLow}`, agrees));
    }
    return values;
  });
}

/** Growth classes must be the same; the height class must meet our range widened by a quarter. */
export function growthChecks(source: string, rows: readonly PublishedGrowth[], find: TaxonFinder): UnexplainedValue[] {
  return rows.flatMap((row) => {
    const found = find(row);
    if (found?.kind !== "taxon") return [];
    const { taxon } = found;
    return [
      checkedValue(taxon, "rate", source, taxon.growthRate, row.growth, taxon.growthRate === row.growth),
      checkedValue(taxon, "height", source, rangeText(taxon.heightFt), rangeText(row.heightFt), rangesAgree(taxon.heightFt, row.heightFt)),
    ];
  });
}
