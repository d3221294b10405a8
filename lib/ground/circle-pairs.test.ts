import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { circlePairs } from "./circle-pairs";

const circles = fc.array(
  fc.record({
    x: fc.double({ min: -40, max: 40, noNaN: true }),
    y: fc.double({ min: -40, max: 40, noNaN: true }),
    r: fc.oneof(fc.constant(0), fc.double({ min: 0.1, max: 1, noNaN: true }), fc.double({ min: 5, max: 30, noNaN: true })),
  }),
  { maxLength: 40 },
);

describe("pairs of crowns", () => {
  it("are those that a look at every two finds, both ways round, with distance and direction", () => {
    fc.assert(
      fc.property(circles, (list) => {
        const [x, y, r] = [Float64Array.from(list, (c) => c.x), Float64Array.from(list, (c) => c.y), Float64Array.from(list, (c) => c.r)];
        const pairs = circlePairs(x, y, r);
        for (const [i, a] of list.entries()) {
          const near = Array.from(pairs.other.slice(pairs.start[i], pairs.start[i + 1])).sort((p, q) => p - q);
          const expected = list.flatMap((b, j) => (j !== i && a.r > 0 && b.r > 0 && (a.x - b.x) ** 2 + (a.y - b.y) ** 2 < (a.r + b.r) ** 2 ? [j] : []));
          expect(near).toEqual(expected);
          for (let p = pairs.start[i] ?? 0; p < (pairs.start[i + 1] ?? 0); p++) {
            const b = list[pairs.other[p] ?? 0];
            const away = pairs.awayFt[p] ?? 0;
            expect(a.x + away * Math.cos(pairs.angle[p] ?? 0)).toBeCloseTo(b?.x ?? 0, 9);
            expect(a.y + away * Math.sin(pairs.angle[p] ?? 0)).toBeCloseTo(b?.y ?? 0, 9);
          }
        }
      }),
    );
  });
});
