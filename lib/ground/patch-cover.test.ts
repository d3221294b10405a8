import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cellCover, patchCover, patchNeighbors } from "./patch-cover";

const DIRECTIONS = [
  [1, 0],
  [0, 1],
  [-1, 1],
  [-1, 0],
  [0, -1],
  [1, -1],
] as const;

/** The first n points of a spiral of hexagon rings on a triangular grid of spacing 1. Each ring begins one past its corner, so that new points gain the most neighbors. */
function spiral(n: number): [number, number][] {
  const cells: [number, number][] = [[0, 0]];
  for (let ring = 1; cells.length < n; ring++) {
    let [q, r] = [0, -ring];
    const round: [number, number][] = [];
    for (const [dq, dr] of DIRECTIONS)
      for (let i = 0; i < ring; i++) {
        [q, r] = [q + dq, r + dr];
        round.push([q, r]);
      }
    cells.push(...round);
  }
  return cells.slice(0, n).map(([q, r]) => [q + r / 2, (r * Math.sqrt(3)) / 2]);
}

/** Area of the union of circles by counting a fine grid: the slow and sure way. */
function unionCounted(points: readonly [number, number][], radius: number, step: number): number {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  let cells = 0;
  for (let x = Math.min(...xs) - radius; x < Math.max(...xs) + radius; x += step)
    for (let y = Math.min(...ys) - radius; y < Math.max(...ys) + radius; y += step) if (points.some(([px, py]) => (px - x) ** 2 + (py - y) ** 2 <= radius * radius)) cells++;
  return cells * step * step;
}

describe("a compact patch", () => {
  it("counts as many neighbors as the spiral has", () => {
    expect([0, 1, 2, 3, 4, 5, 6, 7, 10, 19].map(patchNeighbors)).toEqual([0, 0, 1, 3, 5, 7, 9, 12, 19, 42]);
    for (let n = 1; n <= 120; n++) {
      const points = spiral(n);
      const pairs = points.flatMap(([ax, ay], i) => points.slice(i + 1).filter(([bx, by]) => Math.hypot(ax - bx, ay - by) < 1.001)).length;
      expect(patchNeighbors(n)).toBe(pairs);
    }
  });

  it("covers as many circles as there are until they meet, and one circle for one plant however wide", () => {
    expect(patchCover(7, 3, 1.5)).toBeCloseTo(7 * Math.PI * 2.25, 9);
    expect(patchCover(1, 2, 5)).toBeCloseTo(25 * Math.PI, 9);
    expect(patchCover(2, 2, Math.SQRT2)).toBeCloseTo(2 * 2 * Math.PI - (Math.PI - 2), 9);
    expect(patchCover(0, 2, 1)).toBe(0);
    expect(patchCover(5, 2, 0)).toBe(0);
  });

  it("agrees with counting a fine grid, before and after the circles close up", () => {
    for (const n of [2, 3, 4, 5, 7, 8, 11, 12, 19, 23])
      for (const radius of [0.45, 0.55, 0.6, 0.8, 1.2]) {
        const counted = unionCounted(spiral(n), radius, 0.02);
        expect(Math.abs(patchCover(n, 1, radius) - counted) / counted, `${n} plants, radius ${radius}`).toBeLessThan(0.015);
      }
  });

  it("is continuous where the circles close up", () => {
    const closing = 4 / Math.sqrt(3);
    for (const n of [1, 2, 3, 8, 50, 777]) expect(patchCover(n, 4, closing * (1 - 1e-12))).toBeCloseTo(patchCover(n, 4, closing), 6);
    expect(cellCover(4, closing * (1 - 1e-12))).toBeCloseTo(8 * Math.sqrt(3), 6);
  });

  it("never falls with a wider crown or another plant, and is never under its plants' own cells nor over their circles", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 500 }), fc.double({ min: 0.2, max: 10, noNaN: true }), fc.double({ min: 0.05, max: 12, noNaN: true }), (n, s, r) => {
        const cover = patchCover(n, s, r);
        expect(patchCover(n, s, r * 1.01)).toBeGreaterThanOrEqual(cover);
        expect(patchCover(n + 1, s, r)).toBeGreaterThanOrEqual(cover * (1 - 1e-12));
        expect(cover).toBeGreaterThanOrEqual(n * cellCover(s, r) * (1 - 1e-9));
        expect(cover).toBeLessThanOrEqual(n * Math.PI * r * r * (1 + 1e-9));
      }),
    );
  });
});
