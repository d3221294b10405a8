import type { Point } from "./outline";

/** A round crown seen from above. Feet. */
export type Circle = { readonly center: Point; readonly radiusFt: number };

/** Circles are one, contained or merely touching if they are so within this share of the larger radius. */
const SAME = 1e-12;

/** Whether the smaller circle lies wholly in the larger. */
function circleHolds(larger: Circle, smaller: Circle): boolean {
  const apart = Math.hypot(larger.center[0] - smaller.center[0], larger.center[1] - smaller.center[1]);
  return apart <= larger.radiusFt - smaller.radiusFt + SAME * larger.radiusFt;
}

function circlesOverlap(a: Circle, b: Circle): boolean {
  const apart = Math.hypot(a.center[0] - b.center[0], a.center[1] - b.center[1]);
  return apart < a.radiusFt + b.radiusFt - SAME * Math.max(a.radiusFt, b.radiusFt);
}

export type CircleNeighbors = {
  /** Largest first; circles that lie in another one are left out, and so are those without a size. */
  readonly circles: readonly Circle[];
  /** Pairs of indexes whose edges cross, the lower first. */
  readonly crossings: readonly (readonly [number, number])[];
};

/**
 * The circles that matter to their union, and which of them cross. A grid of cells about a mean circle wide keeps the search to neighbors; every circle
 * is entered in all cells it reaches, so that a tree over a thousand plugs costs no more than the ground it covers.
 */
export function circleNeighbors(all: readonly Circle[]): CircleNeighbors {
  const sorted = all.filter(({ radiusFt }) => radiusFt > 0).sort((a, b) => b.radiusFt - a.radiusFt || a.center[0] - b.center[0] || a.center[1] - b.center[1]);
  const cellFt = (2 * sorted.reduce((sum, { radiusFt }) => sum + radiusFt, 0)) / Math.max(1, sorted.length);
  const cells = new Map<string, number[]>();
  const circles: Circle[] = [];
  const crossings: [number, number][] = [];
  for (const circle of sorted) {
    const keys = cellKeys(circle, cellFt);
    const near = new Set(keys.flatMap((key) => cells.get(key) ?? []));
    const larger = [...near].flatMap((index) => {
      const other = circles[index];
      return other ? [{ index, other }] : [];
    });
    if (larger.some(({ other }) => circleHolds(other, circle))) continue;
    const own = circles.push(circle) - 1;
    for (const { index, other } of larger) if (circlesOverlap(other, circle)) crossings.push([index, own]);
    for (const key of keys) {
      const cell = cells.get(key);
      if (cell) cell.push(own);
      else cells.set(key, [own]);
    }
  }
  return { circles, crossings };
}

function cellKeys({ center: [x, y], radiusFt }: Circle, cellFt: number): string[] {
  const keys: string[] = [];
  for (let i = Math.floor((x - radiusFt) / cellFt); i <= Math.floor((x + radiusFt) / cellFt); i++)
    for (let j = Math.floor((y - radiusFt) / cellFt); j <= Math.floor((y + radiusFt) / cellFt); j++) keys.push(`${i},${j}`);
  return keys;
}
