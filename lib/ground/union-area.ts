// Area under round crowns where positions are known: the union of circles, clipped to a bed, without a grid of samples.
//
// Green's theorem: area = ½ ∮ (x dy − y dx) along the edge of the region, counterclockwise. That edge is made of the arcs of circles that lie in no other
// circle and inside the bed, and of the stretches of the bed's sides that lie in some circle. Every meeting point is computed once and used by both lines
// that meet there, so that the edge closes and the error stays that of the arithmetic.
import { type Circle, circleNeighbors } from "./circle-neighbors";
import { type Outline, outlineDistance, type Point, pointInside } from "./outline";

type Interval = readonly [from: number, to: number];

const FULL_TURN = 2 * Math.PI;
/** A meeting point is taken as on a side up to this share beyond its ends: an arc split once too often does no harm, once too seldom does. */
const BEYOND_END = 1e-9;
/** A line closer to touching a circle than this share of its radius squared does not cut it. */
const GRAZING = 1e-11;

/** What is found out about one circle: stretches of its edge inside other circles (angles, counterclockwise) and angles at which it meets a side. */
type Rim = { readonly circle: Circle; readonly covered: Interval[]; readonly cuts: number[] };

function angleTo(center: Point, point: Point): number {
  return Math.atan2(point[1] - center[1], point[0] - center[0]);
}

/** Enters in both rims which stretch of each lies in the other. The circles must cross. */
function crossingEntered(a: Rim, b: Rim): void {
  const [ca, cb] = [a.circle.center, b.circle.center];
  const [ra, rb] = [a.circle.radiusFt, b.circle.radiusFt];
  const apart = Math.hypot(cb[0] - ca[0], cb[1] - ca[1]);
  const [ux, uy] = [(cb[0] - ca[0]) / apart, (cb[1] - ca[1]) / apart];
  const along = (apart + ((ra - rb) * (ra + rb)) / apart) / 2;
  // Half the common chord by Heron's formula in factors, which keeps its digits when the circles barely cross.
  const half = Math.sqrt(Math.max(0, (apart + ra + rb) * (ra + rb - apart) * (apart + ra - rb) * (apart - ra + rb))) / (2 * apart);
  const left: Point = [ca[0] + along * ux - half * uy, ca[1] + along * uy + half * ux];
  const right: Point = [ca[0] + along * ux + half * uy, ca[1] + along * uy - half * ux];
  a.covered.push([angleTo(ca, right), angleTo(ca, left)]);
  b.covered.push([angleTo(cb, left), angleTo(cb, right)]);
}

/** Enters where a side cuts the rim, and returns the stretch of the side inside the circle (0 = from, 1 = to), or null. */
function sideEntered(rim: Rim, from: Point, to: Point): Interval | null {
  const { center, radiusFt } = rim.circle;
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length === 0) return null;
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const [px, py] = [center[0] - from[0], center[1] - from[1]];
  const away = ux * py - uy * px;
  const reach = (radiusFt - away) * (radiusFt + away);
  if (reach <= GRAZING * radiusFt ** 2) return null;
  const middle = px * ux + py * uy;
  const half = Math.sqrt(reach);
  for (const along of [middle - half, middle + half])
    if (along >= -BEYOND_END * length && along <= (1 + BEYOND_END) * length) rim.cuts.push(angleTo(center, [from[0] + along * ux, from[1] + along * uy]));
  const [start, end] = [Math.max(0, (middle - half) / length), Math.min(1, (middle + half) / length)];
  return start < end ? [start, end] : null;
}

/** Intervals on a line as few disjoint ones, in order. */
function intervalsMerged(intervals: readonly Interval[]): Interval[] {
  const merged: Interval[] = [];
  for (const [from, to] of [...intervals].sort((a, b) => a[0] - b[0])) {
    const last = merged.at(-1);
    if (last && from <= last[1]) merged[merged.length - 1] = [last[0], Math.max(last[1], to)];
    else merged.push([from, to]);
  }
  return merged;
}

/** An angle brought to 0 up to a full turn. */
function angleWrapped(angle: number): number {
  const wrapped = angle % FULL_TURN;
  return wrapped < 0 ? wrapped + FULL_TURN : wrapped;
}

/** The arcs of a rim that lie in no other circle, cut where the bed's sides cross; angles from 0 to a full turn. */
function rimArcs({ covered, cuts }: Rim): Interval[] {
  const flat = covered.flatMap(([from, to]): Interval[] => {
    const [start, end] = [angleWrapped(from), angleWrapped(to)];
    return start <= end
      ? [[start, end]]
      : [
          [start, FULL_TURN],
          [0, end],
        ];
  });
  const arcs: Interval[] = [];
  let open = 0;
  const sortedCuts = cuts.map(angleWrapped).sort((a, b) => a - b);
  const add = (from: number, to: number) => {
    let start = from;
    for (const cut of sortedCuts)
      if (cut > start && cut < to) {
        arcs.push([start, cut]);
        start = cut;
      }
    if (to > start) arcs.push([start, to]);
  };
  for (const [from, to] of intervalsMerged(flat)) {
    add(open, from);
    open = to;
  }
  add(open, FULL_TURN);
  return arcs;
}

/** Places along an arc at which it is asked for being in the bed; odd shares, so that no square or hexagon meets all of them. */
const ASKED_AT = [0.5, 0.2137, 0.8291] as const;

/** Whether an arc that no side cuts lies in the bed: asked at the place farthest from all sides, for it may touch one. */
function arcInside({ center, radiusFt }: Circle, [from, to]: Interval, bed: Outline): boolean {
  const asked = ASKED_AT.map((share): { point: Point; away: number } => {
    const angle = from + share * (to - from);
    const point: Point = [center[0] + radiusFt * Math.cos(angle), center[1] + radiusFt * Math.sin(angle)];
    return { point, away: outlineDistance(point, bed) };
  });
  const best = asked.reduce((a, b) => (b.away > a.away ? b : a));
  return pointInside(best.point, bed);
}

/** ½ ∫ (x dy − y dx) along an arc, counterclockwise, about the origin. */
function arcTerm({ center: [x, y], radiusFt: r }: Circle, [from, to]: Interval): number {
  return (r * (r * (to - from) + x * (Math.sin(to) - Math.sin(from)) - y * (Math.cos(to) - Math.cos(from)))) / 2;
}

/** Sum in which the small terms are not lost among the large (Neumaier 1974). */
function termsSummed(terms: readonly number[]): number {
  let [sum, lost] = [0, 0];
  for (const term of terms) {
    const next = sum + term;
    lost += Math.abs(sum) >= Math.abs(term) ? sum - next + term : term - next + sum;
    sum = next;
  }
  return sum + lost;
}

/** The outline counterclockwise. */
function outlineTurnedLeft(outline: Outline): Outline {
  const doubled = outline.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = outline[(i + 1) % outline.length] ?? [x, y];
    return sum + (x * nextY - nextX * y);
  }, 0);
  return doubled < 0 ? [...outline].reverse() : outline;
}

/** Terms of the bed's sides where they lie in some circle. Enters the sides' cuts in the rims. */
function sideTerms(outline: Outline, rims: readonly Rim[]): number[] {
  return outline.flatMap((from, i) => {
    const to = outline[(i + 1) % outline.length] ?? from;
    const inside = rims.flatMap((rim) => {
      const stretch = sideEntered(rim, from, to);
      return stretch ? [stretch] : [];
    });
    const cross = from[0] * to[1] - to[0] * from[1];
    return intervalsMerged(inside).map(([start, end]) => ((end - start) * cross) / 2);
  });
}

/**
 * Square feet covered by circles, counted once where they overlap, clipped to an outline (null: not clipped). The outline is simple (`outlineFault` null),
 * convex or not, either way round. Circles without a size cover nothing. Relative error about 1e-12, the worse the smaller the part of a circle that counts.
 */
export function unionArea(all: readonly Circle[], outline: Outline | null): number {
  const origin = outline?.[0] ?? all[0]?.center ?? [0, 0];
  const moved = ([x, y]: Point): Point => [x - origin[0], y - origin[1]];
  const { circles, crossings } = circleNeighbors(all.map(({ center, radiusFt }) => ({ center: moved(center), radiusFt })));
  const rims = circles.map((circle): Rim => ({ circle, covered: [], cuts: [] }));
  for (const [i, j] of crossings) {
    const [a, b] = [rims[i], rims[j]];
    if (a && b) crossingEntered(a, b);
  }
  const bed = outline ? outlineTurnedLeft(outline.map(moved)) : null;
  const terms = bed ? sideTerms(bed, rims) : [];
  for (const rim of rims) {
    const arcs = rimArcs(rim);
    for (const arc of arcs) if (!bed || arcInside(rim.circle, arc, bed)) terms.push(arcTerm(rim.circle, arc));
  }
  return Math.max(0, termsSummed(terms));
}
