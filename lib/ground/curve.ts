// One edge of a drawn bed as a real curve: straight, a circular arc, or a cubic Bézier. Feet.
import type { Point } from "./outline";

/**
 * How an edge runs between its two corners. An arc is given as it is set out on site: by its middle ordinate, the distance from the middle of the chord
 * to the arc, positive to the right of the way from corner to corner (outward on a bed drawn counterclockwise); more than half the chord is more than a half circle.
 */
export type CurveShape =
  | { readonly kind: "straight" }
  | { readonly kind: "arc"; readonly ordinateFt: number }
  | { readonly kind: "cubic"; readonly control1: Point; readonly control2: Point };

export type Curve = { readonly from: Point; readonly to: Point; readonly shape: CurveShape };

export const STRAIGHT: CurveShape = { kind: "straight" };

/** Samples stand at most this far (feet) off the curve: about the width of a spade cut. */
export const SAMPLE_TOLERANCE_FT = 0.05;
/** An ordinate under this is a straight edge. */
const FLAT_FT = 1e-9;

type Arc = { readonly center: Point; readonly radiusFt: number; readonly startAngle: number /** Signed, counterclockwise positive. */; readonly sweep: number };

/** Center, radius and sweep of an arc; null where it is flat or has no chord. Sagitta formula r = (c²/4 + h²) / 2h. */
export function curveArc({ from, to, shape }: Curve): Arc | null {
  if (shape.kind !== "arc" || Math.abs(shape.ordinateFt) < FLAT_FT) return null;
  const chord = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (chord < FLAT_FT) return null;
  const h = shape.ordinateFt;
  const radius = (chord * chord) / (8 * h) + h / 2;
  const [ux, uy] = [(to[0] - from[0]) / chord, (to[1] - from[1]) / chord];
  // To the right of the way is (uy, −ux); the center lies radius − h to the left of the chord's middle.
  const center: Point = [(from[0] + to[0]) / 2 - (radius - h) * uy, (from[1] + to[1]) / 2 + (radius - h) * ux];
  return { center, radiusFt: Math.abs(radius), startAngle: Math.atan2(from[1] - center[1], from[0] - center[0]), sweep: 4 * Math.atan((2 * h) / chord) };
}

/** The place at a share (0–1) of the way: of the length for straight edges and arcs, of the parameter for Béziers. */
export function curvePointAt(curve: Curve, share: number): Point {
  const { from, to, shape } = curve;
  if (shape.kind === "cubic") {
    const u = 1 - share;
    const [a, b, c, d] = [u * u * u, 3 * u * u * share, 3 * u * share * share, share * share * share];
    const { control1: p, control2: q } = shape;
    return [a * from[0] + b * p[0] + c * q[0] + d * to[0], a * from[1] + b * p[1] + c * q[1] + d * to[1]];
  }
  const arc = curveArc(curve);
  if (!arc) return [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
  const angle = arc.startAngle + share * arc.sweep;
  return [arc.center[0] + arc.radiusFt * Math.cos(angle), arc.center[1] + arc.radiusFt * Math.sin(angle)];
}

/** Pieces of equal parameter that keep every sample chord within the tolerance of the curve. */
export function curvePieces(curve: Curve, toleranceFt: number): number {
  const { from, to, shape } = curve;
  const arc = curveArc(curve);
  if (arc) return Math.max(1, Math.ceil(Math.abs(arc.sweep) / (2 * Math.acos(Math.max(0, 1 - toleranceFt / arc.radiusFt)))));
  if (shape.kind !== "cubic") return 1;
  // A piece of parameter length 1/n strays at most max|B''| / 8n² from its chord; max|B''| ≤ 6 · the larger second difference (Wang 1984).
  const { control1: p, control2: q } = shape;
  const bend = Math.max(Math.hypot(from[0] - 2 * p[0] + q[0], from[1] - 2 * p[1] + q[1]), Math.hypot(p[0] - 2 * q[0] + to[0], p[1] - 2 * q[1] + to[1]));
  return Math.max(1, Math.ceil(Math.sqrt((6 * bend) / (8 * toleranceFt))));
}

/** Samples along the curve from its first corner on, without the last, none farther than the tolerance (feet) from the curve between them. */
export function curvePoints(curve: Curve, toleranceFt: number = SAMPLE_TOLERANCE_FT): Point[] {
  const pieces = curvePieces(curve, toleranceFt);
  return Array.from({ length: pieces }, (_, i) => (i === 0 ? curve.from : curvePointAt(curve, i / pieces)));
}

/** ½ ∫ (x dy − y dx) along the curve, in square feet: the part of Green's theorem that this edge gives to the area. Exact for all three shapes. */
export function curveAreaTerm(curve: Curve): number {
  const { from, to, shape } = curve;
  const cross = (a: Point, b: Point) => a[0] * b[1] - a[1] * b[0];
  if (shape.kind === "cubic") {
    const { control1: p, control2: q } = shape;
    return (3 * (2 * cross(from, p) + cross(from, q) + cross(p, q) + cross(p, to) + 2 * cross(q, to)) + cross(from, to)) / 20;
  }
  const chordTerm = cross(from, to) / 2;
  const arc = curveArc(curve);
  return arc ? chordTerm + (arc.radiusFt ** 2 * (arc.sweep - Math.sin(arc.sweep))) / 2 : chordTerm;
}

/** Abscissas and weights of the five-point Gauss–Legendre rule on −1…1. */
const GAUSS = [
  [0, 128 / 225],
  [Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3, (322 + 13 * Math.sqrt(70)) / 900],
  [-Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3, (322 + 13 * Math.sqrt(70)) / 900],
  [Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3, (322 - 13 * Math.sqrt(70)) / 900],
  [-Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3, (322 - 13 * Math.sqrt(70)) / 900],
] as const;
/** Pieces over which a Bézier's length is integrated. */
const LENGTH_PIECES = 32;

/** Length in feet: exact for straight edges and arcs, by quadrature for Béziers (far under 0.1 % but for a sharp cusp, where it stays within that). */
export function curveLength(curve: Curve): number {
  const { from, to, shape } = curve;
  const arc = curveArc(curve);
  if (arc) return arc.radiusFt * Math.abs(arc.sweep);
  if (shape.kind !== "cubic") return Math.hypot(to[0] - from[0], to[1] - from[1]);
  const { control1: p, control2: q } = shape;
  const speed = (t: number) => {
    const u = 1 - t;
    const along = (axis: 0 | 1) => 3 * (u * u * (p[axis] - from[axis]) + 2 * u * t * (q[axis] - p[axis]) + t * t * (to[axis] - q[axis]));
    return Math.hypot(along(0), along(1));
  };
  let length = 0;
  for (let i = 0; i < LENGTH_PIECES; i++) for (const [x, weight] of GAUSS) length += (weight / (2 * LENGTH_PIECES)) * speed((i + 0.5 + x / 2) / LENGTH_PIECES);
  return length;
}
