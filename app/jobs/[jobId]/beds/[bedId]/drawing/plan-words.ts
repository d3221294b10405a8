// Where plants stand, in words and as typed.
import type { PlacedPlant } from "@/lib/ground/bed-drawing";
import { lengthFromText, lengthText } from "@/lib/ground/length";
import type { Outline, Point } from "@/lib/ground/outline";
import type { Figures } from "./plan-figure";

export const plantsText = (count: number): string => `${count} ${count === 1 ? "plant" : "plants"}`;

/** Lower left corner of the box round a bed: places are told from there. */
export function outlineCorner(outline: Outline): Point {
  return outline.reduce(([x, y], p): Point => [Math.min(x, p[0]), Math.min(y, p[1])], [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY] as Point);
}

/** "3 ft from the left, 4 ft 6 in up". */
export function placeText(at: Point, corner: Point): string {
  const [x, y] = [at[0] - corner[0], at[1] - corner[1]];
  const across = x < -1e-6 ? `${lengthText(-x)} left of the bed` : `${lengthText(Math.max(0, x))} from the left`;
  return `${across}, ${y < -1e-6 ? `${lengthText(-y)} below it` : `${lengthText(Math.max(0, y))} up`}`;
}

/** One plant as those hear it who do not see the plan. */
export function plantText(plant: PlacedPlant, figures: Figures, groupSize: number, corner: Point): string {
  const figure = figures.get(plant.rowId);
  const group = groupSize > 1 ? `, group ${plant.group} of ${groupSize} plants` : "";
  return `${figure ? `${figure.letter} ${figure.name}` : "A plant"}, ${placeText(plant.at, corner)}${group}`;
}

/** A move: "2 ft right, 6 in up". */
export function moveText([dx, dy]: Point): string {
  const parts = [dx === 0 ? "" : `${lengthText(Math.abs(dx))} ${dx > 0 ? "right" : "left"}`, dy === 0 ? "" : `${lengthText(Math.abs(dy))} ${dy > 0 ? "up" : "down"}`];
  return parts.filter(Boolean).join(", ");
}

type Read<T> = { ok: true; value: T } | { ok: false; fault: string };

/** A place across or up as typed: a length that may be nothing or lie outside (with a minus); a bare number is feet. */
export function placeRead(typed: string): Read<number> {
  const plain = typed.trim().replace(/^[−–]/, "-");
  const negative = plain.startsWith("-");
  const size = negative ? plain.slice(1).trim() : plain;
  if (/^0+(\.0+)?\s*(ft|in|'|")?$/.test(size)) return { ok: true, value: 0 };
  const result = lengthFromText(size, "ft");
  if (!result.ok) return { ok: false, fault: result.fault };
  return result.feet <= 5000 ? { ok: true, value: negative ? -result.feet : result.feet } : { ok: false, fault: "At most 5,000 ft from the corner of the bed." };
}

/** A place as the field shows it. */
export const placeFieldText = (feet: number): string => (feet < -1e-6 ? `-${lengthText(-feet)}` : lengthText(Math.max(0, feet)));

/** A length of the tools in feet, between limits; a bare number up to 8 is feet, above it inches, as spacings are read elsewhere. */
export const toolRead =
  (leastFt: number, mostFt: number, bare: "ft" | "spacing") =>
  (typed: string): Read<number> => {
    const number = Number(typed);
    const result = lengthFromText(typed, bare === "spacing" && Number.isFinite(number) && number > 8 ? "in" : "ft");
    if (!result.ok) return { ok: false, fault: result.fault };
    return result.feet >= leastFt - 1e-9 && result.feet <= mostFt
      ? { ok: true, value: result.feet }
      : { ok: false, fault: `Between ${lengthText(leastFt)} and ${lengthText(mostFt)}.` };
  };
