import { describe, expect, it } from "vitest";
import { type GroundTaxon, groundSpread, matureGroundSpread, taxonStratum } from "./stratum";

const plant = (over: Partial<GroundTaxon>): GroundTaxon => ({
  kind: "shrub",
  habit: "rounded",
  heightFt: [3, 5],
  spreadFt: [4, 6],
  matureYears: 10,
  growthRate: "medium",
  ...over,
});

describe("the layer of a plant", () => {
  it("goes by kind and mature height", () => {
    expect(taxonStratum(plant({ kind: "tree", heightFt: [15, 20] }))).toBe("canopy trees");
    expect(taxonStratum(plant({ kind: "shrub", heightFt: [3, 5] }))).toBe("tall shrubs");
    expect(taxonStratum(plant({ kind: "shrub", heightFt: [2, 3] }))).toBe("low shrubs");
    expect(taxonStratum(plant({ kind: "conifer", heightFt: [30, 40] }))).toBe("canopy trees");
    expect(taxonStratum(plant({ kind: "conifer", heightFt: [5, 8] }))).toBe("tall shrubs");
    expect(taxonStratum(plant({ kind: "conifer", heightFt: [1, 2] }))).toBe("low shrubs");
    expect(taxonStratum(plant({ kind: "grass", heightFt: [5, 7] }))).toBe("herbs and groundcover");
  });

  it("leaves a climbing vine on its support: it takes little ground", () => {
    const clematis = plant({ kind: "vine", habit: "climbing", spreadFt: [4, 6] });
    expect(taxonStratum(clematis)).toBe("low shrubs");
    expect(matureGroundSpread(clematis)).toBe(2);
    expect(groundSpread(clematis, 0.5)).toBe(0.5);
    expect(matureGroundSpread(plant({ kind: "vine", habit: "mat" }))).toBe(5);
    expect(taxonStratum(plant({ kind: "vine", habit: "mat" }))).toBe("herbs and groundcover");
  });
});
