// Outlines to begin from, so that nobody draws from nothing. All run counterclockwise from 0, 0 with their front at the foot of the drawing.

import { OPEN } from "./border";
import { type Point, rectangleOutline } from "./outline";
import { type PlanOutline, planFromOutline, planSampled } from "./plan-outline";

export const PLAN_STARTS = ["rectangle", "L-shape", "kidney"] as const;
export type PlanStart = (typeof PLAN_STARTS)[number];

/** An L: one leg along the whole front, one up the left side; each takes this share of the other's way. */
const LEG_SHARE = 0.5;

function lShape(lengthFt: number, widthFt: number): PlanOutline {
  const [leg, depth] = [lengthFt * LEG_SHARE, widthFt * LEG_SHARE];
  return planFromOutline([
    [0, 0],
    [lengthFt, 0],
    [lengthFt, depth],
    [leg, depth],
    [leg, widthFt],
    [0, widthFt],
  ]);
}

/** A kidney of four Béziers about 1 × 1: corners in the hollow of the front, at both ends and on the back; neighbors share their tangent, so it has no kink. */
const KIDNEY: readonly (readonly [from: Point, control1: Point, control2: Point])[] = [
  [
    [0.5, 0.28],
    [0.68, 0.28],
    [1, -0.42],
  ],
  [
    [1, 0.45],
    [1, 0.86],
    [0.8, 1],
  ],
  [
    [0.5, 1],
    [0.2, 1],
    [0, 0.86],
  ],
  [
    [0, 0.45],
    [0, -0.42],
    [0.32, 0.28],
  ],
];

/** The kidney within length × width, touching all four sides of it. */
function kidney(lengthFt: number, widthFt: number): PlanOutline {
  const drawn = (place: (point: Point) => Point) =>
    KIDNEY.map(([from, control1, control2]) => ({ from: place(from), shape: { kind: "cubic", control1: place(control1), control2: place(control2) } as const, border: OPEN }));
  const { outline } = planSampled(drawn((point) => point));
  const ys = outline.map(([, y]) => y);
  const low = Math.min(...ys);
  const high = Math.max(...ys);
  return drawn(([x, y]) => [x * lengthFt, ((y - low) / (high - low)) * widthFt]);
}

/** A plan to begin from, so long (along the front) and so deep, in feet; both more than zero. */
export function planStarted(start: PlanStart, lengthFt: number, widthFt: number): PlanOutline {
  switch (start) {
    case "rectangle":
      return planFromOutline(rectangleOutline(lengthFt, widthFt));
    case "L-shape":
      return lShape(lengthFt, widthFt);
    case "kidney":
      return kidney(lengthFt, widthFt);
  }
}
