import { describe, expect, it } from "vitest";
import { listMatch } from "../../lib/nursery/line-match";
import { plantIndex } from "../../lib/plants/search";
import { heldOutLists, type LabelledList, labelledLists, labelsJudged, sizeFaults, strangerLists } from "../benchmarks/match-labels";
import { datasetTaxa } from "./dataset";

const taxa = datasetTaxa();
const nameOf = new Map(taxa.map((taxon) => [taxon.id, taxon.name]));
const index = plantIndex(taxa);

function judged(lists: readonly LabelledList[]) {
  return lists.flatMap(({ style, rows, labels }) => {
    const { pairs, invented } = labelsJudged(labels, listMatch(index, [{ name: style, rows }]).matched);
    return pairs.map(({ label, line }) => ({ style, label, line, invented: invented.length }));
  });
}

describe.each([
  ["hand-labelled availability lists", labelledLists(), 8, 400],
  ["lists held out from tuning", heldOutLists(), 3, 120],
  ["lists by another hand", strangerLists(), 15, 530],
])("%s", (_, lists, styles, least) => {
  const all = judged(lists);
  const share = (good: (one: (typeof all)[number]) => boolean) => all.filter(good).length / all.length;

  it("have each line found and none invented", () => {
    expect(lists).toHaveLength(styles);
    expect(all.length).toBeGreaterThanOrEqual(least);
    for (const { style, label, line, invented } of all) {
      expect(line, `${style} ${label.row}`).toBeDefined();
      expect(invented, style).toBe(0);
    }
  });

  it("have 92 of 100 names passed as sure, and 97 of 100 of those right", () => {
    const sure = all.filter(({ line }) => line?.reading.sure);
    const right = sure.filter(({ line, label }) => (nameOf.get(line?.reading.taxonId ?? "") ?? null) === label.name);
    expect(sure.length / all.length).toBeGreaterThanOrEqual(0.92);
    expect(right.length / sure.length).toBeGreaterThanOrEqual(0.97);
  });

  it("have 98 of 100 sizes, quantities and prices right", () => {
    expect(share(({ line, label }) => line !== undefined && sizeFaults(line, label).length === 0)).toBeGreaterThanOrEqual(0.98);
    expect(share(({ line, label }) => line?.quantity.count === label.quantity)).toBeGreaterThanOrEqual(0.98);
    expect(share(({ line, label }) => line?.priceCents === label.priceCents)).toBeGreaterThanOrEqual(0.98);
  });
});
