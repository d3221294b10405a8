// What can be done about crowding: move a plant, leave one out, or take one that stays smaller. Suggestions only; nothing is changed here.
import { barrierOverFt, type Crowding, PAIR_TOLERANCE_SHARE, pairCrowding, pairRoomFt } from "./crowding";
import { type Barrier, barrierNearest, type GroundPlan } from "./ground-plan";
import { YEARS_AHEAD } from "./growth";
import { type Point, pointInside } from "./outline";
import { type GrownPlant, radiusAtYear } from "./plan-plant";
import { EDGE_TOLERANCE_FT } from "./room";

export type CrowdingSolution =
  | { readonly kind: "move"; readonly id: string; readonly to: Point; readonly byFt: number }
  | { readonly kind: "drop"; readonly id: string }
  /** The most that a plant in its place may grow to; null: that way does not matter. */
  | { readonly kind: "smaller"; readonly id: string; readonly maxSpreadFt: number | null; readonly maxHeightFt: number | null };

/** Directions tried for a move: straight away first, then ever more to the side. */
const TURNS = [0, 1, -1, 2, -2, 3, -3, 4, -4, 5, -5, 6].map((sixth) => (sixth * Math.PI) / 6);
const MOVE_STEP_FT = 0.5;
/** Nobody asks for a plant farther off than this: then it is another design. */
const MOVE_MAX_FT = 12;
/** A plant of less spread than this is no substitute. */
const SPREAD_MIN_FT = 0.5;

function plantIsFree(plant: GrownPlant, plants: readonly GrownPlant[], plan: GroundPlan): boolean {
  if (!pointInside(plant.at, plan.outline)) return false;
  if (plan.barriers.some((barrier) => barrierOverFt(barrier, plant, barrierNearest(plant.at, barrier).awayFt, YEARS_AHEAD) > 0)) return false;
  return plants.every((other) => other.id === plant.id || pairCrowding(plant, other, Math.hypot(other.at[0] - plant.at[0], other.at[1] - plant.at[1])) === null);
}

/** The nearest place, in half-foot steps, at which a plant crowds nothing and is crowded by nothing in twenty years; null within 12 ft. */
export function plantMoved(plant: GrownPlant, awayFrom: Point, plants: readonly GrownPlant[], plan: GroundPlan): { readonly to: Point; readonly byFt: number } | null {
  const straight = Math.atan2(plant.at[1] - awayFrom[1], plant.at[0] - awayFrom[0]);
  const reach = MOVE_MAX_FT + 2 * radiusAtYear(plant.growth, YEARS_AHEAD);
  const near = plants.filter((other) => Math.hypot(other.at[0] - plant.at[0], other.at[1] - plant.at[1]) < reach + 2 * radiusAtYear(other.growth, YEARS_AHEAD));
  for (let byFt = MOVE_STEP_FT; byFt <= MOVE_MAX_FT; byFt += MOVE_STEP_FT)
    for (const turn of TURNS) {
      const to: Point = [plant.at[0] + byFt * Math.cos(straight + turn), plant.at[1] + byFt * Math.sin(straight + turn)];
      if (plantIsFree({ ...plant, at: to }, near, plan)) return { to, byFt };
    }
  return null;
}

/** The widest a plant may be beside one of a radius at a distance; null where no width is small enough. */
export function spreadBesideFt(otherRadiusFt: number, awayFt: number): number | null {
  const share = 1 - PAIR_TOLERANCE_SHARE;
  const wider = awayFt - share * otherRadiusFt;
  const radius = wider >= otherRadiusFt ? wider : (awayFt - otherRadiusFt) / share;
  return 2 * radius >= SPREAD_MIN_FT ? 2 * radius : null;
}

type Limits = { readonly maxSpreadFt: number | null; readonly maxHeightFt: number | null };

/** The plant as it would be if it stayed within limits. */
function plantKept(plant: GrownPlant, { maxSpreadFt, maxHeightFt }: Limits): GrownPlant {
  const kept = (values: Float64Array, most: number | null) => (most === null ? values : values.map((value) => Math.min(value, most)));
  const { heightFt, radiusFt } = plant.growth;
  return { ...plant, growth: { heightFt: kept(heightFt, maxHeightFt), radiusFt: kept(radiusFt, maxSpreadFt === null ? null : maxSpreadFt / 2) } };
}

/** How small a plant has to stay for a barrier, if that can help. */
function smallerForBarrier(barrier: Barrier, awayFt: number): Limits | null {
  const spread = 2 * (awayFt + EDGE_TOLERANCE_FT);
  const bySpread = spread >= SPREAD_MIN_FT ? { maxSpreadFt: spread, maxHeightFt: null } : null;
  const byHeight = (heightFt: number) => (heightFt > 0 ? { maxSpreadFt: null, maxHeightFt: heightFt } : null);
  if (barrier.kind === "window") return byHeight(barrier.window.sillFt);
  if (barrier.kind === "edge") {
    if (barrier.border.what === "street corner") return byHeight(barrier.border.maxHeightFt);
    return barrier.border.what === "retaining wall" && barrier.border.bedAt === "top" ? null : bySpread;
  }
  const { thing } = barrier;
  if (thing.what === "overhead line") return byHeight(thing.heightFt - thing.clearFt);
  if (thing.what === "well" || thing.what === "spout" || thing.what === "outlet") {
    const left = 2 * (awayFt - thing.radiusFt - thing.clearFt + EDGE_TOLERANCE_FT);
    return left >= SPREAD_MIN_FT ? { maxSpreadFt: left, maxHeightFt: null } : null;
  }
  return null;
}

/**
 * What helps against one crowding, the mildest first. Existing plants stay as they are. Of a pair the smaller one is moved or left out, and the wider one
 * is to be smaller where that alone helps, else the narrower one.
 */
export function crowdingSolutions(crowding: Crowding, plants: readonly GrownPlant[], plan: GroundPlan): CrowdingSolution[] {
  const byId = (id: string) => plants.find((plant) => plant.id === id);
  if (crowding.kind === "barrier") {
    const [plant, barrier] = [byId(crowding.id), plan.barriers[crowding.barrier]];
    if (!plant || !barrier) return [];
    const { awayFt, at } = barrierNearest(plant.at, barrier);
    const moved = plantMoved(plant, at, plants, plan);
    const limits = smallerForBarrier(barrier, awayFt);
    const smaller = limits && barrierOverFt(barrier, plantKept(plant, limits), awayFt, YEARS_AHEAD) <= 1e-9 ? limits : null;
    return [
      ...(moved ? [{ kind: "move" as const, id: plant.id, ...moved }] : []),
      ...(smaller ? [{ kind: "smaller" as const, id: plant.id, ...smaller }] : []),
      { kind: "drop", id: plant.id },
    ];
  }
  const pair = crowding.ids.flatMap((id) => byId(id) ?? []).sort((a, b) => radiusAtYear(a.growth, YEARS_AHEAD) - radiusAtYear(b.growth, YEARS_AHEAD));
  const [narrow, wide] = pair;
  if (!narrow || !wide) return [];
  const solutions: CrowdingSolution[] = [];
  const mover = narrow.existing ? wide : narrow;
  const moved = plantMoved(mover, mover === narrow ? wide.at : narrow.at, plants, plan);
  if (moved) solutions.push({ kind: "move", id: mover.id, ...moved });
  const awayFt = Math.hypot(wide.at[0] - narrow.at[0], wide.at[1] - narrow.at[1]);
  for (const [plant, other] of [
    [wide, narrow],
    [narrow, wide],
  ] as const) {
    const spread = plant.existing ? null : spreadBesideFt(radiusAtYear(other.growth, YEARS_AHEAD), awayFt);
    if (spread === null || pairRoomFt(spread / 2, radiusAtYear(other.growth, YEARS_AHEAD)) > awayFt + 1e-9) continue;
    solutions.push({ kind: "smaller", id: plant.id, maxSpreadFt: spread, maxHeightFt: null });
    break;
  }
  solutions.push({ kind: "drop", id: mover.id });
  return solutions;
}
