// Plants brought into line, spaced evenly, copied: new places for those chosen. Pure.
import type { PlacedPlant } from "@/lib/ground/bed-drawing";
import { barrierNearest, type GroundPlan } from "@/lib/ground/ground-plan";
import type { Point } from "@/lib/ground/outline";

export const ALIGNMENTS = ["left", "right", "bottom", "top", "middle across", "middle up", "along the edge"] as const;
export type Alignment = (typeof ALIGNMENTS)[number];

type Plants = readonly Pick<PlacedPlant, "id" | "at">[];
export type Places = ReadonlyMap<string, Point>;

const put = (plants: Plants, place: (at: Point) => Point): Places => new Map(plants.map(({ id, at }) => [id, place(at)]));

/** All at the same distance from the bed's edge nearest to them together: that of the nearest. */
function alongEdge(plants: Plants, plan: GroundPlan): Places {
  const edges = plan.barriers.filter((barrier) => barrier.kind === "edge");
  const sums = edges.map((edge) => plants.reduce((sum, { at }) => sum + barrierNearest(at, edge).awayFt, 0));
  const edge = edges[sums.indexOf(Math.min(...sums))];
  if (!edge) return new Map();
  const least = Math.min(...plants.map(({ at }) => barrierNearest(at, edge).awayFt));
  return put(plants, (at) => {
    const near = barrierNearest(at, edge);
    if (near.awayFt < 1e-6) return at;
    const share = least / near.awayFt;
    return [near.at[0] + (at[0] - near.at[0]) * share, near.at[1] + (at[1] - near.at[1]) * share];
  });
}

/** Places of the plants brought into one line by their middles. */
export function placesAligned(plants: Plants, alignment: Alignment, plan: GroundPlan): Places {
  const [xs, ys] = [plants.map(({ at }) => at[0]), plants.map(({ at }) => at[1])];
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
  switch (alignment) {
    case "left":
      return put(plants, ([, y]) => [Math.min(...xs), y]);
    case "right":
      return put(plants, ([, y]) => [Math.max(...xs), y]);
    case "bottom":
      return put(plants, ([x]) => [x, Math.min(...ys)]);
    case "top":
      return put(plants, ([x]) => [x, Math.max(...ys)]);
    case "middle across":
      return put(plants, ([x]) => [x, mean(ys)]);
    case "middle up":
      return put(plants, ([, y]) => [mean(xs), y]);
    case "along the edge":
      return alongEdge(plants, plan);
  }
}

/** The plants between the two outermost at even steps, along the way in which they reach farther; across it each stays where it is. */
export function placesSpaced(plants: Plants): Places {
  const span = (axis: 0 | 1) => Math.max(...plants.map(({ at }) => at[axis])) - Math.min(...plants.map(({ at }) => at[axis]));
  const axis = span(0) >= span(1) ? 0 : 1;
  const inOrder = [...plants].sort((a, b) => a.at[axis] - b.at[axis]);
  const low = inOrder[0]?.at[axis] ?? 0;
  const step = inOrder.length > 1 ? span(axis) / (inOrder.length - 1) : 0;
  return new Map(inOrder.map(({ id, at }, i): [string, Point] => [id, axis === 0 ? [low + i * step, at[1]] : [at[0], low + i * step]]));
}

/** Copies of plants so far off, grouped among themselves as they were. @param idNew makes an id @param groupFree the first group number that is free */
export function plantsCopied(plants: readonly PlacedPlant[], by: Point, idNew: () => string, groupFree: number): PlacedPlant[] {
  const groups = new Map<number, number>();
  for (const { group } of plants) if (!groups.has(group)) groups.set(group, groupFree + groups.size);
  return plants.map(({ rowId, at, group }) => ({ id: idNew(), rowId, at: [at[0] + by[0], at[1] + by[1]], group: groups.get(group) ?? groupFree }));
}
