// Editing a drawn outline: each function gives a new plan in which everything that was not touched is the same object. Whether the result is a bed says `planFault`.
import type { Border, Window } from "./border";
import { type Curve, type CurveShape, curveArc, curveAreaTerm, curveLength, curvePoints, STRAIGHT } from "./curve";
import { windowsKept, windowsSplit } from "./edge-window";
import type { Point } from "./outline";
import { type PlanEdge, type PlanOutline, planCurves } from "./plan-outline";

/** Edges shorter than this (feet) have no direction. */
const NO_LENGTH_FT = 1e-9;
const BOUNDS_TOLERANCE_FT = 0.004;
/** How far a new Bézier stands out from its chord, as a share of the chord: enough to see that it can be pulled. */
const CUBIC_STANDS_OUT = 0.2;

const plus = ([x, y]: Point, [dx, dy]: Point): Point => [x + dx, y + dy];
const minus = ([x, y]: Point, [dx, dy]: Point): Point => [x - dx, y - dy];
const between = ([ax, ay]: Point, [bx, by]: Point, share: number): Point => [ax + share * (bx - ax), ay + share * (by - ay)];
const chordOf = (from: Point, to: Point) => Math.hypot(to[0] - from[0], to[1] - from[1]);

/** The corner at which an edge ends. */
export const edgeEnd = (plan: PlanOutline, edge: number): number => (edge + 1) % Math.max(1, plan.length);
/** The edge that ends at a corner. */
const edgeBefore = (plan: PlanOutline, corner: number): number => (corner + plan.length - 1) % Math.max(1, plan.length);

/** Whether the edges run counterclockwise; then the outside lies to the right of the way, where an arc's ordinate is positive. */
export function planTurnsLeft(plan: PlanOutline): boolean {
  return planCurves(plan).reduce((sum, curve) => sum + curveAreaTerm(curve), 0) >= 0;
}

/** 1 where a positive ordinate bends an edge outward, else −1. */
export function outwardSign(plan: PlanOutline): 1 | -1 {
  return planTurnsLeft(plan) ? 1 : -1;
}

function edgesReplaced(plan: PlanOutline, changed: ReadonlyMap<number, PlanEdge>): PlanOutline {
  return plan.map((edge, i) => changed.get(i) ?? edge);
}

/** A border whose windows lie within an edge so long. */
function borderKept(border: Border, lengthFt: number): Border {
  if (border.what !== "house wall") return border;
  const windows = windowsKept(border.windows, lengthFt);
  return windows === border.windows ? border : { ...border, windows };
}

/** The plan with the windows of some edges held within their new lengths. */
function windowsHeld(plan: PlanOutline, edges: readonly number[]): PlanOutline {
  const curves = planCurves(plan);
  const changed = new Map<number, PlanEdge>();
  for (const i of edges) {
    const [edge, curve] = [plan[i], curves[i]];
    if (edge && curve) changed.set(i, { ...edge, border: borderKept(edge.border, curveLength(curve)) });
  }
  return edgesReplaced(plan, changed);
}

/** A shape after its chord became longer or shorter: an arc keeps its likeness, so that its ordinate grows with the chord. */
function shapeStretched(shape: CurveShape, chordBefore: number, chordAfter: number): CurveShape {
  if (shape.kind !== "arc" || chordBefore < NO_LENGTH_FT) return shape;
  return { kind: "arc", ordinateFt: (shape.ordinateFt * chordAfter) / chordBefore };
}

/**
 * A corner moved; all other corners stay. The Bézier handles at the corner go with it, arcs keep their likeness, windows stay on their edges.
 * The same plan where there is no such corner.
 */
export function planCornerMoved(plan: PlanOutline, corner: number, to: Point): PlanOutline {
  const before = edgeBefore(plan, corner);
  const [edge, incoming] = [plan[corner], plan[before]];
  if (!edge || !incoming) return plan;
  const by = minus(to, edge.from);
  const curves = planCurves(plan);
  const [out, into] = [curves[corner], curves[before]];
  if (!out || !into) return plan;
  const outShape: CurveShape =
    edge.shape.kind === "cubic" ? { ...edge.shape, control1: plus(edge.shape.control1, by) } : shapeStretched(edge.shape, chordOf(out.from, out.to), chordOf(to, out.to));
  const intoShape: CurveShape =
    incoming.shape.kind === "cubic"
      ? { ...incoming.shape, control2: plus(incoming.shape.control2, by) }
      : shapeStretched(incoming.shape, chordOf(into.from, into.to), chordOf(into.from, to));
  const changed = new Map<number, PlanEdge>([
    [before, { ...incoming, shape: intoShape }],
    [corner, { ...edge, from: to, shape: outShape }],
  ]);
  return windowsHeld(edgesReplaced(plan, changed), [before, corner]);
}

/** Whether opposite sides of a four-cornered plan run alike, by their corners: within a thousandth of a foot. */
function cornersParallel(plan: PlanOutline): boolean {
  const [a, b, c, d] = plan.map(({ from }) => from);
  return plan.length === 4 && !!a && !!b && !!c && !!d && Math.hypot(a[0] - b[0] + c[0] - d[0], a[1] - b[1] + c[1] - d[1]) < 1e-3;
}

/**
 * An edge made so long: it is scaled about its first corner, so that its end moves along its direction and curves keep their likeness.
 * A rectangle stays one: the edge after it goes along whole, and the opposite edge becomes as long.
 * The same plan where the edge has no length to scale or the length is not more than zero.
 */
export function planEdgeLengthSet(plan: PlanOutline, edge: number, lengthFt: number): PlanOutline {
  const curve = planCurves(plan)[edge];
  const now = curve ? curveLength(curve) : 0;
  if (!curve || now < NO_LENGTH_FT || !(lengthFt > 0)) return plan;
  const scale = lengthFt / now;
  const scaled = (point: Point) => between(curve.from, point, scale);
  const end = edgeEnd(plan, edge);
  const ended = planCornerMoved(plan, end, scaled(curve.to));
  const after = edgeEnd(plan, end);
  const along = plan[after]?.from;
  const moved = along && cornersParallel(plan) ? planCornerMoved(ended, after, plus(along, minus(scaled(curve.to), curve.to))) : ended;
  const held = moved[edge];
  if (!held || curve.shape.kind !== "cubic") return moved;
  const shape: CurveShape = { kind: "cubic", control1: scaled(curve.shape.control1), control2: scaled(curve.shape.control2) };
  return windowsHeld(edgesReplaced(moved, new Map([[edge, { ...held, shape }]])), [edge]);
}

/** An edge with another shape; its windows stay on it. */
export function planEdgeShaped(plan: PlanOutline, edge: number, shape: CurveShape): PlanOutline {
  const held = plan[edge];
  return held ? windowsHeld(edgesReplaced(plan, new Map([[edge, { ...held, shape }]])), [edge]) : plan;
}

/** An edge that borders something else; windows are cut to its length. */
export function planEdgeBordered(plan: PlanOutline, edge: number, border: Border): PlanOutline {
  const held = plan[edge];
  return held ? windowsHeld(edgesReplaced(plan, new Map([[edge, { ...held, border }]])), [edge]) : plan;
}

/** A house wall's windows, in order along the edge; the same plan where the edge borders anything else. */
export function planWindowsSet(plan: PlanOutline, edge: number, windows: readonly Window[]): PlanOutline {
  const border = plan[edge]?.border;
  if (border?.what !== "house wall") return plan;
  return planEdgeBordered(plan, edge, { ...border, windows: [...windows].sort((a, b) => a.fromFt - b.fromFt) });
}

/** The middle ordinate of the shallower arc of a radius over a chord; null where the radius is less than half the chord. h = r − √(r² − c²/4). */
export function ordinateOfRadius(chordFt: number, radiusFt: number): number | null {
  const inside = radiusFt * radiusFt - (chordFt * chordFt) / 4;
  // A half circle as typed may miss by the rounding of its chord.
  if (inside < -1e-6 * radiusFt * radiusFt || !(radiusFt > 0)) return null;
  return radiusFt - Math.sqrt(Math.max(0, inside));
}

/** The middle ordinate of an arc whose middle is drawn to a place: how far that is to the right of the chord. */
export function ordinateToward({ from, to }: Pick<Curve, "from" | "to">, place: Point): number {
  const chord = chordOf(from, to);
  if (chord < NO_LENGTH_FT) return 0;
  const [x, y] = minus(place, between(from, to, 0.5));
  return (x * (to[1] - from[1]) - y * (to[0] - from[0])) / chord;
}

/** The arc from one place to another that runs through a third; straight where the three lie in line. */
export function arcThrough(from: Point, to: Point, via: Point): CurveShape {
  const chord = chordOf(from, to);
  if (chord < NO_LENGTH_FT) return STRAIGHT;
  const [a, b] = [minus(from, via), minus(to, via)];
  // The angle at `via` between the ends is π − sweep⁄2; cross < 0 means that `via` lies to the right of the way.
  const [cross, dot] = [a[0] * b[1] - a[1] * b[0], a[0] * b[0] + a[1] * b[1]];
  if (Math.abs(cross) < 1e-12 * chord * chord) return STRAIGHT;
  const sweep = 2 * (Math.PI - Math.abs(Math.atan2(cross, dot)));
  return { kind: "arc", ordinateFt: (-Math.sign(cross) * chord * Math.tan(sweep / 4)) / 2 };
}

/** A Bézier in place of an edge: over an arc it follows the arc (k = 4⁄3 · tan(sweep⁄4)), over a straight edge it stands out a little so that it can be pulled. */
export function cubicOver(curve: Curve, outward: 1 | -1): CurveShape {
  const { from, to, shape } = curve;
  if (shape.kind === "cubic") return shape;
  const arc = curveArc(curve);
  if (!arc) {
    const [dx, dy] = minus(to, from);
    const out: Point = [dy * CUBIC_STANDS_OUT * outward, -dx * CUBIC_STANDS_OUT * outward];
    return { kind: "cubic", control1: plus(between(from, to, 1 / 3), out), control2: plus(between(from, to, 2 / 3), out) };
  }
  const reach = (4 / 3) * Math.tan(arc.sweep / 4);
  const onward = (end: Point): Point => {
    const [x, y] = minus(end, arc.center);
    return [-y * reach, x * reach];
  };
  return { kind: "cubic", control1: plus(from, onward(from)), control2: minus(to, onward(to)) };
}

/** The two halves of a curve: the same line as before, with a corner in its middle. */
function curveHalves(curve: Curve): readonly [at: Point, first: CurveShape, second: CurveShape] {
  const { from, to, shape } = curve;
  const arc = curveArc(curve);
  if (arc) {
    const angle = arc.startAngle + arc.sweep / 2;
    const half: CurveShape = { kind: "arc", ordinateFt: Math.sign(arc.sweep) * arc.radiusFt * (1 - Math.cos(arc.sweep / 4)) };
    return [[arc.center[0] + arc.radiusFt * Math.cos(angle), arc.center[1] + arc.radiusFt * Math.sin(angle)], half, half];
  }
  if (shape.kind !== "cubic") return [between(from, to, 0.5), STRAIGHT, STRAIGHT];
  // de Casteljau at ½.
  const [p, q, r] = [between(from, shape.control1, 0.5), between(shape.control1, shape.control2, 0.5), between(shape.control2, to, 0.5)];
  const [s, t] = [between(p, q, 0.5), between(q, r, 0.5)];
  return [between(s, t, 0.5), { kind: "cubic", control1: p, control2: s }, { kind: "cubic", control1: t, control2: r }];
}

/** A corner put in the middle of an edge: the outline runs as before, both halves border the same, and each has its part of the windows. */
export function planCornerAdded(plan: PlanOutline, edge: number): PlanOutline {
  const [held, curve] = [plan[edge], planCurves(plan)[edge]];
  if (!held || !curve) return plan;
  const [at, first, second] = curveHalves(curve);
  const firstFt = curveLength({ from: curve.from, to: at, shape: first });
  const borders: readonly [Border, Border] =
    held.border.what === "house wall"
      ? (() => {
          const [before, after] = windowsSplit(held.border.windows, firstFt);
          return [
            { what: "house wall", windows: before },
            { what: "house wall", windows: after },
          ] as const;
        })()
      : [held.border, held.border];
  const divided = [...plan.slice(0, edge), { from: held.from, shape: first, border: borders[0] }, { from: at, shape: second, border: borders[1] }, ...plan.slice(edge + 1)];
  return windowsHeld(divided, [edge, edge + 1]);
}

/** Whether a corner can go: what is left has three edges, or two of which one is curved. */
export function cornerCanGo(plan: PlanOutline, corner: number): boolean {
  if (plan.length > 3) return true;
  const before = edgeBefore(plan, corner);
  return plan.length === 3 && plan.some(({ shape }, i) => shape.kind !== "straight" && i !== corner && i !== before);
}

/** One edge in place of two that meet: halves of an arc or a Bézier become the whole again, else the longer edge gives its likeness where it is an arc. */
function shapeJoined(into: Curve, out: Curve): CurveShape {
  const [a, b] = [into.shape, out.shape];
  if (a.kind === "arc" && b.kind === "arc" && a.ordinateFt > 0 === b.ordinateFt > 0) return arcThrough(into.from, out.to, into.to);
  if (a.kind === "cubic" && b.kind === "cubic") return { kind: "cubic", control1: between(into.from, a.control1, 2), control2: between(out.to, b.control2, 2) };
  const longer = curveLength(into) >= curveLength(out) ? into : out;
  return longer.shape.kind === "arc" ? shapeStretched(longer.shape, chordOf(longer.from, longer.to), chordOf(into.from, out.to)) : STRAIGHT;
}

/**
 * A corner taken out: its two edges become one (straight where both were; halves of a curve become the curve again). It borders what the edge before the corner did;
 * windows of both walls stay. The same plan where the corner cannot go.
 */
export function planCornerRemoved(plan: PlanOutline, corner: number): PlanOutline {
  const before = edgeBefore(plan, corner);
  const curves = planCurves(plan);
  const [edge, incoming, into, out] = [plan[corner], plan[before], curves[before], curves[corner]];
  if (!edge || !incoming || !into || !out || !cornerCanGo(plan, corner)) return plan;
  const shape = shapeJoined(into, out);
  const onward = edge.border.what === "house wall" ? edge.border.windows : [];
  const firstFt = curveLength(into);
  const border: Border =
    incoming.border.what === "house wall"
      ? { what: "house wall", windows: [...incoming.border.windows, ...onward.map((w) => ({ ...w, fromFt: w.fromFt + firstFt, toFt: w.toFt + firstFt }))] }
      : incoming.border;
  const left = edgesReplaced(plan, new Map([[before, { ...incoming, shape, border }]])).filter((_, i) => i !== corner);
  return windowsHeld(left, [before > corner ? before - 1 : before]);
}

/** All corners and handles moved by so many feet. */
export function planShifted(plan: PlanOutline, by: Point): PlanOutline {
  return plan.map(({ from, shape, border }) => ({
    from: plus(from, by),
    shape: shape.kind === "cubic" ? { kind: "cubic", control1: plus(shape.control1, by), control2: plus(shape.control2, by) } : shape,
    border,
  }));
}

export type PlanBounds = { readonly low: Point; readonly high: Point };

/** Lowest and highest x and y of a plan, curves included, exact to 0.004 ft (a twentieth of an inch); null for a plan without edges. */
export function planBounds(plan: PlanOutline): PlanBounds | null {
  const points = planCurves(plan).flatMap((curve) => curvePoints(curve, BOUNDS_TOLERANCE_FT));
  if (points.length === 0) return null;
  const over = (axis: 0 | 1, pick: (a: number, b: number) => number) => points.reduce((found, point) => pick(found, point[axis]), points[0]?.[axis] ?? 0);
  return { low: [over(0, Math.min), over(1, Math.min)], high: [over(0, Math.max), over(1, Math.max)] };
}
