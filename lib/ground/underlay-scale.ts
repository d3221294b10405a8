// Where a picture lies under a drawing: laid at first, moved, and scaled by two places whose distance is known.
import type { UnderlayPlace } from "./bed-drawing";
import type { Point } from "./outline";

/** How strongly a new picture shows: enough to draw after, faint enough to see the pen. */
const FIRST_STRENGTH = 0.6;
/** A new picture is so many times as wide as the bed: a photograph shows more than the bed. */
const FIRST_WIDTH = 1.5;

/** A picture as it is first laid: 1½ times as wide as the bed, its middle under the bed's. The scale is set afterwards. @param corners the bed's corners, in feet */
export function underlayLaid(image: { readonly imageId: string; readonly widthPx: number; readonly heightPx: number }, corners: readonly Point[]): UnderlayPlace {
  const xs = corners.map(([x]) => x);
  const ys = corners.map(([, y]) => y);
  const [lowX, highX, lowY, highY] = corners.length ? [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)] : [0, 20, 0, 10];
  const ftPerPx = (FIRST_WIDTH * Math.max(highX - lowX, 1)) / image.widthPx;
  return { ...image, at: [(lowX + highX - image.widthPx * ftPerPx) / 2, (lowY + highY - image.heightPx * ftPerPx) / 2], ftPerPx, strength: FIRST_STRENGTH };
}

export function underlayMoved(place: UnderlayPlace, [dx, dy]: Point): UnderlayPlace {
  return { ...place, at: [place.at[0] + dx, place.at[1] + dy] };
}

/**
 * The picture scaled so that two places of it, told where they lie now (feet), are so far apart (feet); the first stays where it is.
 * Null where the two are one place, or the scale would be out of all reason.
 */
export function underlayScaled(place: UnderlayPlace, first: Point, second: Point, lengthFt: number): UnderlayPlace | null {
  const now = Math.hypot(second[0] - first[0], second[1] - first[1]);
  if (now === 0 || !(lengthFt > 0)) return null;
  const times = lengthFt / now;
  const ftPerPx = place.ftPerPx * times;
  if (!(ftPerPx > 1e-6 && ftPerPx <= 1000)) return null;
  const from = (axis: 0 | 1) => first[axis] + (place.at[axis] - first[axis]) * times;
  return { ...place, ftPerPx, at: [from(0), from(1)] };
}
