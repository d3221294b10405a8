// A grown person, 6 ft, for scale.
import type { FaceMark } from "./face-mark";
import { type Point, pathEllipse, pathSmooth } from "./face-path";

export const PERSON_FT = 6;

/** The right half of the outline from the neck down to the foot and back up to the crotch, in feet. */
const HALF: readonly Point[] = [
  [0.15, 5.28],
  [0.17, 5.06],
  [0.5, 4.92],
  [0.66, 4.7],
  [0.72, 4.1],
  [0.76, 3.5],
  [0.78, 2.86],
  [0.7, 2.62],
  [0.6, 2.86],
  [0.56, 3.5],
  [0.5, 4.1],
  [0.44, 3.7],
  [0.48, 3.2],
  [0.5, 2.4],
  [0.44, 1.4],
  [0.4, 0.28],
  [0.56, 0.08],
  [0.5, 0],
  [0.18, 0],
  [0.16, 0.3],
  [0.12, 1.4],
  [0.05, 2.5],
];

/** Marks of a standing person at x = 0, in feet, y down; in the color of the text around it. */
export function personMarks(): readonly FaceMark[] {
  const mark = (d: string): FaceMark => ({ part: "person", d, fill: "currentColor", stroke: "none", strokeFt: 0, opacity: 1 });
  const mirrored = [...HALF].reverse().map(([x, y]): Point => [-x, y]);
  return [mark(pathEllipse([0, 5.58], 0.29, 0.42)), mark(pathSmooth([...HALF, ...mirrored], true))];
}
