// An outline drawn corner by corner: the corners so far, and the plan they make when it is closed. Pure.
import { OPEN } from "@/lib/ground/border";
import { STRAIGHT } from "@/lib/ground/curve";
import type { Point } from "@/lib/ground/outline";
import type { PlanOutline } from "@/lib/ground/plan-outline";

const same = (a: Point, b: Point) => Math.abs(a[0] - b[0]) < 1e-9 && Math.abs(a[1] - b[1]) < 1e-9;

/** The path with another corner; the same path where that corner is the last one again (the second press of a double press). */
export function cornerAdded(path: readonly Point[], at: Point): readonly Point[] {
  const last = path.at(-1);
  return last && same(last, at) ? path : [...path, at];
}

/** The corner a side of a length ends at, from the last corner. @param degrees counterclockwise from the drawing's horizontal */
export function cornerBySide(path: readonly Point[], lengthFt: number, degrees: number): Point {
  const [x, y] = path.at(-1) ?? [0, 0];
  const turn = (degrees * Math.PI) / 180;
  const at = (value: number) => Math.round(value * 1000) / 1000 + 0;
  return [at(x + lengthFt * Math.cos(turn)), at(y + lengthFt * Math.sin(turn))];
}

/** The outline the corners make, straight and open all round; null with fewer than three. A last corner on the first closes it. */
export function planOfCorners(path: readonly Point[]): PlanOutline | null {
  const [first, last] = [path[0], path.at(-1)];
  const corners = path.length > 3 && first && last && same(first, last) ? path.slice(0, -1) : path;
  return corners.length < 3 ? null : corners.map((from) => ({ from, shape: STRAIGHT, border: OPEN }));
}
