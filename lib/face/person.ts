// A grown person, 6 ft, for scale.
import type { FaceMark } from "./face-mark";
import { type Point, pathEllipse, pathLine, pathSmooth } from "./face-path";

export const PERSON_FT = 6;
const HEX = "currentColor";

/** Marks of a standing person at x = 0, in feet, y down. */
export function personMarks(): readonly FaceMark[] {
  const mark = (d: string, strokeFt = 0): FaceMark => ({ part: "person", d, fill: strokeFt ? "none" : HEX, stroke: strokeFt ? HEX : "none", strokeFt, opacity: 1 });
  const body: Point[] = [
    [0.17, 5.12],
    [0.3, 4.98],
    [0.62, 4.86],
    [0.72, 4.6],
    [0.62, 4.1],
    [0.48, 3.7],
    [0.5, 3.25],
    [0.56, 2.9],
    [0, 2.78],
  ];
  const mirrored = [...body].reverse().map(([x, y]): Point => [-x, y]);
  return [
    mark(pathEllipse([0, 5.55], 0.34, 0.45)),
    mark(pathSmooth([...body, ...mirrored.slice(1)], true)),
    mark(
      pathLine([
        [0.3, 3],
        [0.34, 1.6],
        [0.32, 0.2],
      ]),
      0.44,
    ),
    mark(
      pathLine([
        [-0.3, 3],
        [-0.36, 1.6],
        [-0.4, 0.2],
      ]),
      0.44,
    ),
    mark(
      pathLine([
        [0.68, 4.66],
        [0.86, 3.75],
        [0.84, 2.85],
      ]),
      0.27,
    ),
    mark(
      pathLine([
        [-0.68, 4.66],
        [-0.88, 3.75],
        [-0.82, 2.85],
      ]),
      0.27,
    ),
    mark(
      pathLine([
        [0.3, 0.12],
        [0.6, 0.12],
      ]),
      0.24,
    ),
    mark(
      pathLine([
        [-0.38, 0.12],
        [-0.7, 0.12],
      ]),
      0.24,
    ),
  ];
}
