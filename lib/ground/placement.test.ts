import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { outlineDistance, type Point, pointInOutline, rectangleOutline } from "./outline";
import { FILL_EDGE_SHARE, fillEdgeEffect, fillExpected, fillPoints, rowPoints } from "./placement";
import { driftOutline } from "./plant-group";
import { type Grid, quantityForArea, rowQuantity } from "./spacing";

const ell: Point[] = [
  [0, 0],
  [30, 0],
  [30, 8],
  [10, 8],
  [10, 20],
  [0, 20],
];
const turned = (outline: readonly Point[], angle: number): Point[] =>
  outline.map(([x, y]) => [x * Math.cos(angle) - y * Math.sin(angle) + 11, x * Math.sin(angle) + y * Math.cos(angle) - 7]);

const outlines = fc.oneof(
  fc.tuple(fc.double({ min: 6, max: 60, noNaN: true }), fc.double({ min: 6, max: 30, noNaN: true })).map(([l, w]) => rectangleOutline(l, w)),
  fc.double({ min: 0, max: 6.3, noNaN: true }).map((angle) => turned(ell, angle)),
  fc
    .tuple(fc.double({ min: 12, max: 50, noNaN: true }), fc.double({ min: 6, max: 12, noNaN: true }), fc.double({ min: 0, max: 3.2, noNaN: true }))
    .map(([l, w, angle]) => driftOutline([3, 4], l, w, angle)),
);
const grids = fc.constantFrom<Grid>("square", "triangular");

function nearest(points: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [i, a] of points.entries()) for (const b of points.slice(i + 1)) least = Math.min(least, Math.hypot(a[0] - b[0], a[1] - b[1]));
  return least;
}

describe("a fill", () => {
  it("of a rectangle that fits the square grid holds exactly the quantity by area, half a spacing from every edge", () => {
    const points = fillPoints({ outlines: [rectangleOutline(24, 8)], spacingFt: 2, grid: "square" });
    expect(points.length).toBe(48);
    expect(points.length).toBe(quantityForArea(192, 2, "square"));
    expect(points[0]).toEqual([1, 1]);
  });

  it("of a rectangle that fits the triangular grid holds exactly the quantity by area", () => {
    const rows = 6;
    const outline = rectangleOutline(20, (rows * 2 * Math.sqrt(3)) / 2);
    expect(fillPoints({ outlines: [outline], spacingFt: 2, grid: "triangular" }).length).toBe(60);
    expect(fillExpected(outline, 2, "triangular")).toBeCloseTo(60, 9);
  });

  it("agrees with quantity by area within the stated edge effect, on any outline, at any angle, on both grids", () => {
    fc.assert(
      fc.property(outlines, grids, fc.double({ min: 0.5, max: 3, noNaN: true }), fc.double({ min: 0, max: 3.2, noNaN: true }), (outline, grid, spacingFt, angle) => {
        const count = fillPoints({ outlines: [outline], spacingFt, grid, angle }).length;
        expect(Math.abs(count - fillExpected(outline, spacingFt, grid))).toBeLessThanOrEqual(fillEdgeEffect(outline, spacingFt, grid));
      }),
      { numRuns: 300 },
    );
  });

  it("keeps the spacing between all plants and its share of it from every edge", () => {
    fc.assert(
      fc.property(outlines, grids, fc.double({ min: 1.5, max: 4, noNaN: true }), (outline, grid, spacingFt) => {
        const points = fillPoints({ outlines: [outline], spacingFt, grid });
        for (const point of points) {
          expect(pointInOutline(point, outline)).toBe(true);
          expect(outlineDistance(point, outline)).toBeGreaterThanOrEqual(FILL_EDGE_SHARE[grid] * spacingFt - 1e-6);
        }
        expect(nearest(points)).toBeGreaterThanOrEqual(spacingFt - 1e-6);
      }),
      { numRuns: 60 },
    );
  });

  it("keeps clear of boulders and stays in bed and drift alike", () => {
    const bed = rectangleOutline(20, 10);
    const drift = driftOutline([18, 5], 16, 6, 0);
    const boulder = { center: [15, 5] as Point, radiusFt: 2 };
    const points = fillPoints({ outlines: [bed, drift], spacingFt: 1, grid: "triangular", avoid: [boulder] });
    expect(points.length).toBeGreaterThan(10);
    for (const point of points) {
      expect(pointInOutline(point, bed) && pointInOutline(point, drift)).toBe(true);
      expect(Math.hypot(point[0] - 15, point[1] - 5)).toBeGreaterThanOrEqual(2 - 1e-6);
    }
  });

  it("never has more plants for more kept clear, and none where nothing fits", () => {
    const bed = rectangleOutline(20, 10);
    const free = fillPoints({ outlines: [bed], spacingFt: 1, grid: "square" }).length;
    expect(fillPoints({ outlines: [bed], spacingFt: 1, grid: "square", avoid: [{ center: [10, 5], radiusFt: 3 }] }).length).toBeLessThan(free);
    expect(fillPoints({ outlines: [rectangleOutline(1, 1)], spacingFt: 3, grid: "square" })).toEqual([]);
    expect(fillPoints({ outlines: [], spacingFt: 3, grid: "square" })).toEqual([]);
    expect(() => fillPoints({ outlines: [bed], spacingFt: 0, grid: "square" })).toThrow(RangeError);
  });

  it("of 5,000 plants holds as many as its ground does", () => {
    const outline = rectangleOutline(100, 43.3);
    expect(fillPoints({ outlines: [outline], spacingFt: 1, grid: "triangular" }).length).toBeGreaterThan(4900);
  });
});

describe("a row", () => {
  it("has both ends half a spacing in and all plants evenly apart", () => {
    const points = rowPoints(
      [
        [0, 0],
        [12, 0],
      ],
      3,
    );
    expect(points).toEqual([
      [1.5, 0],
      [4.5, 0],
      [7.5, 0],
      [10.5, 0],
    ]);
  });

  it("round a corner holds the quantity of its run, measured along it", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 40, noNaN: true }), fc.double({ min: 1, max: 40, noNaN: true }), fc.double({ min: 0.5, max: 8, noNaN: true }), (a, b, spacingFt) => {
        const points = rowPoints(
          [
            [0, 0],
            [a, 0],
            [a, b],
          ],
          spacingFt,
        );
        expect(points.length).toBe(rowQuantity(a + b, spacingFt));
        const along = points.map(([x, y]) => x + y);
        for (const [i, far] of along.entries()) expect(far).toBeCloseTo(((i + 0.5) * (a + b)) / points.length, 6);
      }),
    );
  });
});
