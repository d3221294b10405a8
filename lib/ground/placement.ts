// Plants set out by rule: fills and drifts on a grid clipped to an outline, and rows along a line. Returns places in feet; who stands there is not asked here.
import type { Circle } from "./circle";
import { type Outline, outlineArea, outlinePerimeter, type Point } from "./outline";
import { type Region, type Run, regionRuns } from "./region-runs";
import { type Grid, plantCellSqFt, quantityForArea, rowQuantity, rowSetOut } from "./spacing";

/**
 * How far (share of the spacing) plants of a fill stand inside the edge at least. Half a spacing on the square grid and a quarter on the triangular are the
 * distances at which a grid that fits its bed exactly holds as many plants as quantity by area: on the triangular one the first row stands half a row
 * (0.433 of the spacing) from the edge, and the rows' ends, every other offset by half, a quarter and three quarters.
 */
export const FILL_EDGE_SHARE = { square: 0.5, triangular: 0.25 } as const satisfies Record<Grid, number>;

/** Plants a foot of edge, at spacing 1, by which a fill and the quantity by area may differ. Lower side: ground within the inset; upper: Oler 1961, Acta Mathematica 105:19–48. */
const EDGE_EFFECT = { square: 0.5, triangular: 0.3 } as const satisfies Record<Grid, number>;

export type Fill = {
  /** The plants stand inside all of them: the bed, and the drift drawn in it. */
  readonly outlines: readonly Outline[];
  readonly spacingFt: number;
  readonly grid: Grid;
  /** Direction of the rows, radians counterclockwise from x. */
  readonly angle?: number;
  /** Share of the spacing kept from the edges; `FILL_EDGE_SHARE` unless said. */
  readonly edgeShare?: number;
  /** Kept clear: no plant's center in these. */
  readonly avoid?: readonly Circle[];
};

/** Starts of the grid that are tried up and along, besides the one that centers it. */
const STARTS = 6;
/** More rows than this are a spacing typed wrong. */
const ROWS_MAX = 2000;

function pointTurned([x, y]: Point, angle: number): Point {
  if (angle === 0) return [x, y];
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [x * cos - y * sin, x * sin + y * cos];
}

/** Starts for a grid of one pitch in a span: centered first, then evenly shifted from the low end. */
function gridStarts(low: number, high: number, pitch: number): number[] {
  if (high < low) return [(low + high) / 2];
  const steps = Math.floor((high - low) / pitch + 1e-9);
  return [low + (high - low - steps * pitch) / 2, ...Array.from({ length: STARTS }, (_, i) => low + (i * pitch) / STARTS)];
}

/** Grid places x = start + k · pitch in a run: first k and how many. */
function runPlaces([from, to]: Run, start: number, pitch: number): { first: number; count: number } {
  const first = Math.ceil((from - start) / pitch - 1e-9);
  return { first, count: Math.max(0, Math.floor((to - start) / pitch + 1e-9) - first + 1) };
}

/**
 * Places of a fill, row by row: the grid is shifted (never turned) to where it holds the most plants, centered where several do as well; a shift that holds the quantity by area is taken at once. Every place is at least
 * the edge share inside the outlines, and the spacing from every other. Differs from quantity by area by at most `fillEdgeEffect`. Throws RangeError for no spacing.
 */
export function fillPoints({ outlines, spacingFt, grid, angle = 0, edgeShare = FILL_EDGE_SHARE[grid], avoid = [] }: Fill): Point[] {
  const pitchY = plantCellSqFt(spacingFt, grid) / spacingFt;
  const insetFt = edgeShare * spacingFt;
  const region: Region = {
    outlines: outlines.map((outline) => outline.map((point) => pointTurned(point, -angle))),
    insetFt,
    avoid: avoid.map(({ center, radiusFt }) => ({ center: pointTurned(center, -angle), radiusFt })),
  };
  if (region.outlines.length === 0) return [];
  const bound = (axis: 0 | 1, side: "low" | "high") => {
    const ends = region.outlines.map((outline) => outline.reduce((end, p) => (side === "low" ? Math.min(end, p[axis]) : Math.max(end, p[axis])), outline[0]?.[axis] ?? 0));
    return side === "low" ? Math.max(...ends) + insetFt : Math.min(...ends) - insetFt;
  };
  const [lowX, highX, lowY, highY] = [bound(0, "low"), bound(0, "high"), bound(1, "low"), bound(1, "high")];
  if ((highY - lowY) / pitchY > ROWS_MAX) return [];
  const offset = grid === "triangular" ? spacingFt / 2 : 0;
  const enough = Math.min(...outlines.map((outline) => quantityForArea(outlineArea(outline), spacingFt, grid)));
  let best: { count: number; startX: number; rows: { y: number; shift: number; runs: Run[] }[] } = { count: 0, startX: 0, rows: [] };
  for (const startY of gridStarts(lowY, highY, pitchY)) {
    const rows: { y: number; shift: number; runs: Run[] }[] = [];
    for (let row = 0; startY + row * pitchY <= highY + 1e-9; row++) {
      const y = Math.min(startY + row * pitchY, highY);
      rows.push({ y, shift: row % 2 === 0 ? 0 : offset, runs: regionRuns(region, y) });
    }
    const startsX = offset === 0 ? gridStarts(lowX, highX, spacingFt) : gridStarts(lowX, highX, offset).flatMap((x) => [x, x + offset]);
    for (const startX of startsX) {
      let count = 0;
      for (const { shift, runs } of rows) for (const run of runs) count += runPlaces(run, startX + shift, spacingFt).count;
      if (count > best.count) best = { count, startX, rows };
      if (count >= enough) break;
    }
    if (best.count >= enough) break;
  }
  const points: Point[] = [];
  for (const { y, shift, runs } of best.rows)
    for (const run of runs) {
      const { first, count } = runPlaces(run, best.startX + shift, spacingFt);
      for (let i = 0; i < count; i++) points.push([best.startX + shift + (first + i) * spacingFt, y]);
    }
  return angle === 0 ? points : points.map((point) => pointTurned(point, angle));
}

/** Plants by which a fill of one outline may differ from its area divided by the plant's cell, either way: 0.5 (square) or 0.3 (triangular) a spacing of edge, and one. */
export function fillEdgeEffect(outline: Outline, spacingFt: number, grid: Grid): number {
  return (EDGE_EFFECT[grid] * outlinePerimeter(outline)) / spacingFt + 1;
}

/** Plants that the area of an outline asks for, not rounded. */
export function fillExpected(outline: Outline, spacingFt: number, grid: Grid): number {
  return outlineArea(outline) / plantCellSqFt(spacingFt, grid);
}

/**
 * Places of a row along a line of corners (a hedge on a curve is its samples): run ÷ spacing rounded up, spaced evenly, both ends half a spacing in.
 * Distances are measured along the line.
 */
export function rowPoints(path: readonly Point[], spacingFt: number): Point[] {
  const legs = path.slice(1).map((to, i) => {
    const from = path[i] ?? to;
    return { from, to, lengthFt: Math.hypot(to[0] - from[0], to[1] - from[1]) };
  });
  const runFt = legs.reduce((sum, leg) => sum + leg.lengthFt, 0);
  const quantity = rowQuantity(runFt, spacingFt);
  const out = rowSetOut(runFt, quantity);
  const points: Point[] = [];
  let before = 0;
  for (const { from, to, lengthFt } of legs) {
    while (points.length < quantity) {
      const along = out.endFt + points.length * out.spacingFt - before;
      if (along > lengthFt + 1e-9) break;
      const share = lengthFt === 0 ? 0 : along / lengthFt;
      points.push([from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])]);
    }
    before += lengthFt;
  }
  return points;
}
