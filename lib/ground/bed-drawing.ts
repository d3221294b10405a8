// What stands where on a bed: the plants placed on its drawing, things to keep clear of, where it is looked at from, and a picture laid under it.
import type { KeepClear } from "./border";
import type { Standpoint } from "./layout-sites";
import type { Point } from "./outline";

/** One plant on the drawing. Plants of one `group` were set together and are picked up together. */
export type PlacedPlant = { readonly id: string; readonly rowId: string; readonly at: Point; readonly group: number };

/** A photograph or scan under the drawing: its lower left corner in feet, feet for each of its pixels, and how strongly it shows (0–1). */
export type UnderlayPlace = {
  readonly imageId: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly at: Point;
  readonly ftPerPx: number;
  readonly strength: number;
};

export type BedDrawing = {
  readonly plants: readonly PlacedPlant[];
  readonly things: readonly KeepClear[];
  readonly standpoint: Standpoint;
  readonly underlay: UnderlayPlace | null;
};

/** Looked at from the foot of the drawing (y points up it): the side nearest to the reader. */
export const FROM_THE_FRONT: Standpoint = { kind: "one side", lookAngle: Math.PI / 2 };

/** A drawing with nothing on it. */
export const EMPTY_DRAWING: BedDrawing = { plants: [], things: [], standpoint: FROM_THE_FRONT, underlay: null };

/** Most plants on one drawing. */
export const PLACED_MAX = 5000;

/** How many plants of each row stand on the drawing, by row id. */
export function placedByRow(drawing: Pick<BedDrawing, "plants"> | null): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { rowId } of drawing?.plants ?? []) counts.set(rowId, (counts.get(rowId) ?? 0) + 1);
  return counts;
}

/** The drawing without plants whose row is gone; the same object when there are none. Null stays null. */
export function drawingKept<T extends BedDrawing | null>(drawing: T, rowIds: ReadonlySet<string>): T {
  if (drawing === null || drawing.plants.every(({ rowId }) => rowIds.has(rowId))) return drawing;
  return { ...drawing, plants: drawing.plants.filter(({ rowId }) => rowIds.has(rowId)) };
}
