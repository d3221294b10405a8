import { describe, expect, it } from "vitest";
import { KINDS } from "../plants/vocabulary";
import { startingExtent, usualSizeText } from "./starting-size";
import type { GroundTaxon } from "./stratum";

const shrub: GroundTaxon = { kind: "shrub", habit: "rounded", heightFt: [6, 8], spreadFt: [6, 8], matureYears: 10, growthRate: "medium" };
const maple: GroundTaxon = { ...shrub, kind: "tree", heightFt: [40, 60], spreadFt: [30, 50], matureYears: 20 };
const crabapple: GroundTaxon = { ...maple, heightFt: [15, 20], spreadFt: [15, 20] };
const juniper: GroundTaxon = { ...shrub, kind: "conifer", habit: "mat", heightFt: [0.5, 1], spreadFt: [6, 8] };
const coneflower: GroundTaxon = { ...shrub, kind: "perennial", heightFt: [2, 4], spreadFt: [1, 2], matureYears: 3 };

describe("size on planting day", () => {
  it("believes a stated height and gives the crown by the plant's proportions", () => {
    expect(startingExtent(shrub, "24-36 in").heightFt).toBe(2.5);
    expect(startingExtent(shrub, "24-36 in").spreadFt).toBe(2.5);
    expect(startingExtent(maple, "10-12 ft").heightFt).toBe(11);
    expect(startingExtent(shrub, "6 ft ht x 4 ft spd")).toEqual({ heightFt: 6, spreadFt: 4 });
  });

  it("takes a bare length of a low, wide plant as its spread", () => {
    const start = startingExtent(juniper, "18-24 in");
    expect(start.spreadFt).toBe(1.75);
    expect(start.heightFt).toBeLessThan(0.5);
  });

  it("gives a tree a height by caliper, less for trees of small growth", () => {
    expect(startingExtent(maple, "2 in cal B&B").heightFt).toBe(12.5);
    expect(startingExtent(crabapple, "2 in cal B&B").heightFt).toBe(10);
    expect(startingExtent(maple, "3-3.5 in cal").heightFt).toBeGreaterThan(15);
  });

  it("grows with the container and never passes 80 % of the mature size", () => {
    const heights = ["plug", "qt", "#1", "#2", "#3", "#5", "#7", "#10", "#15", "#25"].map((text) => startingExtent(shrub, text).heightFt);
    expect([...heights].sort((a, b) => a - b)).toEqual(heights);
    expect(new Set(heights).size).toBe(heights.length);
    expect(startingExtent(coneflower, "#25").spreadFt).toBeLessThanOrEqual(0.8 * 1.5);
    expect(startingExtent(coneflower, "#25").heightFt).toBeLessThanOrEqual(0.8 * 3);
  });

  it("takes the size usually sold where the text says nothing known", () => {
    for (const text of ["", "as sample"]) expect(startingExtent(shrub, text)).toEqual(startingExtent(shrub, "#3"));
    expect(startingExtent(coneflower, "?")).toEqual(startingExtent(coneflower, "#1"));
    for (const kind of KINDS) {
      const taxon = { ...shrub, kind };
      expect(startingExtent(taxon, usualSizeText(taxon)).spreadFt).toBeGreaterThan(0);
    }
  });

  it("takes a plant that stands there already as grown, unless its size is stated", () => {
    expect(startingExtent(maple, "", true)).toEqual({ heightFt: 50, spreadFt: 40 });
    expect(startingExtent(maple, "mature", true)).toEqual({ heightFt: 50, spreadFt: 40 });
    expect(startingExtent(maple, "20 ft", true).heightFt).toBe(20);
  });
});
