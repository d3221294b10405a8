// Which plants of the drawing are meant: under the pointer, in a band, of a group, next in reading order.
import type { PlacedPlant } from "@/lib/ground/bed-drawing";
import { type Outline, type Point, pointInOutline } from "@/lib/ground/outline";
import type { PlanStand } from "./plan-figure";

/** Reading order goes by bands so high (feet), from the back of the bed to the front, each from left to right. */
const BAND_FT = 3;

/** The plant under a place: of those that reach it the narrowest, which stands out under wide crowns; ties by the nearest middle. @param leastFt a small plant is taken to reach so far */
export function standAt(stands: readonly PlanStand[], [x, y]: Point, leastFt: number): PlanStand | null {
  let best: { stand: PlanStand; radiusFt: number; away: number } | null = null;
  for (const stand of stands) {
    const radiusFt = Math.max(leastFt, stand.figure.radiusFt);
    const away = Math.hypot(stand.plant.at[0] - x, stand.plant.at[1] - y);
    if (away > radiusFt) continue;
    if (!best || radiusFt < best.radiusFt - 1e-9 || (radiusFt < best.radiusFt + 1e-9 && away < best.away)) best = { stand, radiusFt, away };
  }
  return best?.stand ?? null;
}

/** Ids of plants whose middles lie between two places. */
export function plantsWithin(plants: readonly PlacedPlant[], a: Point, b: Point): Set<string> {
  const inside = (axis: 0 | 1, at: Point) => at[axis] >= Math.min(a[axis], b[axis]) && at[axis] <= Math.max(a[axis], b[axis]);
  return new Set(plants.flatMap(({ id, at }) => (inside(0, at) && inside(1, at) ? [id] : [])));
}

/** Ids of plants that stand outside an outline. */
export function plantsOutside(plants: readonly PlacedPlant[], outline: Outline): Set<string> {
  return new Set(plants.flatMap(({ id, at }) => (pointInOutline(at, outline) ? [] : [id])));
}

/** Ids of a plant's whole group. */
export function groupOf(plants: readonly PlacedPlant[], id: string): Set<string> {
  const group = plants.find((plant) => plant.id === id)?.group;
  return new Set(plants.flatMap((plant) => (plant.id === id || plant.group === group ? [plant.id] : [])));
}

/** The plants as one reads them: from the back to the front, left to right. */
export function plantsInOrder(plants: readonly PlacedPlant[]): PlacedPlant[] {
  return [...plants].sort((a, b) => Math.floor(b.at[1] / BAND_FT) - Math.floor(a.at[1] / BAND_FT) || a.at[0] - b.at[0] || b.at[1] - a.at[1]);
}

/** The plant before (−1) or after (1) one in reading order, round the ends; the first where there is none yet. */
export function plantBeside(inOrder: readonly PlacedPlant[], id: string | null, step: 1 | -1): PlacedPlant | null {
  const index = inOrder.findIndex((plant) => plant.id === id);
  if (index < 0) return (step > 0 ? inOrder[0] : inOrder.at(-1)) ?? null;
  return inOrder[(index + step + inOrder.length) % inOrder.length] ?? null;
}
