import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bedDensity, densityWords, plantTakenSqFt } from "./density";
import { areaForQuantity } from "./spacing";
import type { GroundTaxon } from "./stratum";

fc.configureGlobal({ numRuns: 1000 });
const shrub: GroundTaxon = { kind: "shrub", habit: "rounded", heightFt: [2, 4], spreadFt: [2, 4], matureYears: 10, growthRate: "medium" };
const tree: GroundTaxon = { ...shrub, kind: "tree", heightFt: [40, 60], spreadFt: [30, 40] };

describe("planting density", () => {
  it("is 5 where the plants are set at mature spread on a triangular grid", () => {
    const area = areaForQuantity(40, 3, "triangular");
    expect(bedDensity(area, [{ taxon: shrub, quantity: 40 }]).raw).toBeCloseTo(5, 12);
    expect(bedDensity(area, [{ taxon: shrub, quantity: 40 }]).label).toBe(5);
    expect(bedDensity(area, [{ taxon: shrub, quantity: 80 }]).label).toBe(10);
  });

  it("keeps the raw figure beyond the scale and clamps the label", () => {
    const packed = bedDensity(10, [{ taxon: shrub, quantity: 40 }]);
    expect(packed.raw).toBeGreaterThan(100);
    expect(packed.label).toBe(10);
    expect(bedDensity(100, []).raw).toBe(0);
    expect(bedDensity(100, []).label).toBe(1);
    expect(bedDensity(0, [{ taxon: shrub, quantity: 40 }]).raw).toBe(0);
  });

  it("leaves out canopy trees, which plants grow under", () => {
    const without = bedDensity(200, [{ taxon: shrub, quantity: 9 }]);
    expect(
      bedDensity(200, [
        { taxon: shrub, quantity: 9 },
        { taxon: tree, quantity: 3 },
      ]),
    ).toEqual(without);
  });

  it("gives the ground a plant takes when grown", () => {
    expect(plantTakenSqFt(shrub)).toBeCloseTo((9 * Math.sqrt(3)) / 2, 12);
  });

  it("has its own words for every step", () => {
    const words = Array.from({ length: 10 }, (_, i) => densityWords(i + 1));
    expect(new Set(words).size).toBe(10);
    expect(densityWords(0)).toBe(words[0]);
    expect(densityWords(99)).toBe(words[9]);
  });

  it("does not depend on the order of the rows and grows with every plant", () => {
    const row = fc.record({ quantity: fc.integer({ min: 0, max: 200 }), spread: fc.double({ min: 0.3, max: 8, noNaN: true }) });
    fc.assert(
      fc.property(fc.array(row, { maxLength: 12 }), fc.double({ min: 1, max: 5000, noNaN: true }), (rows, area) => {
        const list = rows.map((r) => ({ quantity: r.quantity, taxon: { ...shrub, spreadFt: [r.spread, r.spread] as const } }));
        const raw = bedDensity(area, list).raw;
        expect(bedDensity(area, [...list].reverse()).raw).toBeCloseTo(raw, 9);
        expect(bedDensity(area, [...list, { taxon: shrub, quantity: 1 }]).raw).toBeGreaterThan(raw);
      }),
    );
  });
});
