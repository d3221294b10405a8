// The ground as plants meet it: the sampled outline, and everything a plant needs room from as barriers of straight pieces.
import type { Border, KeepClear, Window } from "./border";
import { type Outline, outlineArea, type Point } from "./outline";
import { type PlanOutline, planSampled } from "./plan-outline";

export type Segment = readonly [from: Point, to: Point];

/** One edge of the bed, one window in it, or one thing to keep clear of. Plants stay on the inner side of edges and away from the others. */
export type Barrier =
  | { readonly kind: "edge"; readonly edge: number; readonly border: Border; readonly segments: readonly Segment[] }
  | { readonly kind: "window"; readonly edge: number; readonly window: Window; readonly segments: readonly Segment[] }
  | { readonly kind: "thing"; readonly thing: KeepClear; readonly segments: readonly Segment[] };

export type GroundPlan = { readonly outline: Outline; readonly areaSqFt: number; readonly barriers: readonly Barrier[] };

function segmentLength([[ax, ay], [bx, by]]: Segment): number {
  return Math.hypot(bx - ax, by - ay);
}

/** The stretch of an edge from so many feet to so many feet along it. */
function segmentsBetween(segments: readonly Segment[], fromFt: number, toFt: number): Segment[] {
  let before = 0;
  return segments.flatMap((segment): Segment[] => {
    const length = segmentLength(segment);
    const [start, end] = [Math.max(0, fromFt - before), Math.min(length, toFt - before)];
    before += length;
    if (end <= start || length === 0) return [];
    const [[ax, ay], [bx, by]] = segment;
    const at = (feet: number): Point => [ax + (feet / length) * (bx - ax), ay + (feet / length) * (by - ay)];
    return [[at(start), at(end)]];
  });
}

/** The ground of a drawn bed (`planFault` null) with its things to keep clear of. Edges come first, in their order, then windows, then things. */
export function groundPlan(plan: PlanOutline, keepClear: readonly KeepClear[] = []): GroundPlan {
  const { outline, sideEdges } = planSampled(plan);
  const edges = plan.map(({ border }, edge) => {
    const segments = outline.flatMap((from, i): Segment[] => (sideEdges[i] === edge ? [[from, outline[(i + 1) % outline.length] ?? from]] : []));
    return { kind: "edge" as const, edge, border, segments };
  });
  const windows = edges.flatMap(({ edge, border, segments }) =>
    border.what === "house wall"
      ? border.windows.map((window) => ({ kind: "window" as const, edge, window, segments: segmentsBetween(segments, window.fromFt, window.toFt) }))
      : [],
  );
  const things = keepClear.map((thing) => {
    const path = "path" in thing ? thing.path : [thing.at, thing.at];
    const segments = path.slice(1).map((to, i): Segment => [path[i] ?? to, to]);
    return { kind: "thing" as const, thing, segments };
  });
  return { outline, areaSqFt: outlineArea(outline), barriers: [...edges, ...windows, ...things] };
}

/** The place of a barrier nearest to a point, and the feet between them; infinite for a barrier without a length or place. */
export function barrierNearest([x, y]: Point, { segments }: Barrier): { readonly awayFt: number; readonly at: Point } {
  let [least, nearX, nearY] = [Number.POSITIVE_INFINITY, x, y];
  for (const [[ax, ay], [bx, by]] of segments) {
    const [dx, dy] = [bx - ax, by - ay];
    const squared = dx * dx + dy * dy;
    const share = squared === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / squared));
    const [px, py] = [ax + share * dx, ay + share * dy];
    const away = (x - px) * (x - px) + (y - py) * (y - py);
    if (away < least) [least, nearX, nearY] = [away, px, py];
  }
  return { awayFt: Math.sqrt(least), at: [nearX, nearY] };
}
