// The bed as a lattice of small sites, each with its place in the view: how far back it lies and how far along. Shares are of the area, 0–1.
import { barrierNearest, type GroundPlan } from "./ground-plan";
import type { Point } from "./outline";
import { regionRuns } from "./region-runs";

/** From where a bed is looked at: from one side, looking in a direction (radians counterclockwise from x), or from all round it. */
export type Standpoint = { readonly kind: "one side"; readonly lookAngle: number } | { readonly kind: "all round" };

export type Site = {
  readonly at: Point;
  /** Share of the bed's area that lies nearer to the eye: 0 in front (at the edge of an island), 1 at the back (in its middle). */
  readonly depth: number;
  /** Share of the bed's area before it, along the front from one end (or round an island). */
  readonly along: number;
  /** Feet to each barrier of the plan, in its order. */
  readonly awayFt: readonly number[];
};

export type Sites = {
  readonly sites: readonly Site[];
  readonly sqFtEach: number;
  readonly middle: Point;
  /** Feet from front to back on average; of an island from its edge to its middle. */
  readonly depthFt: number;
};

/** Share of the values below each (ties by order): turns a measure into a share of the area. */
function shareRanks(values: readonly number[]): number[] {
  const ranks = new Array<number>(values.length).fill(0);
  const order = values.map((_, i) => i).sort((a, b) => (values[a] ?? 0) - (values[b] ?? 0) || a - b);
  for (const [rank, i] of order.entries()) ranks[i] = (rank + 0.5) / values.length;
  return ranks;
}

/** About so many sites over the bed. A bed seen from one side is measured from front to back at each place along it, so that a curved bed has its front everywhere. */
export function layoutSites(plan: GroundPlan, standpoint: Standpoint, sitesWanted: number): Sites {
  const stepFt = Math.sqrt(plan.areaSqFt / Math.max(1, sitesWanted));
  const angle = standpoint.kind === "one side" ? standpoint.lookAngle : 0;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const outline = plan.outline.map(([x, y]): Point => [x * cos + y * sin, y * cos - x * sin]);
  const low = outline.reduce((least, p) => Math.min(least, p[1]), Number.POSITIVE_INFINITY);
  const high = outline.reduce((most, p) => Math.max(most, p[1]), Number.NEGATIVE_INFINITY);
  const found: { at: Point; chordShare: number; rowFt: number }[] = [];
  for (let y = low + stepFt / 2; y < high; y += stepFt)
    for (const [from, to] of regionRuns({ outlines: [outline], insetFt: 0, avoid: [] }, y)) {
      const count = Math.max(1, Math.round((to - from) / stepFt));
      for (let k = 0; k < count; k++) {
        const share = (k + 0.5) / count;
        const x = from + share * (to - from);
        found.push({ at: [x * cos - y * sin, x * sin + y * cos], chordShare: share, rowFt: y });
      }
    }
  const middle = found.reduce(([x, y], { at }): Point => [x + at[0] / found.length, y + at[1] / found.length], [0, 0] as Point);
  const away = found.map(({ at }) => plan.barriers.map((barrier) => barrierNearest(at, barrier).awayFt));
  const edgeFt = away.map((list) => list.reduce((least, awayFt, b) => (plan.barriers[b]?.kind === "edge" ? Math.min(least, awayFt) : least), Number.POSITIVE_INFINITY));
  const round = standpoint.kind === "all round";
  const depth = shareRanks(found.map(({ chordShare }, i) => (round ? (edgeFt[i] ?? 0) : chordShare)));
  const along = shareRanks(found.map(({ at, rowFt }) => (round ? Math.atan2(at[1] - middle[1], at[0] - middle[0]) : rowFt)));
  const sites = found.map(({ at }, i): Site => ({ at, depth: depth[i] ?? 0, along: along[i] ?? 0, awayFt: away[i] ?? [] }));
  const depthFt = round ? Math.max(...edgeFt.filter(Number.isFinite), 0) : plan.areaSqFt / Math.max(high - low, 1e-9);
  return { sites, sqFtEach: plan.areaSqFt / Math.max(1, sites.length), middle, depthFt };
}
