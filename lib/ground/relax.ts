// Plants pushed apart until each has its spacing, like people in a room: every pair that stands too near steps back by what is missing, and no one through a wall.
import { barrierNearest, type GroundPlan } from "./ground-plan";
import { type Outline, type Point, pointInside } from "./outline";

export type RelaxPlant = {
  readonly at: Point;
  /** Half its spacing: two plants of a layer stand the sum of theirs apart. */
  readonly halfFt: number;
  /** A tree's trunk: what stands under its crown keeps only this from it (plus its own half). Null for all others. */
  readonly trunkFt: number | null;
  /** Where it is drawn back to while there is room to choose. */
  readonly home: Point;
  readonly fixed: boolean;
  /** Feet to be kept from each barrier of the plan, in its order. */
  readonly rooms: readonly number[];
};

const ROUNDS = 160;
/** After so many rounds nothing is drawn home any more: only room counts. */
const HOMEWARD_ROUNDS = 80;
const HOMEWARD_SHARE = 0.03;
/** Rounds for which a list of near pairs is good, and how much farther it looks (feet). */
const LIST_ROUNDS = 8;
const LIST_MARGIN_FT = 1;
const SKEW = 0.02;
/** Asked a little more than needed, so that what is left over in the end is still enough. */
const ASKED = 1.004;

/** Feet that two plants need between their middles. A tree stands over the others. */
export function pairNeedFt(a: Pick<RelaxPlant, "halfFt" | "trunkFt">, b: Pick<RelaxPlant, "halfFt" | "trunkFt">): number {
  if ((a.trunkFt === null) === (b.trunkFt === null)) return a.halfFt + b.halfFt;
  return a.trunkFt !== null ? a.trunkFt + b.halfFt : a.halfFt + (b.trunkFt ?? 0);
}

type Pair = readonly [i: number, j: number, needFt: number];

function pairsNear(plants: readonly RelaxPlant[], x: Float64Array, y: Float64Array): Pair[] {
  const order = plants.map((_, i) => i).sort((a, b) => (x[a] ?? 0) - (x[b] ?? 0) || a - b);
  const widest = plants.reduce((most, { halfFt }) => Math.max(most, halfFt), 0);
  const pairs: Pair[] = [];
  for (const [k, i] of order.entries()) {
    const a = plants[i];
    if (!a) continue;
    for (let m = k + 1; m < order.length; m++) {
      const j = order[m] ?? 0;
      const b = plants[j];
      const dx = (x[j] ?? 0) - (x[i] ?? 0);
      if (!b || dx > a.halfFt + widest + LIST_MARGIN_FT) break;
      const need = ASKED * pairNeedFt(a, b);
      const dy = (y[j] ?? 0) - (y[i] ?? 0);
      if (dx * dx + dy * dy < (need + LIST_MARGIN_FT) ** 2 && !(a.fixed && b.fixed)) pairs.push([i, j, need]);
    }
  }
  return pairs;
}

/** A place pushed to where it has its room from every barrier, as far as one pass does it; plants outside come in first. */
function placeKept(place: Point, rooms: readonly number[], plan: GroundPlan): Point {
  let [x, y] = placeInside(place, plan);
  for (const [b, barrier] of plan.barriers.entries()) {
    const room = ASKED * (rooms[b] ?? 0);
    if (room <= 0) continue;
    for (const [[ax, ay], [bx, by]] of barrier.segments) {
      const dx = bx - ax;
      const dy = by - ay;
      const squared = dx * dx + dy * dy;
      const share = squared === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / squared));
      const px = x - ax - share * dx;
      const py = y - ay - share * dy;
      const away = Math.sqrt(px * px + py * py);
      if (away >= room) continue;
      const [ux, uy] = away > 1e-9 ? [px / away, py / away] : offLine(x, y, dx, dy, plan.outline);
      x += ux * (room - away);
      y += uy * (room - away);
    }
  }
  return placeInside([x, y], plan);
}

/** The direction off a line for a place right on it: into the bed, where that can be told. */
function offLine(x: number, y: number, dx: number, dy: number, outline: Outline): Point {
  const length = Math.hypot(dx, dy);
  if (length === 0) return [1, 0];
  const normal: Point = [-dy / length, dx / length];
  return pointInside([x + 0.01 * normal[0], y + 0.01 * normal[1]], outline) ? normal : [-normal[0], -normal[1]];
}

/** The place itself where it is in the bed, else just within the nearest side. */
function placeInside(place: Point, plan: GroundPlan): Point {
  if (pointInside(place, plan.outline)) return place;
  let best = { awayFt: Number.POSITIVE_INFINITY, at: place };
  for (const barrier of plan.barriers) {
    if (barrier.kind !== "edge") continue;
    const near = barrierNearest(place, barrier);
    if (near.awayFt < best.awayFt) best = near;
  }
  return stepIn(best.at[0], best.at[1], plan.outline);
}

/** Directions in which the inside is looked for at an edge, radians: past the corners of the compass, since beds lie along it. */
const INWARD = Array.from({ length: 8 }, (_, i) => 0.3 + (i * Math.PI) / 4);

/** From outside or the very edge to just within the nearest side; the edge itself where the bed is thinner than a hand there. */
function stepIn(nearX: number, nearY: number, outline: Outline): Point {
  for (const direction of INWARD) {
    const inner: Point = [nearX + 0.05 * Math.cos(direction), nearY + 0.05 * Math.sin(direction)];
    if (pointInside(inner, outline)) return inner;
  }
  return [nearX, nearY];
}

/**
 * Places after pushing apart, in the order of the plants; fixed ones have not moved. What has not enough room after all rounds is for the caller to find.
 * Deterministic. Cost: rounds × (near pairs + plants × sides).
 */
export function plantsRelaxed(plants: readonly RelaxPlant[], plan: GroundPlan): Point[] {
  const x = Float64Array.from(plants, ({ at }) => at[0]);
  const y = Float64Array.from(plants, ({ at }) => at[1]);
  const mass = plants.map(({ halfFt, fixed }) => (fixed ? Number.POSITIVE_INFINITY : halfFt * halfFt));
  let pairs: Pair[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    if (round % LIST_ROUNDS === 0) pairs = pairsNear(plants, x, y);
    let moved = 0;
    if (round < HOMEWARD_ROUNDS)
      for (const [i, { home, fixed }] of plants.entries()) {
        if (fixed) continue;
        x[i] = (x[i] ?? 0) + HOMEWARD_SHARE * (home[0] - (x[i] ?? 0));
        y[i] = (y[i] ?? 0) + HOMEWARD_SHARE * (home[1] - (y[i] ?? 0));
      }
    for (const [i, j, need] of pairs) {
      let [dx, dy] = [(x[j] ?? 0) - (x[i] ?? 0), (y[j] ?? 0) - (y[i] ?? 0)];
      let away = Math.sqrt(dx * dx + dy * dy);
      if (away >= need) continue;
      // Two on one spot part in a direction of their own.
      if (away < 1e-9) [dx, dy, away] = [Math.cos(i + 2 * j), Math.sin(i + 2 * j), 1];
      const [a, b] = [mass[i] ?? 1, mass[j] ?? 1];
      const shareOfI = a === Number.POSITIVE_INFINITY ? 0 : b === Number.POSITIVE_INFINITY ? 1 : b / (a + b);
      const push = (need - Math.min(away, Math.sqrt(dx * dx + dy * dy))) * 0.9;
      moved = Math.max(moved, push);
      // A hair off the straight line, this way and that, or a row would only ever push along itself.
      const askew = SKEW * (((i + j + round) % 2) * 2 - 1);
      const [ux, uy] = [(dx - askew * dy) / away, (dy + askew * dx) / away];
      x[i] = (x[i] ?? 0) - ux * push * shareOfI;
      y[i] = (y[i] ?? 0) - uy * push * shareOfI;
      x[j] = (x[j] ?? 0) + ux * push * (1 - shareOfI);
      y[j] = (y[j] ?? 0) + uy * push * (1 - shareOfI);
    }
    for (const [i, { rooms, fixed }] of plants.entries()) if (!fixed) [x[i], y[i]] = placeKept([x[i] ?? 0, y[i] ?? 0], rooms, plan);
    if (round > HOMEWARD_ROUNDS && moved < 1e-4) break;
  }
  return plants.map((_, i): Point => [x[i] ?? 0, y[i] ?? 0]);
}
