// Where a level line runs through the ground that may be planted: inside outlines, some feet from their edges, and clear of round things.
import type { Circle } from "./circle";
import type { Outline, Point } from "./outline";

export type Run = readonly [fromFt: number, toFt: number];

/** Ground inside every outline, at least insetFt from their sides, and outside every circle (which states its own clearance). */
export type Region = { readonly outlines: readonly Outline[]; readonly insetFt: number; readonly avoid: readonly Circle[] };

/** Plants stand on the very edge of what is allowed: a thousandth of a millionth of a foot is not too near. */
const EDGE_EPSILON_FT = 1e-9;

function runsMinus(runs: readonly Run[], [from, to]: Run): Run[] {
  return runs.flatMap(([a, b]): Run[] => {
    if (to <= a || from >= b) return [[a, b]];
    const left: Run[] = from > a ? [[a, from]] : [];
    return to < b ? [...left, [to, b]] : left;
  });
}

function runsBoth(a: readonly Run[], b: readonly Run[]): Run[] {
  return a.flatMap(([from, to]) => b.flatMap(([start, end]): Run[] => (Math.max(from, start) <= Math.min(to, end) ? [[Math.max(from, start), Math.min(to, end)]] : [])));
}

/** The stretch of the line at height y that lies nearer than `reach` to a side: the side's capsule is convex, so it is one stretch. Null where it is empty. */
function sideStretch([ax, ay]: Point, [bx, by]: Point, y: number, reach: number): Run | null {
  if (y <= Math.min(ay, by) - reach || y >= Math.max(ay, by) + reach) return null;
  let [from, to] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const [px, py] of [
    [ax, ay],
    [bx, by],
  ] as const) {
    const half = reach * reach - (y - py) ** 2;
    if (half <= 0) continue;
    from = Math.min(from, px - Math.sqrt(half));
    to = Math.max(to, px + Math.sqrt(half));
  }
  // The band beside the side: |cross| < reach · length with the foot of the perpendicular on the side.
  const [dx, dy] = [bx - ax, by - ay];
  const length = Math.hypot(dx, dy);
  if (length > 0 && dy !== 0) {
    for (const sign of [-1, 1]) {
      const x = ax + ((y - ay) * dx + sign * reach * length) / dy;
      const along = (x - ax) * dx + (y - ay) * dy;
      if (along >= 0 && along <= length * length) {
        from = Math.min(from, x);
        to = Math.max(to, x);
      }
    }
  }
  return from < to ? [from, to] : null;
}

/** Stretches of the level line inside one outline (ray casting). */
function outlineRuns(outline: Outline, y: number): Run[] {
  const xs: number[] = [];
  for (const [i, [ax, ay]] of outline.entries()) {
    const [bx, by] = outline[(i + 1) % outline.length] ?? [ax, ay];
    if (ay > y !== by > y) xs.push(ax + ((y - ay) / (by - ay)) * (bx - ax));
  }
  xs.sort((a, b) => a - b);
  return Array.from({ length: Math.floor(xs.length / 2) }, (_, i): Run => [xs[2 * i] ?? 0, xs[2 * i + 1] ?? 0]);
}

/** The stretches (in feet along x, in order, ends included) of the line at height y that lie in a region. Outlines are simple, either way round. */
export function regionRuns({ outlines, insetFt, avoid }: Region, y: number): Run[] {
  const reach = insetFt - EDGE_EPSILON_FT;
  let runs: Run[] | null = null;
  for (const outline of outlines) {
    let own = outlineRuns(outline, y);
    if (reach > 0)
      for (const [i, from] of outline.entries()) {
        if (own.length === 0) break;
        const stretch = sideStretch(from, outline[(i + 1) % outline.length] ?? from, y, reach);
        if (stretch) own = runsMinus(own, stretch);
      }
    runs = runs === null ? own : runsBoth(runs, own);
  }
  for (const { center, radiusFt } of avoid) {
    const half = radiusFt * radiusFt - (y - center[1]) ** 2;
    if (half > 0 && runs) runs = runsMinus(runs, [center[0] - Math.sqrt(half) + EDGE_EPSILON_FT, center[0] + Math.sqrt(half) - EDGE_EPSILON_FT]);
  }
  return runs ?? [];
}
