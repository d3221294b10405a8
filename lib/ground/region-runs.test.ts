import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { outlineDistance, type Point, pointInside } from "./outline";
import { driftOutline } from "./plant-group";
import { regionRuns } from "./region-runs";

const star: Point[] = [
  [0, 0],
  [12, 1],
  [20, -3],
  [19, 8],
  [24, 14],
  [11, 10],
  [3, 15],
];

describe("the ground along a level line", () => {
  it("holds exactly the places that are inside, far enough from the edge and out of what is kept clear", () => {
    const avoid = [{ center: [10, 5] as Point, radiusFt: 2 }];
    fc.assert(
      fc.property(
        fc.double({ min: -4, max: 16, noNaN: true }),
        fc.double({ min: -2, max: 26, noNaN: true }),
        fc.constantFrom(0, 0.5, 1.7),
        fc.boolean(),
        (y, x, insetFt, drift) => {
          const outlines = drift ? [star, driftOutline([12, 6], 22, 12, 0.2)] : [star];
          const runs = regionRuns({ outlines, insetFt, avoid }, y);
          const away = Math.min(...outlines.map((outline) => outlineDistance([x, y], outline)));
          const far = Math.hypot(x - 10, y - 5);
          // Within a hair of a limit either answer is right.
          fc.pre(Math.abs(away - insetFt) > 1e-6 && away > 1e-6 && Math.abs(far - 2) > 1e-6);
          const expected = outlines.every((outline) => pointInside([x, y], outline)) && away > insetFt && far > 2;
          expect(runs.some(([from, to]) => x >= from && x <= to)).toBe(expected);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it("comes in order and without overlaps", () => {
    for (let y = -3; y < 15; y += 0.37) {
      const runs = regionRuns({ outlines: [star], insetFt: 0.4, avoid: [] }, y);
      for (const [i, [from, to]] of runs.entries()) {
        expect(to).toBeGreaterThanOrEqual(from);
        if (i > 0) expect(from).toBeGreaterThan(runs[i - 1]?.[1] ?? 0);
      }
    }
  });
});
