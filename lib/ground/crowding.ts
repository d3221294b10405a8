// When plants will be in each other's way, or in the way of a wall, window, walk or line: the first year in which they overlap by more than is tolerated.
import { circlePairs } from "./circle-pairs";
import { type Barrier, barrierNearest, type GroundPlan } from "./ground-plan";
import { YEARS_AHEAD } from "./growth";
import { extentOfGrowth, type GrownPlant, radiusAtYear } from "./plan-plant";
import { barrierRoomFt, EDGE_TOLERANCE_FT } from "./room";
import { type GroundTaxon, taxonStratum } from "./stratum";

export type PairCrowding = {
  readonly kind: "pair";
  readonly year: number;
  readonly ids: readonly [string, string] /** Feet more than tolerated at 20 years. */;
  readonly overFt: number;
};
export type BarrierCrowding = { readonly kind: "barrier"; readonly year: number; readonly id: string /** Index in the plan. */; readonly barrier: number; readonly overFt: number };
export type Crowding = PairCrowding | BarrierCrowding;

/**
 * Plants may reach into each other by half the radius of the narrower: no more than its own half is overgrown
 * ("radius of wider + half radius of narrower", Palisades Beautiful, street-tree spacing; taken for all plants).
 */
export const PAIR_TOLERANCE_SHARE = 0.5;
/** Height of a deciduous tree's lowest branches as a share of its height: what stays below stands under it, not in it (common practice, no source). */
const CROWN_BASE_SHARE = 0.3;

/** Feet two middles must be apart so that crowns of these radii overlap no more than tolerated. */
export function pairRoomFt(radiusA: number, radiusB: number): number {
  return Math.max(radiusA, radiusB) + (1 - PAIR_TOLERANCE_SHARE) * Math.min(radiusA, radiusB);
}

/** Whether two plants can be in each other's way at all: bulbs come up through anything, and a mat of one cover is meant to close. */
function pairMinds(a: GroundTaxon, b: GroundTaxon): boolean {
  if (a.kind === "bulb" || b.kind === "bulb") return false;
  return !(a === b && (a.kind === "groundcover" || a.kind === "annual" || a.habit === "mat"));
}

/** A tree whose crown starts over a person's or a shrub's head; conifers are clothed to the ground. */
const standsOver = (taxon: GroundTaxon) => taxonStratum(taxon) === "canopy trees" && taxon.kind === "tree";

/** Feet by which a pair lacks room in a year; not over 0 where it has enough, or where one stays under the other's branches. */
function pairOverFt(a: GrownPlant, b: GrownPlant, awayFt: number, year: number): number {
  const over = pairRoomFt(radiusAtYear(a.growth, year), radiusAtYear(b.growth, year)) - awayFt;
  if (over <= 0 || standsOver(a.taxon) === standsOver(b.taxon)) return over;
  const [tree, low] = standsOver(a.taxon) ? [a, b] : [b, a];
  const under = (low.growth.heightFt[year] ?? 0) <= CROWN_BASE_SHARE * (tree.growth.heightFt[YEARS_AHEAD] ?? 0);
  return under ? 0 : over;
}

/** The first year from 0 to 20 in which something is over its room, or null. */
function firstYear(over: (year: number) => number): number | null {
  for (let year = 0; year <= YEARS_AHEAD; year++) if (over(year) > 1e-9) return year;
  return null;
}

/** Feet by which a plant lacks room to a barrier in a year; crowns may hang over edges a little. */
export function barrierOverFt(barrier: Barrier, plant: GrownPlant, awayFt: number, year: number): number {
  const room = barrierRoomFt(barrier, plant.taxon, extentOfGrowth(plant.growth, year));
  return room <= 0 ? 0 : room - EDGE_TOLERANCE_FT - awayFt;
}

/** Pairs of standing plants have been found to get on; only those with a new plant are asked. */
const bothStand = (a: GrownPlant, b: GrownPlant) => a.existing && b.existing;

/** Every pair that will crowd, by the year in which it begins, then by how much. Cost: n log n for plants that reach a bounded number of others. */
export function pairsCrowding(plants: readonly GrownPlant[]): PairCrowding[] {
  const x = Float64Array.from(plants, ({ at }) => at[0]);
  const y = Float64Array.from(plants, ({ at }) => at[1]);
  const radii = Float64Array.from(plants, ({ growth }) => radiusAtYear(growth, YEARS_AHEAD));
  const near = circlePairs(x, y, radii);
  const found: PairCrowding[] = [];
  for (const [i, a] of plants.entries())
    for (let p = near.start[i] ?? 0; p < (near.start[i + 1] ?? 0); p++) {
      const j = near.other[p] ?? 0;
      const b = plants[j];
      if (!b || j <= i) continue;
      const one = pairCrowding(a, b, near.awayFt[p] ?? 0);
      if (one) found.push(one);
    }
  return found.sort(crowdingOrder);
}

/** The crowding of one pair so far apart, or null. */
export function pairCrowding(a: GrownPlant, b: GrownPlant, awayFt: number): PairCrowding | null {
  if (!pairMinds(a.taxon, b.taxon) || bothStand(a, b)) return null;
  // Nothing shrinks: a pair with room enough for its last radii has it in every year.
  if (pairRoomFt(radiusAtYear(a.growth, YEARS_AHEAD), radiusAtYear(b.growth, YEARS_AHEAD)) <= awayFt) return null;
  const year = firstYear((at) => pairOverFt(a, b, awayFt, at));
  return year === null ? null : { kind: "pair", year, ids: [a.id, b.id], overFt: pairOverFt(a, b, awayFt, YEARS_AHEAD) };
}

/** Every plant that will be in the way of an edge, window or line, or stands too near a thing to keep clear of, by year. Existing plants are left alone. */
export function barriersCrowding(plants: readonly GrownPlant[], plan: GroundPlan): BarrierCrowding[] {
  const asking = plan.barriers
    .map((barrier, index) => ({ barrier, index }))
    .filter(({ barrier }) => barrier.kind !== "edge" || !["open", "lawn", "water"].includes(barrier.border.what));
  const found: BarrierCrowding[] = [];
  for (const plant of plants) {
    if (plant.existing) continue;
    for (const { barrier, index } of asking) {
      if (barrierRoomFt(barrier, plant.taxon, extentOfGrowth(plant.growth, YEARS_AHEAD)) <= 0) continue;
      const { awayFt } = barrierNearest(plant.at, barrier);
      if (barrierOverFt(barrier, plant, awayFt, YEARS_AHEAD) <= 0) continue;
      const year = firstYear((at) => barrierOverFt(barrier, plant, awayFt, at));
      if (year !== null) found.push({ kind: "barrier", year, id: plant.id, barrier: index, overFt: barrierOverFt(barrier, plant, awayFt, YEARS_AHEAD) });
    }
  }
  return found.sort(crowdingOrder);
}

/** The soonest first, then the worst, then by plant. */
function crowdingOrder(a: Crowding, b: Crowding): number {
  const name = (one: Crowding) => (one.kind === "pair" ? one.ids.join(" ") : `${one.id} ${one.barrier}`);
  return a.year - b.year || b.overFt - a.overFt || (name(a) < name(b) ? -1 : 1);
}

/** All crowding of a drawing, the soonest first. */
export function planCrowding(plants: readonly GrownPlant[], plan: GroundPlan): Crowding[] {
  return [...pairsCrowding(plants), ...barriersCrowding(plants, plan)].sort(crowdingOrder);
}

/** The crowding that one plant is party to, for dragging it: cost grows with the plants, not with their pairs. */
export function plantCrowding(plant: GrownPlant, plants: readonly GrownPlant[], plan: GroundPlan): Crowding[] {
  const pairs = plants.flatMap((other) => {
    if (other.id === plant.id) return [];
    const one = pairCrowding(plant, other, Math.hypot(other.at[0] - plant.at[0], other.at[1] - plant.at[1]));
    return one ? [one] : [];
  });
  return [...pairs, ...barriersCrowding([plant], plan)].sort(crowdingOrder);
}
