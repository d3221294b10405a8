import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { outlineArea, outlineFault, type Point } from "./outline";
import { driftOutline, groupPoints, groupSizes, groupsRepeated } from "./plant-group";

const sides = (points: readonly Point[]) => points.flatMap((a, i) => points.slice(i + 1).map((b) => Math.hypot(a[0] - b[0], a[1] - b[1])));

describe("a group", () => {
  it("of one stands in its middle, of three is an even triangle, of seven has one in the middle", () => {
    expect(groupPoints([4, 5], 1, 3)).toEqual([[4, 5]]);
    for (const side of sides(groupPoints([4, 5], 3, 3))) expect(side).toBeCloseTo(3, 9);
    const seven = groupPoints([4, 5], 7, 3).map(([x, y]) => Math.hypot(x - 4, y - 5));
    expect(Math.min(...seven)).toBeCloseTo(0, 9);
    expect(Math.max(...seven)).toBeCloseTo(3, 9);
  });

  it("keeps its spacing, its middle and its number whatever they are", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.double({ min: 0.5, max: 9, noNaN: true }), fc.double({ min: 0, max: 7, noNaN: true }), (quantity, spacingFt, angle) => {
        const points = groupPoints([10, -3], quantity, spacingFt, angle);
        expect(points.length).toBe(quantity);
        for (const side of sides(points)) expect(side).toBeGreaterThanOrEqual(spacingFt - 1e-6);
        expect(points.reduce((sum, [x]) => sum + x, 0) / quantity).toBeCloseTo(10, 6);
        expect(points.reduce((sum, [, y]) => sum + y, 0) / quantity).toBeCloseTo(-3, 6);
      }),
    );
  });

  it("is one of several odd ones that add up to the quantity", () => {
    expect(groupSizes(8, 5)).toEqual([5, 3]);
    expect(groupSizes(2, 3)).toEqual([1, 1]);
    expect(groupSizes(15, 5)).toEqual([5, 5, 5]);
    expect(groupSizes(0, 3)).toEqual([]);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.constantFrom(1, 3, 5, 7, 15), (quantity, wanted) => {
        const sizes = groupSizes(quantity, wanted);
        expect(sizes.reduce((sum, size) => sum + size, 0)).toBe(quantity);
        for (const size of sizes) {
          expect(size).toBeGreaterThanOrEqual(1);
          if (size <= 7) expect(size % 2).toBe(1);
        }
      }),
    );
  });

  it("repeated along a bed makes triangles: the middles stand in turn on either side", () => {
    const groups = groupsRepeated([0, 0], [30, 0], 3, 3, 2, 1.5);
    const middles = groups.map((group) => group.reduce(([x, y], p): Point => [x + p[0] / 3, y + p[1] / 3], [0, 0] as Point));
    expect(middles.map(([x, y]) => [Math.round(x * 1e6) / 1e6, Math.round(y * 1e6) / 1e6])).toEqual([
      [5, 1.5],
      [15, -1.5],
      [25, 1.5],
    ]);
  });

  it("drawn as a drift is a simple outline near an ellipse's area", () => {
    const outline = driftOutline([0, 0], 12, 4, 0.4);
    expect(outlineFault(outline)).toBeNull();
    expect(Math.abs(outlineArea(outline) / (Math.PI * 6 * 2) - 1)).toBeLessThan(0.02);
  });
});
