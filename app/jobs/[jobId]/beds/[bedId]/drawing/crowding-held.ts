import { type Crowding, plantCrowding } from "@/lib/ground/crowding";
import type { GroundPlan } from "@/lib/ground/ground-plan";
import type { Point } from "@/lib/ground/outline";
import type { GrownPlant } from "@/lib/ground/plan-plant";

/** Pairs of held and standing plants looked at in one frame; beyond that the drop will tell. */
const PAIRS_MOST = 30_000;

/** What plants held so far from their places crowd by a year; nothing where too many are held to be looked at while they move. */
export function crowdingHeld(plants: readonly GrownPlant[], plan: GroundPlan, year: number, ids: ReadonlySet<string>, by: Point): readonly Crowding[] {
  if (ids.size * plants.length > PAIRS_MOST) return [];
  const moved = plants.map((plant) => (ids.has(plant.id) ? { ...plant, at: [plant.at[0] + by[0], plant.at[1] + by[1]] as Point } : plant));
  return moved.flatMap((plant) => (ids.has(plant.id) ? plantCrowding(plant, moved, plan).filter((one) => one.year <= year) : []));
}
