// A bed as drawn: corners, the curve between each two, and what each edge borders. Sampled, it is an Outline, which is what all else works on.
import type { Border } from "./border";
import { OPEN } from "./border";
import { type Curve, type CurveShape, curveAreaTerm, curveLength, curvePoints, SAMPLE_TOLERANCE_FT, STRAIGHT } from "./curve";
import { OUTLINE_MAX_CORNERS, type Outline, type OutlineFault, outlineArea, outlineCrossing, outlineFault, type Point } from "./outline";

/** The edge that starts at a corner and runs to the next one's; the last runs back to the first corner, so that a plan is always closed. */
export type PlanEdge = { readonly from: Point; readonly shape: CurveShape; readonly border: Border };
export type PlanOutline = readonly PlanEdge[];

/** A plan sampled to corners. sideEdges[i]: the edge (from 0) that side i is a piece of. */
export type SampledPlan = { readonly outline: Outline; readonly sideEdges: readonly number[] };

/** Most that the sampled area departs from the curve's own, as a share. */
const AREA_SHARE = 0.001;
/** Times the tolerance is halved to get there. */
const HALVINGS = 6;

/** A plan of straight edges from an outline, all with one border. */
export function planFromOutline(outline: Outline, border: Border = OPEN): PlanOutline {
  return outline.map((from) => ({ from, shape: STRAIGHT, border }));
}

/** The edges as curves with both ends, in order. */
export function planCurves(plan: PlanOutline): Curve[] {
  return plan.map(({ from, shape }, i) => ({ from, to: plan[(i + 1) % plan.length]?.from ?? from, shape }));
}

/** Square feet, exact for straight edges, arcs and Béziers alike (Green's theorem). Meaningful where the edges do not cross. */
export function planArea(plan: PlanOutline): number {
  const origin = plan[0]?.from ?? [0, 0];
  const moved = ([x, y]: Point): Point => [x - origin[0], y - origin[1]];
  return Math.abs(
    planCurves(plan).reduce((sum, { from, to, shape }) => {
      const shifted: CurveShape = shape.kind === "cubic" ? { kind: "cubic", control1: moved(shape.control1), control2: moved(shape.control2) } : shape;
      return sum + curveAreaTerm({ from: moved(from), to: moved(to), shape: shifted });
    }, 0),
  );
}

/** Feet all round: exact for straight edges and arcs, within 0.1 % for Béziers. */
export function planPerimeter(plan: PlanOutline): number {
  return planCurves(plan).reduce((sum, curve) => sum + curveLength(curve), 0);
}

function planSampledAt(plan: PlanOutline, toleranceFt: number): SampledPlan {
  const outline: Point[] = [];
  const sideEdges: number[] = [];
  for (const [edge, curve] of planCurves(plan).entries())
    for (const point of curvePoints(curve, toleranceFt)) {
      outline.push(point);
      sideEdges.push(edge);
    }
  return { outline, sideEdges };
}

/**
 * Corners within 0.05 ft of the drawn curves, and closer where a tight curve needs it for the sampled area to agree with the exact one within 0.1 %
 * (as long as `OUTLINE_MAX_CORNERS` allows). Plans without curves come back corner for corner.
 */
export function planSampled(plan: PlanOutline): SampledPlan {
  const area = planArea(plan);
  let sampled = planSampledAt(plan, SAMPLE_TOLERANCE_FT);
  for (let halving = 1; halving <= HALVINGS && Math.abs(outlineArea(sampled.outline) - area) > AREA_SHARE * area; halving++) {
    const finer = planSampledAt(plan, SAMPLE_TOLERANCE_FT / 2 ** halving);
    if (finer.outline.length > OUTLINE_MAX_CORNERS) break;
    sampled = finer;
  }
  return sampled;
}

/** Whether all the numbers of an edge are numbers. */
function edgeIsFinite({ from, shape }: PlanEdge): boolean {
  const numbers = shape.kind === "cubic" ? [...from, ...shape.control1, ...shape.control2] : shape.kind === "arc" ? [...from, shape.ordinateFt] : from;
  return numbers.every(Number.isFinite);
}

const placeText = ([x, y]: Point) => `${Math.round(x * 100) / 100 + 0} ft, ${Math.round(y * 100) / 100 + 0} ft`;

/** What keeps a plan from being a bed, the first fault only, with the place shown and edges counted from 1; null when it is sound. Two curved edges are enough. */
export function planFault(plan: PlanOutline): OutlineFault | null {
  const wild = plan.findIndex((edge) => !edgeIsFinite(edge));
  if (wild >= 0) return { kind: "not a number", words: `Corner ${wild + 1} and its edge need numbers, in feet.`, place: null };
  const { outline, sideEdges } = planSampled(plan);
  const fault = outlineFault(outline);
  if (fault?.kind === "crossing" || fault?.kind === "touching" || fault?.kind === "folding back") {
    const crossing = outlineCrossing(outline);
    if (!crossing) return fault;
    const [a, b] = crossing.sides.map((side) => (sideEdges[side] ?? 0) + 1);
    const where = a === b ? `edge ${a} meets itself` : `edges ${a} and ${b} meet`;
    return { ...fault, words: `The outline crosses or touches itself at ${placeText(crossing.place)}: ${where} there. Move a corner or a curve so that they keep apart.` };
  }
  if (fault?.kind === "too few corners") return { ...fault, words: "An outline needs at least three corners, or two with a curve between them." };
  if (fault?.kind === "too many corners")
    return { ...fault, words: `The outline is too fine: its curves and corners come to more than ${OUTLINE_MAX_CORNERS} pieces. Take out corners that lie close together.` };
  return fault;
}

/** A place brought to the nearest step of the drawing (1 or 0.5 ft). */
export function pointSnapped([x, y]: Point, stepFt: number): Point {
  return stepFt > 0 ? [Math.round(x / stepFt) * stepFt + 0, Math.round(y / stepFt) * stepFt + 0] : [x, y];
}

/** Where an edge ends when its length is typed: so many feet from its corner toward the pointer; null where the pointer gives no direction. */
export function pointAtLength(from: Point, toward: Point, lengthFt: number): Point | null {
  const far = Math.hypot(toward[0] - from[0], toward[1] - from[1]);
  return far === 0 ? null : [from[0] + ((toward[0] - from[0]) / far) * lengthFt, from[1] + ((toward[1] - from[1]) / far) * lengthFt];
}
