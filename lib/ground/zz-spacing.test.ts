import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { KINDS } from "../plants/vocabulary";
import {
  areaForQuantity,
  doubleRowQuantity,
  plantsPerSqFt,
  quantityForArea,
  quantityRoundedUp,
  rowQuantity,
  rowSetOut,
  SPACING_AIMS,
  spacingAimUsual,
  spacingForSpread,
} from "./spacing";

fc.configureGlobal({ numRuns: 1000 });
const area = fc.double({ min: 0.01, max: 100_000, noNaN: true });
const spacing = fc.double({ min: 0.1, max: 60, noNaN: true });
const grid = fc.constantFrom("square" as const, "triangular" as const);

describe("plants per square foot", () => {
  it("is 1/s² on the square grid and 1/(√3/2 · s²) on the triangular", () => {
    expect(plantsPerSqFt(0.5, "square")).toBe(4);
    expect(plantsPerSqFt(2, "square")).toBe(0.25);
    expect(plantsPerSqFt(1, "triangular")).toBeCloseTo(2 / Math.sqrt(3), 14);
    expect(plantsPerSqFt(1, "triangular")).toBeCloseTo(1.1547, 4);
  });

  it("refuses a spacing of nothing as the bug it is", () => {
    expect(() => plantsPerSqFt(0, "square")).toThrow(RangeError);
    expect(() => quantityForArea(10, -1, "square")).toThrow(RangeError);
    expect(() => rowQuantity(10, Number.NaN)).toThrow(RangeError);
  });
});

describe("the rounding of quantities", () => {
  it("goes up once, and not for the noise of the arithmetic", () => {
    expect(quantityRoundedUp(100)).toBe(100);
    expect(quantityRoundedUp(100.0000001)).toBe(100);
    expect(quantityRoundedUp(99.9999999)).toBe(100);
    expect(quantityRoundedUp(100.001)).toBe(101);
    expect(quantityRoundedUp(0.0000001)).toBe(1);
    expect(quantityRoundedUp(0)).toBe(0);
  });

  it("gives whole counts where the area is a whole number of cells, for any spacing", () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 20_000 }), spacing, grid, (n, s, g) => quantityForArea(areaForQuantity(n, s, g), s, g) === n));
  });

  it("never gives fewer plants than the area needs, nor a whole plant more", () => {
    fc.assert(
      fc.property(area, spacing, grid, (a, s, g) => {
        const n = quantityForArea(a, s, g);
        const need = a * plantsPerSqFt(s, g);
        return n >= need - 1e-6 && n >= 1 && n - 1 < need;
      }),
    );
  });

  it("needs no fewer for more ground or a closer spacing", () => {
    fc.assert(
      fc.property(area, area, spacing, grid, (a, more, s, g) => {
        expect(quantityForArea(a + more, s, g)).toBeGreaterThanOrEqual(quantityForArea(a, s, g));
        expect(quantityForArea(a, s * 0.9, g)).toBeGreaterThanOrEqual(quantityForArea(a, s, g));
      }),
    );
  });

  it("needs more on the triangular grid than on the square", () => {
    expect(quantityForArea(100, 1, "square")).toBe(100);
    expect(quantityForArea(100, 1, "triangular")).toBe(116);
  });
});

describe("rows", () => {
  it("set the ends in by half a spacing", () => {
    expect(rowQuantity(24, 3)).toBe(8);
    expect(rowSetOut(24, 8)).toEqual({ spacingFt: 3, endFt: 1.5 });
    expect(rowQuantity(0.3 * 10, 0.3)).toBe(10);
  });

  it("round up and close up, so that no gap is wider than asked and the run is used in full", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 2000, noNaN: true }), spacing, (run, s) => {
        const n = rowQuantity(run, s);
        const { spacingFt, endFt } = rowSetOut(run, n);
        expect(spacingFt).toBeLessThanOrEqual(s * (1 + 1e-5));
        expect(2 * endFt + (n - 1) * spacingFt).toBeCloseTo(run, 6);
      }),
    );
  });

  it("stagger a second row in the gaps of the first", () => {
    expect(doubleRowQuantity(24, 3)).toEqual({ front: 8, back: 7, total: 15, apartFt: (3 * Math.sqrt(3)) / 2 });
    expect(doubleRowQuantity(2, 3)).toMatchObject({ front: 1, back: 0, total: 1 });
  });
});

describe("spacing suggested from mature spread", () => {
  it("rounds to the steps a crew sets out by", () => {
    expect(spacingForSpread(2, "fast fill")).toBe(1.25);
    expect(spacingForSpread(5, "standard")).toBe(4);
    expect(spacingForSpread(1, "standard")).toBeCloseTo(10 / 12, 12);
    expect(spacingForSpread(35, "touching")).toBe(35);
  });

  it("is never nothing, widens with the spread and with the aim", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.05, max: 80, noNaN: true }), fc.double({ min: 0, max: 20, noNaN: true }), (spread, more) => {
        for (const aim of SPACING_AIMS) {
          expect(spacingForSpread(spread, aim)).toBeGreaterThan(0);
          expect(spacingForSpread(spread + more, aim)).toBeGreaterThanOrEqual(spacingForSpread(spread, aim));
        }
        expect(spacingForSpread(spread, "touching")).toBeGreaterThanOrEqual(spacingForSpread(spread, "fast fill"));
      }),
    );
  });

  it("has an aim for every kind", () => {
    for (const kind of KINDS) expect(SPACING_AIMS).toContain(spacingAimUsual(kind));
  });
});
