// The dataset against heights and crowns measured on street trees.
import { checkedValue, rangesAgree, rangeText, type UnexplainedValue } from "./checked-value";
import type { StreetTrees } from "./street-tree";
import type { Range, Taxon } from "./taxon";

const SOURCE = "usfs";

/**
 * Our height and spread, widened by a quarter, must meet the stretch from median to 90th percentile of trees of 15 years and more.
 * A species measured in several groups gives the whole stretch: least median to greatest 90th percentile.
 */
export function streetTreeChecks(taxon: Taxon, groups: readonly StreetTrees[]): UnexplainedValue[] {
  const trees = groups.reduce((sum, g) => sum + g.trees, 0);
  return (["height", "spread"] as const).map((field) => {
    const measured = groups.map((g) => (field === "height" ? g.heightFt : g.crownFt));
    const theirs: Range = [Math.min(...measured.map((m) => m.median)), Math.max(...measured.map((m) => m.p90))];
    const ours = field === "height" ? taxon.heightFt : taxon.spreadFt;
    return checkedValue(taxon, field, SOURCE, rangeText(ours), `${rangeText(theirs)} (median to 90th percentile of ${trees})`, rangesAgree(ours, theirs));
  });
}
