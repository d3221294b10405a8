// Plants about to be set: the tool, where it is held, and the places it gives. Pure; nothing is on the drawing before it is set.
import type { Circle } from "@/lib/ground/circle";
import { curvePoints } from "@/lib/ground/curve";
import type { Outline, Point } from "@/lib/ground/outline";
import { fillEdgeEffect, fillExpected, fillPoints, rowPoints } from "@/lib/ground/placement";
import { type PlanOutline, planCurves } from "@/lib/ground/plan-outline";
import { driftOutline, groupPoints, groupsRepeated } from "@/lib/ground/plant-group";
import type { Grid } from "@/lib/ground/spacing";
import type { Figure, PlanStand } from "./plan-figure";
import type { PlanKey } from "./plan-keys";

export const PLACING_KINDS = ["single", "group", "row", "repeat", "drift", "fill"] as const;
export type PlacingKind = (typeof PLACING_KINDS)[number];

export type Placing = {
  readonly kind: PlacingKind;
  readonly rowId: string;
  readonly spacingFt: number;
  readonly grid: Grid;
  /** Single and group stand at `from`; rows, repeats and drifts run from `from` to `to`. */
  readonly from: Point;
  readonly to: Point;
  /** Plants of a group, or of each repeated group. */
  readonly quantity: number;
  readonly groups: number;
  readonly asideFt: number;
  readonly widthFt: number;
  /** What a fill fills. */
  readonly ground: "bed" | "left" | "drift";
  /** A row along this edge of the bed (from 0) instead of a line, so far inside it. */
  readonly edge: number | null;
  readonly insetFt: number;
};

export type PlacingGround = { readonly outline: Outline; readonly edges: PlanOutline; readonly stands: readonly PlanStand[] };

/** More plants than this at once are a spacing typed wrong. */
export const PLACING_MOST = 2000;
const TRUNK_CLEAR_FT = 1;

/** A tool in hand, at the middle of what is shown. */
export function placingStart(kind: PlacingKind, rowId: string, spacingFt: number, middle: Point): Placing {
  const half = Math.max(3, spacingFt * 1.5);
  const line = kind === "row" || kind === "repeat" || kind === "drift" || kind === "fill";
  return {
    kind,
    rowId,
    spacingFt,
    grid: "triangular",
    from: line ? [middle[0] - half, middle[1]] : middle,
    to: line ? [middle[0] + half, middle[1]] : middle,
    quantity: 3,
    groups: 3,
    asideFt: spacingFt,
    widthFt: Math.max(2, spacingFt * 2),
    ground: "bed",
    edge: null,
    insetFt: spacingFt / 2,
  };
}

const middleOf = ({ from, to }: Placing): Point => [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
export const placingLengthFt = ({ from, to }: Placing): number => Math.hypot(to[0] - from[0], to[1] - from[1]);
/** Degrees counterclockwise from the drawing's own horizontal, −180 to 180. */
export const placingAngle = ({ from, to }: Placing): number => (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;

/** The tool with its line so long and so turned about its middle. */
export function placingTurned(placing: Placing, lengthFt: number, degrees: number): Placing {
  const [x, y] = middleOf(placing);
  const [dx, dy] = [(Math.cos((degrees * Math.PI) / 180) * lengthFt) / 2, (Math.sin((degrees * Math.PI) / 180) * lengthFt) / 2];
  return { ...placing, from: [x - dx, y - dy], to: [x + dx, y + dy] };
}

export function placingMoved(placing: Placing, by: Point): Placing {
  const move = ([x, y]: Point): Point => [x + by[0], y + by[1]];
  return { ...placing, from: move(placing.from), to: move(placing.to) };
}

/** Whether the tool has a line with two ends to hold it by. */
export const placingHasLine = ({ kind, ground, edge }: Placing): boolean =>
  (kind === "row" && edge === null) || kind === "repeat" || kind === "drift" || (kind === "fill" && ground === "drift");
/** Whether the tool has a width to pull. */
export const placingHasWidth = (placing: Placing): boolean => placingHasLine(placing) && (placing.kind === "drift" || placing.kind === "fill");

/** The drift's form, or null where the tool has none. */
export function placingShape(placing: Placing): Outline | null {
  return placingHasWidth(placing) ? driftOutline(middleOf(placing), placingLengthFt(placing), placing.widthFt, (placingAngle(placing) * Math.PI) / 180) : null;
}

/** Where the drift's width is pulled: beside its middle. */
export function placingWidthHandle(placing: Placing): Point {
  const [x, y] = middleOf(placing);
  const turn = (placingAngle(placing) * Math.PI) / 180;
  return [x - (Math.sin(turn) * placing.widthFt) / 2, y + (Math.cos(turn) * placing.widthFt) / 2];
}

/** Ground that is taken when all is grown, with room for the new plants' own half spacing; trees only about their trunks, for what grows under them. */
function taken(stands: readonly PlanStand[], spacingFt: number): Circle[] {
  return stands.map(({ plant, figure }) => ({ center: plant.at, radiusFt: (standsOver(figure) ? TRUNK_CLEAR_FT : figure.matureFt) + spacingFt / 2 }));
}

const standsOver = ({ taxon }: Figure): boolean => taxon?.kind === "tree";

/** The line of an edge moved so far inward, from corner to corner. */
function edgeLine(ground: PlacingGround, edge: number, insetFt: number): Point[] {
  const curve = planCurves(ground.edges)[edge];
  if (!curve) return [];
  const points = [...curvePoints(curve), curve.to];
  const left =
    ground.outline.reduce(
      (sum, [x, y], i) => sum + x * (ground.outline[(i + 1) % ground.outline.length]?.[1] ?? 0) - y * (ground.outline[(i + 1) % ground.outline.length]?.[0] ?? 0),
      0,
    ) >= 0;
  return points.map((point, i): Point => {
    const [a, b] = [points[Math.max(0, i - 1)] ?? point, points[Math.min(points.length - 1, i + 1)] ?? point];
    const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
    const side = (left ? 1 : -1) * insetFt;
    return [point[0] - ((b[1] - a[1]) / length) * side, point[1] + ((b[0] - a[0]) / length) * side];
  });
}

/** The places the tool would set now, group by group; none where its figures make no sense yet. */
export function placingGroups(placing: Placing, ground: PlacingGround): Point[][] {
  const { kind, spacingFt, grid, from, to, quantity } = placing;
  if (!(spacingFt > 0.05)) return [];
  const turn = (placingAngle(placing) * Math.PI) / 180;
  switch (kind) {
    case "single":
      return [[from]];
    case "group":
      return [groupPoints(from, quantity, spacingFt)];
    case "row": {
      const path = placing.edge === null ? [from, to] : edgeLine(ground, placing.edge, placing.insetFt);
      return limited([rowPoints(path, spacingFt)]);
    }
    case "repeat":
      return limited(groupsRepeated(from, to, placing.groups, quantity, spacingFt, placing.asideFt));
    case "drift":
    case "fill": {
      const shape = placingShape(placing);
      const outlines = shape ? [ground.outline, shape] : [ground.outline];
      if (shape && placingLengthFt(placing) < 0.1) return [];
      const avoid = kind === "fill" && placing.ground !== "bed" ? taken(ground.stands, spacingFt) : [];
      return limited([fillPoints({ outlines, spacingFt, grid, angle: shape ? turn : 0, avoid })]);
    }
  }
}

function limited(groups: Point[][]): Point[][] {
  return groups.reduce((sum, group) => sum + group.length, 0) > PLACING_MOST ? [] : groups.filter((group) => group.length);
}

/** What a fill's area asks for beside what the drawing holds, and by how much the edge may make them differ; null for other tools. */
export function placingByArea(placing: Placing, ground: PlacingGround): { readonly expected: number; readonly differ: number } | null {
  if (placing.kind !== "fill" || placing.ground !== "bed" || !(placing.spacingFt > 0.05)) return null;
  return { expected: fillExpected(ground.outline, placing.spacingFt, placing.grid), differ: fillEdgeEffect(ground.outline, placing.spacingFt, placing.grid) };
}

/** The tool after a key that moves, turns or lengthens it; null for other keys. A tool without a line does not turn. */
export function placingKeyed(placing: Placing, key: PlanKey): Placing | null {
  switch (key.type) {
    case "arrow":
      return placingMoved(placing, key.by);
    case "turn":
      return placingHasLine(placing) ? placingTurned(placing, placingLengthFt(placing), placingAngle(placing) + key.degrees) : placing;
    case "lengthen":
      return placingHasLine(placing) ? placingTurned(placing, Math.max(0.5, placingLengthFt(placing) + key.step * placing.spacingFt), placingAngle(placing)) : placing;
    default:
      return null;
  }
}
