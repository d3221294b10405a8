// Windows of a house wall as their edge changes, and the places along an edge.
import type { Window } from "./border";
import { type Curve, curveLength, curvePieces, curvePointAt, SAMPLE_TOLERANCE_FT } from "./curve";
import type { Point } from "./outline";

/** Windows narrower than this (feet) are none. */
const LEAST_FT = 1 / 48;

/** A window within an edge so long: it slides back from beyond the end, and is cut where it is wider than the edge. */
function windowKept(window: Window, lengthFt: number): Window {
  if (window.fromFt >= 0 && window.toFt <= lengthFt) return window;
  const width = Math.min(window.toFt - window.fromFt, lengthFt);
  const fromFt = Math.max(0, Math.min(window.fromFt, lengthFt - width));
  return { ...window, fromFt, toFt: Math.min(lengthFt, fromFt + width) };
}

/** Windows held within an edge so long (feet); the same array where all are. */
export function windowsKept(windows: readonly Window[], lengthFt: number): readonly Window[] {
  const kept = windows.map((window) => windowKept(window, lengthFt));
  return kept.every((window, i) => window === windows[i]) ? windows : kept;
}

/** The windows of the two parts of an edge that is divided so many feet from its first corner; a window over the division is divided too. */
export function windowsSplit(windows: readonly Window[], atFt: number): readonly [readonly Window[], readonly Window[]] {
  const wide = ({ fromFt, toFt }: Window) => toFt - fromFt >= LEAST_FT;
  return [
    windows.map((w) => ({ ...w, toFt: Math.min(w.toFt, atFt) })).filter(wide),
    windows.map((w) => ({ ...w, fromFt: Math.max(0, w.fromFt - atFt), toFt: w.toFt - atFt })).filter(wide),
  ];
}

/** A place for one more window so wide: the middle of the widest free stretch of the edge, cut to it; null where there is none. */
export function windowRoom(windows: readonly Window[], lengthFt: number, widthFt: number): readonly [fromFt: number, toFt: number] | null {
  const sorted = [...windows].sort((a, b) => a.fromFt - b.fromFt);
  let [bestFrom, bestTo, from] = [0, 0, 0];
  for (const next of [...sorted.map((w) => [w.fromFt, w.toFt] as const), [lengthFt, lengthFt] as const]) {
    if (next[0] - from > bestTo - bestFrom) [bestFrom, bestTo] = [from, next[0]];
    from = Math.max(from, next[1]);
  }
  const free = bestTo - bestFrom;
  if (free < LEAST_FT) return null;
  const width = Math.min(widthFt, free);
  return [bestFrom + (free - width) / 2, bestFrom + (free + width) / 2];
}

/** Points along a curve from so many feet to so many feet of its length, ends included; within the sampling tolerance of the curve. */
export function curveStretch(curve: Curve, fromFt: number, toFt: number): Point[] {
  const pieces = curve.shape.kind === "straight" ? 1 : Math.max(16, 2 * curvePieces(curve, SAMPLE_TOLERANCE_FT));
  const points = Array.from({ length: pieces + 1 }, (_, i) => curvePointAt(curve, i / pieces));
  // Samples of a Bézier are not evenly spaced; the polyline is measured, and stretched to the curve's own length.
  const steps = points.slice(1).map((p, i) => Math.hypot(p[0] - (points[i]?.[0] ?? 0), p[1] - (points[i]?.[1] ?? 0)));
  const measured = steps.reduce((sum, step) => sum + step, 0);
  if (measured === 0) return [];
  const scale = measured / curveLength(curve);
  const [low, high] = [Math.max(0, fromFt * scale), Math.min(measured, toFt * scale)];
  const found: Point[] = [];
  let along = 0;
  for (const [i, step] of steps.entries()) {
    const [a, b] = [points[i], points[i + 1]];
    if (!a || !b || step === 0) continue;
    const at = (feet: number): Point => [a[0] + ((feet - along) / step) * (b[0] - a[0]), a[1] + ((feet - along) / step) * (b[1] - a[1])];
    const last = i === steps.length - 1;
    if (low >= along && (low < along + step || last) && found.length === 0) found.push(at(Math.min(low, along + step)));
    if (along + step > low && along + step < high) found.push(b);
    if (high > along && (high <= along + step || last) && found.length > 0) {
      found.push(at(Math.min(high, along + step)));
      break;
    }
    along += step;
  }
  return found;
}
