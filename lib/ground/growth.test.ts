import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { KINDS, RATES } from "../plants/vocabulary";
import { extentAtYear, growthCurve, growthRate, YEARS_AHEAD, yearsToSpread } from "./growth";
import { startingExtent } from "./starting-size";
import type { GroundTaxon } from "./stratum";

const feet = (max: number) => fc.tuple(fc.integer({ min: 2, max: 10 * max }), fc.integer({ min: 0, max: 200 })).map(([low, more]) => [low / 10, (low + more) / 10] as const);
const taxon: fc.Arbitrary<GroundTaxon> = fc.record({
  kind: fc.constantFrom(...KINDS),
  habit: fc.constantFrom("rounded" as const, "mat" as const, "columnar" as const),
  heightFt: feet(60),
  spreadFt: feet(50),
  matureYears: fc.integer({ min: 1, max: 40 }),
  growthRate: fc.constantFrom(...RATES),
});
const sizeText = fc.constantFrom("#1", "#3", "2 in cal B&B", "plug", "18-24 in", "", "bulb 14-16 cm", "20 ft");

const maple: GroundTaxon = { kind: "tree", habit: "rounded", heightFt: [40, 60], spreadFt: [30, 50], matureYears: 20, growthRate: "medium" };
const hydrangea: GroundTaxon = { kind: "shrub", habit: "rounded", heightFt: [4, 6], spreadFt: [4, 6], matureYears: 10, growthRate: "medium" };

describe("growth", () => {
  it("starts at the size planted, never shrinks and never passes the mature size", () => {
    fc.assert(
      fc.property(taxon, sizeText, fc.boolean(), (plant, text, existing) => {
        const start = startingExtent(plant, text, existing);
        const curve = growthCurve(plant, text, existing);
        expect(curve(0)).toEqual(start);
        for (let year = 1; year <= YEARS_AHEAD; year++) {
          for (const side of ["heightFt", "spreadFt"] as const) {
            expect(curve(year)[side]).toBeGreaterThanOrEqual(curve(year - 1)[side]);
            expect(curve(year)[side]).toBeLessThanOrEqual(Math.max(start[side], (plant[side][0] + plant[side][1]) / 2) + 1e-9);
          }
        }
      }),
    );
  });

  it("has made 90 % of the growth of a medium grower at its mature age, where the class allows", () => {
    const at = extentAtYear(hydrangea, "#3", 10);
    const start = startingExtent(hydrangea, "#3");
    expect((at.heightFt - start.heightFt) / (5 - start.heightFt)).toBeCloseTo(0.9, 9);
  });

  it("gains no more in a tree's first five years than its class grows", () => {
    for (const [rate, most] of [
      ["slow", 1],
      ["medium", 2],
      ["fast", 3],
    ] as const) {
      const curve = growthCurve({ ...maple, growthRate: rate }, "2 in cal");
      expect((curve(5).heightFt - curve(0).heightFt) / 5).toBeCloseTo(most, 6);
    }
  });

  it("is quicker for a faster class and a lower mature age", () => {
    const start = startingExtent(hydrangea, "#3");
    const rates = RATES.map((rate) => growthRate({ ...hydrangea, growthRate: rate }, start));
    expect([...rates].sort((a, b) => a - b)).toEqual(rates);
    expect(growthRate({ ...hydrangea, matureYears: 5 }, start)).toBeGreaterThan(growthRate(hydrangea, start));
  });

  it("takes years before planting as planting day", () => {
    expect(extentAtYear(maple, "#15", -3)).toEqual(extentAtYear(maple, "#15", 0));
  });
});

describe("years to a spread", () => {
  it("is the year at which the curve is so wide", () => {
    fc.assert(
      fc.property(taxon, sizeText, fc.double({ min: 0.05, max: 60, noNaN: true }), (plant, text, spreadFt) => {
        const years = yearsToSpread(plant, text, spreadFt);
        if (years === null) return extentAtYear(plant, text, 1000).spreadFt <= spreadFt + 1e-9;
        const width = extentAtYear(plant, text, years).spreadFt;
        return years === 0 ? width >= spreadFt - 1e-9 : Math.abs(width - spreadFt) < 1e-6;
      }),
    );
  });
});
