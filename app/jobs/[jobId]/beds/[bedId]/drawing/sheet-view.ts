// Between feet on the ground (y up) and pixels of the drawing area (y down).
import type { Point } from "@/lib/ground/outline";

/** What part of the ground is shown: pixels for each foot, and the pixel where the ground's 0, 0 lies. */
export type SheetView = { readonly pxPerFt: number; readonly originPx: readonly [number, number] };

export function pxOfFt({ pxPerFt, originPx }: SheetView, [x, y]: Point): readonly [number, number] {
  return [originPx[0] + x * pxPerFt, originPx[1] - y * pxPerFt];
}

export function ftOfPx({ pxPerFt, originPx }: SheetView, [px, py]: readonly [number, number]): Point {
  return [(px - originPx[0]) / pxPerFt, (originPx[1] - py) / pxPerFt];
}

/** A view that shows all of some points with a margin in pixels. */
export function viewOfAll(points: readonly Point[], widthPx: number, heightPx: number, marginPx: number): SheetView {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const [lowX, highX, lowY, highY] = points.length ? [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)] : [0, 20, 0, 10];
  const pxPerFt = Math.max(1e-3, Math.min((widthPx - 2 * marginPx) / Math.max(highX - lowX, 1e-6), (heightPx - 2 * marginPx) / Math.max(highY - lowY, 1e-6)));
  return { pxPerFt, originPx: [(widthPx - (highX + lowX) * pxPerFt) / 2, (heightPx + (highY + lowY) * pxPerFt) / 2] };
}

/** An outline so many times as long or deep as before is another drawing, and is shown whole again. */
const ANOTHER_TIMES = 1.5;

/** Whether an outline is so much longer, shorter or elsewhere than one before that the view on that one does not serve it. */
export function outlineElsewhere(before: readonly Point[], after: readonly Point[]): boolean {
  return ([0, 1] as const).some((axis) => {
    const [low, high] = [Math.min(...before.map((p) => p[axis])), Math.max(...before.map((p) => p[axis]))];
    const [lowNow, highNow] = [Math.min(...after.map((p) => p[axis])), Math.max(...after.map((p) => p[axis]))];
    const [span, spanNow] = [high - low, highNow - lowNow];
    return spanNow > ANOTHER_TIMES * span || span > ANOTHER_TIMES * spanNow || lowNow > high || highNow < low;
  });
}

/** The view after zooming so that the ground under a pixel stays under it. */
export function viewZoomed(view: SheetView, atPx: readonly [number, number], factor: number): SheetView {
  const [x, y] = ftOfPx(view, atPx);
  const pxPerFt = Math.min(400, Math.max(0.5, view.pxPerFt * factor));
  return { pxPerFt, originPx: [atPx[0] - x * pxPerFt, atPx[1] + y * pxPerFt] };
}

/** Pixels beyond the window that a sheet laid down at an anchor reaches, so that it can be pushed about without being drawn anew. */
export const ANCHOR_REACH_PX = 160;

/** Where the sheet was drawn, and how far it is pushed from there, in whole pixels: the anchor before as long as it reaches, else the view itself. */
export function viewAnchor(view: SheetView, before: SheetView | null): { readonly anchor: SheetView; readonly pushPx: readonly [number, number] } {
  if (before && before.pxPerFt === view.pxPerFt) {
    const push = [view.originPx[0] - before.originPx[0], view.originPx[1] - before.originPx[1]] as const;
    if (Math.max(Math.abs(push[0]), Math.abs(push[1])) <= ANCHOR_REACH_PX) return { anchor: before, pushPx: [Math.round(push[0]), Math.round(push[1])] };
  }
  return { anchor: view, pushPx: [0, 0] };
}
