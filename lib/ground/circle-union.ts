// The union of round crowns, made ready once for many years: who can ever meet whom, and which sides of the bed each can reach, at the largest radii.
// Then each year costs one pass over the pairs that do meet. `unionArea` (union-area.ts) is the form for one time.
//
// Green's theorem: area = ½ ∮ (x dy − y dx) along the edge of the region, counterclockwise. That edge is made of the arcs of circles that lie in no other
// circle and inside the bed, and of the stretches of the bed's sides that lie in some circle.
import { type BedSides, bedSides, sideAwayFt, sideReach, sidesHold } from "./bed-sides";
import { circlePairs } from "./circle-pairs";
import type { Outline, Point } from "./outline";

const FULL_TURN = 2 * Math.PI;
/** A meeting point is taken as on a side up to this share beyond its ends: an arc split once too often does no harm, once too seldom does. */
const BEYOND_END = 1e-9;
/** A line closer to touching a circle than this share of its radius squared does not cut it. */
const GRAZING = 1e-11;
/** Circles are one, contained or merely touching if they are so within this share of the larger radius. */
const SAME = 1e-12;
/** Places along an arc at which it is asked for being in the bed; odd shares, so that no square or hexagon meets all of them. */
const ASKED_AT = [0.5, 0.2137, 0.8291] as const;

export type CircleUnion = {
  /** Square feet covered at these radii (feet, in the order of the centers, none over its largest), clipped to the bed. `counts`: 1 for the circles that are there; all unless said. */
  readonly areaAt: (radiiFt: ArrayLike<number>, counts?: ArrayLike<number>) => number;
};

/** Intervals on a line by their starts, flat as from, to, from, to …; sorted in place by insertion, which few nearly sorted ones like best. */
function intervalsSort(flat: number[]): void {
  for (let i = 2; i < flat.length; i += 2) {
    const from = flat[i] ?? 0;
    const to = flat[i + 1] ?? 0;
    let j = i - 2;
    while (j >= 0 && (flat[j] ?? 0) > from) {
      flat[j + 2] = flat[j] ?? 0;
      flat[j + 3] = flat[j + 1] ?? 0;
      j -= 2;
    }
    flat[j + 2] = from;
    flat[j + 3] = to;
  }
}

/** An angle brought to 0 up to a full turn. */
function angleWrapped(angle: number): number {
  const wrapped = angle % FULL_TURN;
  return wrapped < 0 ? wrapped + FULL_TURN : wrapped;
}

/** Enters an interval of angles, split where it passes over 0. */
function anglesEntered(flat: number[], from: number, to: number): void {
  const start = angleWrapped(from);
  const end = angleWrapped(to);
  if (start <= end) flat.push(start, end);
  else flat.push(start, FULL_TURN, 0, end);
}

/** ½ ∫ (x dy − y dx) along an arc, counterclockwise, about the origin. */
function arcTerm(x: number, y: number, r: number, from: number, to: number): number {
  return (r * (r * (to - from) + x * (Math.sin(to) - Math.sin(from)) - y * (Math.cos(to) - Math.cos(from)))) / 2;
}

/** Indexes of the circles in rows about a mean circle deep, each from left to right: neighbors lie near each other in memory too. */
function centersInRows(centers: readonly Point[], radiiFt: ArrayLike<number>): Int32Array {
  let sum = 0;
  for (let i = 0; i < centers.length; i++) sum += radiiFt[i] ?? 0;
  const rowFt = (2 * sum) / Math.max(1, centers.length) || 1;
  const rows = Float64Array.from(centers, ([, y]) => Math.floor(y / rowFt));
  return Int32Array.from(centers, (_, i) => i).sort((a, b) => (rows[a] ?? 0) - (rows[b] ?? 0) || (centers[a]?.[0] ?? 0) - (centers[b]?.[0] ?? 0) || a - b);
}

/**
 * A union made ready. Centers and largest radii in feet; the outline (null: not clipped) is simple, convex or not, either way round.
 * Relative error about 1e-12, the worse the smaller the part of a circle that counts. Cost: n log n for crowns that meet a bounded number of others.
 */
export function circleUnion(centers: readonly Point[], largestFt: ArrayLike<number>, outline: Outline | null): CircleUnion {
  const origin = outline?.[0] ?? centers[0] ?? [0, 0];
  const count = centers.length;
  const order = centersInRows(centers, largestFt);
  const x = Float64Array.from(order, (i) => (centers[i]?.[0] ?? 0) - origin[0]);
  const y = Float64Array.from(order, (i) => (centers[i]?.[1] ?? 0) - origin[1]);
  const largest = Float64Array.from(order, (i) => largestFt[i] ?? 0);
  const pairs = circlePairs(x, y, largest);
  const sides = outline ? bedSides(outline, origin) : null;
  const reach = sides ? sideReach(sides, x, y, largest) : null;

  /** Which circles count: those with a size that lie in no other one; of equal ones in one place the first. */
  const standing = (radii: Float64Array, counts: ArrayLike<number> | undefined): Uint8Array => {
    const there = new Uint8Array(count);
    for (let i = 0; i < count; i++) if ((radii[i] ?? 0) > 0 && (counts === undefined || counts[order[i] ?? 0])) there[i] = 1;
    const alive = there.slice();
    for (let i = 0; i < count; i++) {
      if (!there[i]) continue;
      const r = radii[i] ?? 0;
      for (let p = pairs.start[i] ?? 0; p < (pairs.start[i + 1] ?? 0); p++) {
        const j = pairs.other[p] ?? 0;
        const other = radii[j] ?? 0;
        if (!there[j] || (pairs.awayFt[p] ?? 0) > other - r + SAME * other) continue;
        if ((pairs.awayFt[p] ?? 0) > r - other + SAME * r || j < i) {
          alive[i] = 0;
          break;
        }
      }
    }
    return alive;
  };

  /** Whether an arc lies in the bed: asked at the place farthest from the sides that the circle reaches, for it may touch one. */
  const arcInside = (bed: BedSides, i: number, r: number, from: number, to: number): boolean => {
    if (!reach) return true;
    let [bestX, bestY, bestAway] = [0, 0, -1];
    for (const share of ASKED_AT) {
      const angle = from + share * (to - from);
      const px = (x[i] ?? 0) + r * Math.cos(angle);
      const py = (y[i] ?? 0) + r * Math.sin(angle);
      let away = Number.POSITIVE_INFINITY;
      for (let k = reach.start[i] ?? 0; k < (reach.start[i + 1] ?? 0); k++) away = Math.min(away, sideAwayFt(bed, reach.side[k] ?? 0, px, py));
      if (away > bestAway) [bestX, bestY, bestAway] = [px, py, away];
    }
    return sidesHold(bed, bestX, bestY);
  };

  const areaAt = (radiiFt: ArrayLike<number>, counts?: ArrayLike<number>): number => {
    const radii = Float64Array.from(order, (i) => radiiFt[i] ?? 0);
    const alive = standing(radii, counts);
    const sideStretches: number[][] = sides ? Array.from(sides.ax, () => []) : [];
    const covered: number[] = [];
    const cuts: number[] = [];
    // Neumaier's sum (1974), in which small terms are not lost among the large.
    let sum = 0;
    let lost = 0;
    const add = (term: number) => {
      const next = sum + term;
      lost += Math.abs(sum) >= Math.abs(term) ? sum - next + term : term - next + sum;
      sum = next;
    };
    let [i, r, cx, cy, nearSides] = [0, 0, 0, 0, false];
    const arc = (from: number, to: number) => {
      if (to > from && (!sides || !nearSides || arcInside(sides, i, r, from, to))) add(arcTerm(cx, cy, r, from, to));
    };
    const stretch = (from: number, to: number) => {
      let start = from;
      for (const cut of cuts)
        if (cut > start && cut < to) {
          arc(start, cut);
          start = cut;
        }
      arc(start, to);
    };
    for (i = 0; i < count; i++) {
      if (!alive[i]) continue;
      r = radii[i] ?? 0;
      cx = x[i] ?? 0;
      cy = y[i] ?? 0;
      nearSides = reach !== null && (reach.nearestFt[i] ?? 0) <= r * (1 + BEYOND_END);
      if (reach && !nearSides && !reach.inside[i]) continue;
      covered.length = 0;
      cuts.length = 0;
      for (let p = pairs.start[i] ?? 0; p < (pairs.start[i + 1] ?? 0); p++) {
        const j = pairs.other[p] ?? 0;
        if (!alive[j]) continue;
        const other = radii[j] ?? 0;
        const away = pairs.awayFt[p] ?? 0;
        if (away >= r + other - SAME * Math.max(r, other)) continue;
        const along = (away + ((r - other) * (r + other)) / away) / 2;
        // Half the common chord by Heron's formula in factors, which keeps its digits when the circles barely cross.
        const half = Math.sqrt(Math.max(0, (away + r + other) * (r + other - away) * (away + r - other) * (away - r + other))) / (2 * away);
        const spread = Math.atan2(half, along);
        const direction = pairs.angle[p] ?? 0;
        anglesEntered(covered, direction - spread, direction + spread);
      }
      if (sides && reach && nearSides)
        for (let k = reach.start[i] ?? 0; k < (reach.start[i + 1] ?? 0); k++) {
          const s = reach.side[k] ?? 0;
          const fromX = sides.ax[s] ?? 0;
          const fromY = sides.ay[s] ?? 0;
          const dx = (sides.bx[s] ?? 0) - fromX;
          const dy = (sides.by[s] ?? 0) - fromY;
          const length = Math.sqrt(dx * dx + dy * dy);
          if (length === 0) continue;
          const ux = dx / length;
          const uy = dy / length;
          const px = cx - fromX;
          const py = cy - fromY;
          const off = ux * py - uy * px;
          const reach2 = (r - off) * (r + off);
          if (reach2 <= GRAZING * r * r) continue;
          const middle = px * ux + py * uy;
          const half = Math.sqrt(reach2);
          const [first, second] = [middle - half, middle + half];
          if (first >= -BEYOND_END * length && first <= (1 + BEYOND_END) * length) cuts.push(angleWrapped(Math.atan2(-off * ux - half * uy, off * uy - half * ux)));
          if (second >= -BEYOND_END * length && second <= (1 + BEYOND_END) * length) cuts.push(angleWrapped(Math.atan2(-off * ux + half * uy, off * uy + half * ux)));
          const start = Math.max(0, first / length);
          const end = Math.min(1, second / length);
          if (start < end) sideStretches[s]?.push(start, end);
        }
      intervalsSort(covered);
      if (cuts.length > 1) cuts.sort((a, b) => a - b);
      let open = 0;
      for (let k = 0; k < covered.length; k += 2) {
        const from = covered[k] ?? 0;
        if (from > open) stretch(open, from);
        open = Math.max(open, covered[k + 1] ?? 0);
      }
      if (open < FULL_TURN) stretch(open, FULL_TURN);
    }
    if (sides)
      for (const [s, flat] of sideStretches.entries()) {
        intervalsSort(flat);
        const cross = (sides.ax[s] ?? 0) * (sides.by[s] ?? 0) - (sides.bx[s] ?? 0) * (sides.ay[s] ?? 0);
        let end = 0;
        for (let k = 0; k < flat.length; k += 2) {
          const from = Math.max(end, flat[k] ?? 0);
          const to = flat[k + 1] ?? 0;
          if (to > from) add(((to - from) * cross) / 2);
          end = Math.max(end, to);
        }
      }
    return Math.max(0, sum + lost);
  };
  return { areaAt };
}
