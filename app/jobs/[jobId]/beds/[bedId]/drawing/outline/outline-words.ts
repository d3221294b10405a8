// Words of the outline mode: names of borders, shapes and things, and where figures come from.
import type { Border, KeepClear, LineKind, SpotKind } from "@/lib/ground/border";
import type { CurveShape } from "@/lib/ground/curve";
import { lengthText } from "@/lib/ground/length";
import type { Point } from "@/lib/ground/outline";
import { edgeEnd, outwardSign } from "@/lib/ground/plan-edit";
import type { PlanOutline } from "@/lib/ground/plan-outline";

export const BORDER_WORDS: Readonly<Record<Border["what"], string>> = {
  open: "open",
  lawn: "lawn",
  walk: "walk",
  drive: "drive",
  "house wall": "house wall",
  "retaining wall": "retaining wall",
  water: "water",
  "street corner": "street corner",
};
export const BORDER_CHOICES = ["open", "lawn", "walk", "drive", "house wall", "retaining wall", "water", "street corner"] as const satisfies readonly Border["what"][];

export const SHAPE_WORDS: Readonly<Record<CurveShape["kind"], string>> = { straight: "straight", arc: "arc", cubic: "free curve" };

/** Where the usual clearance of a thing comes from. */
export const CLEAR_SOURCE: Readonly<Record<SpotKind | LineKind, string>> = {
  "existing tree": "Usual: 2 ft beyond the trunk’s flare (common practice, no source). Plant by hand among its roots.",
  boulder: "Usual: 6 in (common practice, no source).",
  well: "Usual: 5 ft round the cap (common practice, no source). The health code may ask for more, and for no chemicals near it.",
  spout: "Usual: 18 in (common practice, no source).",
  outlet: "Usual: 3 ft (common practice, no source).",
  "overhead line": "Usual: 10 ft from the lowest wire in every direction (common practice, no source). The utility’s own figure goes before.",
  "buried line": "Usual: 5 ft for trees (City of Syracuse Parks: sewer, water, gas, electric); shrubs keep 2 ft of it (common practice, no source).",
};

/** Lengths exact enough to check with a tape. */
export const placeWords = ([x, y]: Point) => `${Math.round(x * 100) / 100 + 0} ft, ${Math.round(y * 100) / 100 + 0} ft`;

/** “1–2”: an edge by its corners, counted from 1. */
export const edgeName = (plan: PlanOutline, edge: number) => `${edge + 1}–${edgeEnd(plan, edge) + 1}`;

/** Which side of the drawing an edge lies on, by the way it faces: the front is at the foot. */
export function edgeSide(plan: PlanOutline, edge: number): "front" | "right" | "back" | "left" {
  const [from, to] = [plan[edge]?.from ?? [0, 0], plan[edgeEnd(plan, edge)]?.from ?? [0, 0]];
  const outward = outwardSign(plan);
  const [x, y] = [(to[1] - from[1]) * outward, (from[0] - to[0]) * outward];
  if (Math.abs(y) >= Math.abs(x)) return y < 0 ? "front" : "back";
  return x > 0 ? "right" : "left";
}

export function thingName(thing: KeepClear, index: number): string {
  const size = "radiusFt" in thing && thing.radiusFt > 0 ? `, ${lengthText(2 * thing.radiusFt)} wide` : "";
  return `${thing.what[0]?.toUpperCase()}${thing.what.slice(1)} ${index + 1}${size}`;
}
