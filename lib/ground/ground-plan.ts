// The ground as plants meet it: the sampled outline, and everything a plant needs room from as barriers of straight pieces.
import type { Border, KeepClear } from "./border";
import type { Outline, Point } from "./outline";
import { outlineArea } from "./outline";
import { type PlanOutline, planSampled } from "./plan-outline";

export type Segment = readonly [from: Point, to: Point];

/** One edge of the bed, or one thing to keep clear of. Plants stay on the inner side of edges and away from things. */
export type Barrier =
  | { readonly kind: "edge"; readonly edge: number; readonly border: Border; readonly segments: readonly Segment[] }
  | { readonly kind: "thing"; readonly thing: KeepClear; readonly segments: readonly Segment[] };

export type GroundPlan = { readonly outline: Outline; readonly areaSqFt: number; readonly barriers: readonly Barrier[] };

/** The ground of a drawn bed (`planFault` null) with its things to keep clear of. Edges come first, in their order. */
export function groundPlan(plan: PlanOutline, keepClear: readonly KeepClear[] = []): GroundPlan {
  const { outline, sideEdges } = planSampled(plan);
  const edges = plan.map(({ border }, edge): Barrier => {
    const segments = outline.flatMap((from, i): Segment[] => (sideEdges[i] === edge ? [[from, outline[(i + 1) % outline.length] ?? from]] : []));
    return { kind: "edge", edge, border, segments };
  });
  const things = keepClear.map((thing): Barrier => {
    const path = "path" in thing ? thing.path : [thing.at, thing.at];
    const segments = path.slice(1).map((to, i): Segment => [path[i] ?? to, to]);
    return { kind: "thing", thing, segments };
  });
  return { outline, areaSqFt: outlineArea(outline), barriers: [...edges, ...things] };
}

/** Where on a segment a point comes nearest: its distance in feet and the share of the way. */
export function segmentNearest([x, y]: Point, [[ax, ay], [bx, by]]: Segment): { readonly awayFt: number; readonly share: number; readonly at: Point } {
  const [dx, dy] = [bx - ax, by - ay];
  const squared = dx * dx + dy * dy;
  const share = squared === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / squared));
  const at: Point = [ax + share * dx, ay + share * dy];
  return { awayFt: Math.hypot(x - at[0], y - at[1]), share, at };
}

/** The nearest place of a barrier: feet from the point, and feet along the barrier from its start. */
export function barrierNearest(point: Point, { segments }: Barrier): { readonly awayFt: number; readonly alongFt: number; readonly at: Point } {
  let best = { awayFt: Number.POSITIVE_INFINITY, alongFt: 0, at: point };
  let before = 0;
  for (const segment of segments) {
    const { awayFt, share, at } = segmentNearest(point, segment);
    const length = Math.hypot(segment[1][0] - segment[0][0], segment[1][1] - segment[0][1]);
    if (awayFt < best.awayFt) best = { awayFt, alongFt: before + share * length, at };
    before += length;
  }
  return best;
}
