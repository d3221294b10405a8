import fc from "fast-check";
import { expect, it } from "vitest";
import type { Point } from "./outline";
import { underlayLaid, underlayMoved, underlayScaled } from "./underlay-scale";

const image = { imageId: "p", widthPx: 800, heightPx: 600 };
const corners: Point[] = [
  [10, 5],
  [30, 5],
  [30, 15],
];
const laid = underlayLaid(image, corners);
const coordinate = fc.double({ min: -100, max: 100, noNaN: true });

it("lays a new picture with its middle under the bed's, half as wide again", () => {
  expect(laid.ftPerPx * 800).toBeCloseTo(30);
  expect([laid.at[0] + 400 * laid.ftPerPx, laid.at[1] + 300 * laid.ftPerPx]).toEqual([20, 10]);
  expect(underlayMoved(laid, [2, -1]).at).toEqual([laid.at[0] + 2, laid.at[1] - 1]);
});
it("scales it so that two of its places are as far apart as typed, and the first stays", () => {
  fc.assert(
    fc.property(fc.tuple(coordinate, coordinate), fc.tuple(coordinate, coordinate), fc.double({ min: 0.5, max: 300, noNaN: true }), (a, b, lengthFt) => {
      fc.pre(Math.hypot(a[0] - b[0], a[1] - b[1]) > 0.5);
      const scaled = underlayScaled(laid, a, b, lengthFt);
      if (!scaled) return;
      // Where a place of the picture, told by its pixels, lies after scaling.
      const after = (p: Point) =>
        [0, 1].map((axis) => scaled.at[axis === 0 ? 0 : 1] + (((p[axis === 0 ? 0 : 1] ?? 0) - laid.at[axis === 0 ? 0 : 1]) / laid.ftPerPx) * scaled.ftPerPx);
      const [a2, b2] = [after(a), after(b)];
      expect(a2[0]).toBeCloseTo(a[0], 6);
      expect(a2[1]).toBeCloseTo(a[1], 6);
      expect(Math.hypot((a2[0] ?? 0) - (b2[0] ?? 0), (a2[1] ?? 0) - (b2[1] ?? 0)) / lengthFt).toBeCloseTo(1, 6);
    }),
  );
});
it("says nothing where the two places are one, or the length is none", () => {
  expect(underlayScaled(laid, [1, 1], [1, 1], 5)).toBeNull();
  expect(underlayScaled(laid, [1, 1], [2, 1], 0)).toBeNull();
  expect(underlayScaled(laid, [0, 0], [1e-9, 0], 2000)).toBeNull();
});
