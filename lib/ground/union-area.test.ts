import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Circle } from "./circle";
import { type Outline, outlineArea, type Point, pointInOutline, rectangleOutline } from "./outline";
import { patchCover } from "./patch-cover";
import { unionArea } from "./union-area";

const at = (x: number, y: number, radiusFt: number): Circle => ({ center: [x, y], radiusFt });
const lens = (s: number, r: number) => 2 * r * r * Math.acos(s / (2 * r)) - (s / 2) * Math.sqrt(4 * r * r - s * s);
const bed = rectangleOutline(26, 12);
const notched: Outline = [
  [0, 0],
  [20, 0],
  [20, 10],
  [10, 10],
  [10, 20],
  [0, 20],
];

/** Equal to a billionth. */
function expectExact(actual: number, exact: number): void {
  expect(Math.abs(actual - exact) / Math.max(exact, 1e-300)).toBeLessThan(1e-9);
}

/** Area by cutting into thin upright slices, each an exact sum of lengths: slow, simple, good to about a thousandth. */
function areaSliced(circles: readonly Circle[], outline: Outline | null, slices: number): number {
  const left = Math.min(...circles.map((c) => c.center[0] - c.radiusFt));
  const right = Math.max(...circles.map((c) => c.center[0] + c.radiusFt));
  const step = (right - left) / slices;
  let area = 0;
  for (let i = 0; i < slices; i++) {
    const x = left + (i + 0.5) * step;
    const crowns = circles.flatMap(({ center: [cx, cy], radiusFt }): Point[] => {
      const half = Math.sqrt(Math.max(0, radiusFt ** 2 - (x - cx) ** 2));
      return half > 0 ? [[cy - half, cy + half]] : [];
    });
    const heights = outline
      ? outline.flatMap(([ax, ay], k) => {
          const [bx, by] = outline[(k + 1) % outline.length] ?? [ax, ay];
          return ax > x !== bx > x ? [ay + ((x - ax) / (bx - ax)) * (by - ay)] : [];
        })
      : [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    heights.sort((a, b) => a - b);
    const marks = [...new Set([...crowns.flat(), ...heights.filter(Number.isFinite)])].sort((a, b) => a - b);
    marks.forEach((low, k) => {
      const high = marks[k + 1];
      if (high === undefined) return;
      const y = (low + high) / 2;
      const inBed = heights.filter((h) => h < y).length % 2 === 1;
      if (inBed && crowns.some(([from, to]) => from < y && y < to)) area += (high - low) * step;
    });
  }
  return area;
}

describe("closed cases", () => {
  it("one circle: whole, half over a side, a quarter at a corner, three quarters at a hollow corner", () => {
    expectExact(unionArea([at(5, 5, 2)], null), 4 * Math.PI);
    expectExact(unionArea([at(5, 5, 2)], bed), 4 * Math.PI);
    expectExact(unionArea([at(13, 0, 3)], bed), 4.5 * Math.PI);
    expectExact(unionArea([at(0, 0, 3)], bed), 2.25 * Math.PI);
    expectExact(unionArea([at(26, 12, 3)], bed), 2.25 * Math.PI);
    expectExact(unionArea([at(10, 10, 4)], notched), 12 * Math.PI);
  });

  it("a circle cut by a side: the segment", () => {
    const [r, d] = [3, 1];
    const segment = r * r * Math.acos(d / r) - d * Math.sqrt(r * r - d * d);
    expectExact(unionArea([at(13, -d, r)], bed), segment);
    expectExact(unionArea([at(13, d, r)], bed), Math.PI * r * r - segment);
  });

  it("a circle that holds the bed, one that just touches it, and one beyond it", () => {
    expectExact(unionArea([at(13, 6, 40)], bed), 312);
    expect(unionArea([at(13, -3, 3)], bed)).toBeCloseTo(0, 9);
    expectExact(unionArea([at(13, 3, 3)], bed), 9 * Math.PI);
    expectExact(unionArea([at(13, 6, 6)], bed), 36 * Math.PI);
    expect(unionArea([at(100, 100, 5)], bed)).toBe(0);
    expect(unionArea([], bed)).toBe(0);
    expect(unionArea([at(5, 5, 0)], bed)).toBe(0);
  });

  it("a circle through the bed's corners", () => {
    const square = rectangleOutline(2, 2);
    expectExact(unionArea([at(1, 1, Math.SQRT2)], square), 4);
    expectExact(unionArea([at(0, 0, 2)], square), Math.PI);
    expectExact(unionArea([at(1, 0, 1)], square), Math.PI / 2);
  });

  it("two circles: the lens counted once; touching, equal, one in the other, touching from within", () => {
    expectExact(unionArea([at(0, 0, 2), at(3, 0, 2)], null), 8 * Math.PI - lens(3, 2));
    expectExact(unionArea([at(0, 0, 2), at(4, 0, 2)], null), 8 * Math.PI);
    expectExact(unionArea([at(1, 1, 2), at(1, 1, 2)], null), 4 * Math.PI);
    expectExact(unionArea([at(1, 1, 2), at(1 + 1e-14, 1, 2)], null), 4 * Math.PI);
    expectExact(unionArea([at(0, 0, 5), at(1, 1, 2)], null), 25 * Math.PI);
    expectExact(unionArea([at(0, 0, 5), at(3, 0, 2)], null), 25 * Math.PI);
    for (const gap of [1e-6, 1e-9, 1e-11, 1e-13])
      expectExact(
        unionArea(
          [at(0, 0, 5), at(3 + gap, 0, 2)],
          bed.map(([x, y]): Point => [x - 13, y - 6]),
        ),
        25 * Math.PI,
      );
  });

  it("a ring of six with a hole in the middle", () => {
    const ring = Array.from({ length: 6 }, (_, i) => at(2 * Math.cos((i * Math.PI) / 3), 2 * Math.sin((i * Math.PI) / 3), 1.1));
    expectExact(unionArea(ring, null), 6 * (Math.PI * 1.21 - lens(2, 1.1)));
  });

  it("seven in a hexagon by the closed form of a patch, through the radius where they close up", () => {
    const hexagon = [at(0, 0, 1), ...Array.from({ length: 6 }, (_, i) => at(3 * Math.cos((i * Math.PI) / 3), 3 * Math.sin((i * Math.PI) / 3), 1))];
    for (const radiusFt of [1, 1.5, 1.6, Math.sqrt(3), 1.9, 3, 5, 9])
      expectExact(
        unionArea(
          hexagon.map((c) => ({ ...c, radiusFt })),
          null,
        ),
        patchCover(7, 3, radiusFt),
      );
  });

  it("a bed closed by a lattice of crowns is covered whole", () => {
    const lattice = Array.from({ length: 40 * 24 }, (_, i) => at((i % 40) + (Math.floor(i / 40) % 2) / 2 - 5, Math.floor(i / 40) * (Math.sqrt(3) / 2) - 3, 0.6));
    expectExact(unionArea(lattice, rectangleOutline(26, 12)), 312);
  });
});

const circle = fc.record({
  center: fc.tuple(fc.double({ min: -4, max: 24, noNaN: true }), fc.double({ min: -4, max: 24, noNaN: true })),
  radiusFt: fc.double({ min: 0.1, max: 8, noNaN: true }),
});
/** Whole numbers: full of circles that touch, coincide, hold each other and pass through corners. */
const awkward = fc.record({ center: fc.tuple(fc.integer({ min: -2, max: 22 }), fc.integer({ min: -2, max: 22 })), radiusFt: fc.integer({ min: 1, max: 6 }) });
const circles = fc.oneof(fc.array(circle, { minLength: 1, maxLength: 25 }), fc.array(awkward, { minLength: 1, maxLength: 25 }));
const outlines = fc.constantFrom<Outline | null>(null, notched, rectangleOutline(20, 20), [
  [0, 0],
  [20, 3],
  [16, 20],
  [9, 8],
]);

describe("any circles", () => {
  it("agree with thin slices", () => {
    fc.assert(
      fc.property(circles, outlines, (list, outline) => {
        const sliced = areaSliced(list, outline, 1500);
        expect(Math.abs(unionArea(list, outline) - sliced)).toBeLessThan(0.02 + 0.003 * sliced);
      }),
      { numRuns: 60 },
    );
  });

  it("never cover less for a circle more, and never more than both together", () => {
    fc.assert(
      fc.property(circles, fc.oneof(circle, awkward), outlines, (list, more, outline) => {
        const before = unionArea(list, outline);
        const after = unionArea([...list, more], outline);
        expect(after).toBeGreaterThanOrEqual(before - 1e-8);
        expect(after).toBeLessThanOrEqual(before + unionArea([more], outline) + 1e-8);
      }),
    );
  });

  it("cover the same in any order, moved, turned, mirrored, and by an outline run the other way", () => {
    fc.assert(
      fc.property(circles, outlines, fc.double({ min: -300, max: 300, noNaN: true }), fc.double({ min: 0, max: 7, noNaN: true }), (list, outline, shift, angle) => {
        const area = unionArea(list, outline);
        const turn = ([x, y]: Point): Point => [x * Math.cos(angle) - y * Math.sin(angle) + shift, x * Math.sin(angle) + y * Math.cos(angle) - shift];
        const mirror = ([x, y]: Point): Point => [-x, y];
        for (const change of [turn, mirror]) {
          const changed = list.map((c) => ({ ...c, center: change(c.center) }));
          expect(Math.abs(unionArea(changed, outline?.map(change) ?? null) - area)).toBeLessThan(1e-7 * Math.max(1, area));
        }
        expect(Math.abs(unionArea([...list].reverse(), outline && [...outline].reverse()) - area)).toBeLessThan(1e-8 * Math.max(1, area));
      }),
    );
  });

  it("are never made more by clipping, nor more than the bed, and two halves of a bed make the whole", () => {
    fc.assert(
      fc.property(circles, fc.double({ min: 1, max: 19, noNaN: true }), (list, split) => {
        const whole = unionArea(list, rectangleOutline(20, 20));
        expect(whole).toBeLessThanOrEqual(Math.min(unionArea(list, null), 400) + 1e-8);
        const right = rectangleOutline(20 - split, 20).map(([x, y]): Point => [x + split, y]);
        expect(unionArea(list, rectangleOutline(split, 20)) + unionArea(list, right)).toBeCloseTo(whole, 6);
      }),
    );
  });

  it("scale with the square of the size", () => {
    fc.assert(
      fc.property(circles, outlines, (list, outline) => {
        const larger = list.map(({ center: [x, y], radiusFt }) => at(3 * x, 3 * y, 3 * radiusFt));
        const wider = outline?.map(([x, y]): Point => [3 * x, 3 * y]) ?? null;
        expect(Math.abs(unionArea(larger, wider) - 9 * unionArea(list, outline))).toBeLessThan(1e-7);
      }),
    );
  });
});

describe("many circles", () => {
  it("are taken as one area: a tree over 5,000 plugs", () => {
    const plugs = Array.from({ length: 5000 }, (_, i) => at((i % 100) * 0.5, Math.floor(i / 100) * 0.45, 0.28));
    const outline = rectangleOutline(49.5, 22);
    const area = unionArea([...plugs, at(25, 11, 15)], outline);
    expect(area).toBeLessThanOrEqual(outlineArea(outline));
    expect(area).toBeGreaterThan(0.85 * outlineArea(outline));
    expect(pointInOutline([25, 11], outline)).toBe(true);
  });
});
