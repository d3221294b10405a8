// The union of crowns by polygon libraries, circles made into polygons of many corners: for checking the exact union and for comparing speed.
import { Clipper, FillRule, type Path64 } from "clipper2-ts";
import * as polygonClipping from "polygon-clipping";
import type { Circle } from "../../lib/ground/circle";
import type { Outline, Point } from "../../lib/ground/outline";

/** Corners of a crown; more make it rounder and slower. */
export const CORNERS = 64;
/** clipper2 counts in whole numbers: so many to a foot (an eight thousandth of an inch). */
const PER_FOOT = 1e5;

/** inscribed: corners on the circle, so never too large. circumscribed: sides on the circle, so never too small. */
export type Roundness = "inscribed" | "circumscribed";

/** A polygon for a circle, counterclockwise. Turned by a third of a step, so that corners do not fall on the axes, where beds have their sides. */
function circlePolygon({ center: [x, y], radiusFt }: Circle, corners: number, roundness: Roundness): Point[] {
  const reach = roundness === "inscribed" ? radiusFt : radiusFt / Math.cos(Math.PI / corners);
  return Array.from({ length: corners }, (_, i): Point => {
    const angle = (2 * Math.PI * (i + 1 / 3)) / corners;
    return [x + reach * Math.cos(angle), y + reach * Math.sin(angle)];
  });
}

export type PolygonUnion = (circles: readonly Circle[], outline: Outline | null, corners?: number, roundness?: Roundness) => number;

/** Square feet by clipper2-ts, in one step: the non-zero rule takes overlapping crowns as their union. Its coordinates are rounded to whole numbers. */
export const unionByClipper: PolygonUnion = (circles, outline, corners = CORNERS, roundness = "inscribed") => {
  const path = (ring: Outline): Path64 => ring.map(([x, y]) => ({ x: Math.round(x * PER_FOOT), y: Math.round(y * PER_FOOT) }));
  const crowns = circles.filter((c) => c.radiusFt > 0).map((circle) => path(circlePolygon(circle, corners, roundness)));
  const union = outline ? Clipper.intersect(crowns, [path(outline)], FillRule.NonZero) : Clipper.union(crowns, FillRule.NonZero);
  return Math.abs(Clipper.areaPaths(union)) / PER_FOOT ** 2;
};

// Its types say named exports; Node sees a CommonJS file with one default.
const { intersection, union: unionOf } = "default" in polygonClipping ? (polygonClipping.default as typeof polygonClipping) : polygonClipping;

const ringArea = (ring: readonly (readonly [number, number])[]): number =>
  ring.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = ring[(i + 1) % ring.length] ?? [x, y];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);

/** Square feet by polygon-clipping, in one step: it takes the crowns as one geometry of many polygons. */
export const unionByPolygonClipping: PolygonUnion = (circles, outline, corners = CORNERS, roundness = "inscribed") => {
  const crowns = circles.filter((c) => c.radiusFt > 0).map((circle) => [circlePolygon(circle, corners, roundness).map(([x, y]): [number, number] => [x, y])]);
  if (crowns.length === 0) return 0;
  const union = outline ? intersection([outline.map(([x, y]): [number, number] => [x, y])], crowns) : unionOf(crowns);
  return union.reduce((sum, [outer, ...holes]) => sum + Math.abs(ringArea(outer ?? [])) - holes.reduce((total, hole) => total + Math.abs(ringArea(hole)), 0), 0);
};
