import { describe, expect, it } from "vitest";
import { listMatch } from "../../lib/nursery/line-match";
import { plantIndex } from "../../lib/plants/search";
import { labelledLists, sizeFaults } from "../benchmarks/match-labels";
import { datasetTaxa } from "./dataset";

const taxa = datasetTaxa();
const nameOf = new Map(taxa.map((taxon) => [taxon.id, taxon.name]));
const index = plantIndex(taxa);
const lists = labelledLists();

describe("hand-labelled availability lists", () => {
  const judged = lists.flatMap(({ style, rows, labels }) => {
    const lines = new Map(listMatch(index, [{ name: style, rows }]).matched.map((line) => [line.row, line]));
    return labels.map((label) => ({ style, label, line: lines.get(label.row), lines: lines.size, labels: labels.length }));
  });

  it("are eight, of 400 lines and more, each found and none invented", () => {
    expect(lists).toHaveLength(8);
    expect(judged.length).toBeGreaterThanOrEqual(400);
    for (const { style, label, line, lines, labels } of judged) {
      expect(line, `${style} ${label.row}`).toBeDefined();
      expect(lines, style).toBe(labels);
    }
  });

  it("have 92 of 100 names passed as sure, and 97 of 100 of those right", () => {
    const sure = judged.filter(({ line }) => line?.reading.sure);
    const right = sure.filter(({ line, label }) => (nameOf.get(line?.reading.taxonId ?? "") ?? null) === label.name);
    expect(sure.length / judged.length).toBeGreaterThanOrEqual(0.92);
    expect(right.length / sure.length).toBeGreaterThanOrEqual(0.97);
  });

  it("have 98 of 100 sizes, quantities and prices right", () => {
    const share = (good: (one: (typeof judged)[number]) => boolean) => judged.filter(good).length / judged.length;
    expect(share(({ line, label }) => line !== undefined && sizeFaults(line, label).length === 0)).toBeGreaterThanOrEqual(0.98);
    expect(share(({ line, label }) => line?.quantity.count === label.quantity)).toBeGreaterThanOrEqual(0.98);
    expect(share(({ line, label }) => line?.priceCents === label.priceCents)).toBeGreaterThanOrEqual(0.98);
  });
});
