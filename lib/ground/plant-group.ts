// Groups of one taxon: compact odd clumps, groups repeated along a bed, and the long thin form of a drift.
import type { Outline, Point } from "./outline";

/** Beyond so many plants nobody sees whether a group is odd (common practice: odd numbers matter up to about nine). */
const ODD_UP_TO = 9;

/** Where a compact patch can be centered on the triangular grid (spacing 1): on a plant, between two, or among three. */
const CENTERS: readonly Point[] = [
  [0, 0],
  [0.5, 0],
  [0.5, Math.sqrt(3) / 6],
];

/**
 * Places of a compact group about its middle: one, a triangle of three, a five, a seven with one in the middle, and on. On the triangular grid at the spacing
 * (feet), as close about the middle as it goes, turned by `angle` (radians).
 */
export function groupPoints(center: Point, quantity: number, spacingFt: number, angle = 0): Point[] {
  const reach = Math.ceil(Math.sqrt(quantity)) + 2;
  let best: { moment: number; points: Point[] } = { moment: Number.POSITIVE_INFINITY, points: [] };
  for (const [cx, cy] of CENTERS) {
    const near: { point: Point; far: number }[] = [];
    for (let row = -reach; row <= reach; row++)
      for (let k = -reach; k <= reach; k++) {
        const point: Point = [k + (row % 2 === 0 ? 0 : 0.5) - cx, (row * Math.sqrt(3)) / 2 - cy];
        near.push({ point, far: point[0] ** 2 + point[1] ** 2 });
      }
    // Ties by a rounded distance, then by angle from an odd start, so that the choice is the same on every machine and hangs together.
    near.sort((a, b) => Math.round((a.far - b.far) * 1e6) || Math.atan2(a.point[1], a.point[0] - 1e-3) - Math.atan2(b.point[1], b.point[0] - 1e-3));
    const chosen = near.slice(0, quantity);
    const middle = chosen.reduce(([x, y], { point }): Point => [x + point[0] / quantity, y + point[1] / quantity], [0, 0] as Point);
    const points = chosen.map(({ point }): Point => [point[0] - middle[0], point[1] - middle[1]]);
    const moment = points.reduce((sum, [x, y]) => sum + x * x + y * y, 0);
    if (moment < best.moment - 1e-9) best = { moment, points };
  }
  const [cos, sin] = [Math.cos(angle) * spacingFt, Math.sin(angle) * spacingFt];
  return best.points.map(([x, y]): Point => [center[0] + x * cos - y * sin, center[1] + x * sin + y * cos]);
}

/**
 * A quantity as groups of about `sizeWanted`, each an odd number where that can be: an even quantity makes an even number of odd groups (8 = 5 + 3, 2 = 1 + 1).
 * Groups over nine may be even: the eye does not count them. Largest first; they add up to the quantity.
 */
export function groupSizes(quantity: number, sizeWanted: number): number[] {
  if (quantity <= 0) return [];
  const wanted = Math.max(1, sizeWanted);
  let groups = Math.max(1, Math.round(quantity / wanted));
  const big = quantity / groups > ODD_UP_TO;
  if (big) {
    const least = Math.floor(quantity / groups);
    return Array.from({ length: groups }, (_, i) => least + (i < quantity - least * groups ? 1 : 0));
  }
  if ((quantity - groups) % 2 !== 0) groups += groups * wanted < quantity || groups === 1 ? 1 : -1;
  const pairs = (quantity - groups) / 2;
  const each = Math.floor(pairs / groups);
  return Array.from({ length: groups }, (_, i) => 1 + 2 * (each + (i < pairs - each * groups ? 1 : 0)));
}

/**
 * One taxon's odd groups repeated along a line through the bed, each standing in turn on either side of it, so that every three make a triangle.
 * @param asideFt how far the groups' middles stand off the line
 */
export function groupsRepeated(from: Point, to: Point, groups: number, quantityEach: number, spacingFt: number, asideFt: number): Point[][] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [ux, uy] = length === 0 ? [1, 0] : [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  return Array.from({ length: Math.max(0, groups) }, (_, i) => {
    const along = ((i + 0.5) / groups) * length;
    const aside = i % 2 === 0 ? asideFt : -asideFt;
    return groupPoints([from[0] + along * ux - aside * uy, from[1] + along * uy + aside * ux], quantityEach, spacingFt, Math.atan2(uy, ux) + (i % 2 === 0 ? 0 : Math.PI));
  });
}

/** Corners of a drift's outline. */
const DRIFT_CORNERS = 32;

/**
 * Outline of a drift: long, thin, blunt at one end and drawn out at the other (an egg curve), about a middle.
 * @param taper 0 an ellipse, to 0.5 a drop
 */
export function driftOutline(center: Point, lengthFt: number, widthFt: number, angle: number, taper = 0.25): Outline {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return Array.from({ length: DRIFT_CORNERS }, (_, i): Point => {
    const turn = (2 * Math.PI * i) / DRIFT_CORNERS;
    const x = (lengthFt / 2) * Math.cos(turn);
    const y = (widthFt / 2) * Math.sin(turn) * (1 - taper * Math.cos(turn));
    return [center[0] + x * cos - y * sin, center[1] + x * sin + y * cos];
  });
}
