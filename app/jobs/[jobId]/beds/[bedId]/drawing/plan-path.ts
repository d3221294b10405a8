// The drawn edges of a bed as SVG path text in pixels of a view: straight lines, true arcs and Béziers.
import { type Curve, curveArc, curvePointAt } from "@/lib/ground/curve";
import type { Outline, Point } from "@/lib/ground/outline";
import { type PlanOutline, planCurves } from "@/lib/ground/plan-outline";
import { pxOfFt, type SheetView } from "./sheet-view";

const figure = (n: number) => String(Math.round(n * 100) / 100);
const at = (view: SheetView, point: Point) => pxOfFt(view, point).map(figure).join(" ");

/** The way along one edge, without the move to its first corner. */
function curveCommand(view: SheetView, curve: Curve): string {
  if (curve.shape.kind === "cubic") return `C${at(view, curve.shape.control1)} ${at(view, curve.shape.control2)} ${at(view, curve.to)}`;
  const arc = curveArc(curve);
  if (!arc) return `L${at(view, curve.to)}`;
  const radius = figure(arc.radiusFt * view.pxPerFt);
  return `A${radius} ${radius} 0 ${Math.abs(arc.sweep) > Math.PI ? 1 : 0} ${arc.sweep > 0 ? 0 : 1} ${at(view, curve.to)}`;
}

export function curvePath(view: SheetView, curve: Curve): string {
  return `M${at(view, curve.from)}${curveCommand(view, curve)}`;
}

export function planPath(view: SheetView, plan: PlanOutline): string {
  const curves = planCurves(plan);
  const [first] = curves;
  return first ? `M${at(view, first.from)}${curves.map((curve) => curveCommand(view, curve)).join("")}Z` : "";
}

export function linePath(view: SheetView, points: readonly Point[], closed = false): string {
  return points.length ? `M${points.map((point) => at(view, point)).join("L")}${closed ? "Z" : ""}` : "";
}

/** The middle of an edge in pixels, the screen angle (degrees) at which words along it stand upright, and the unit step (pixels) to its right and outer side. */
export function curveMiddle(
  view: SheetView,
  curve: Curve,
  outward: 1 | -1,
): { readonly at: readonly [number, number]; readonly turn: number; readonly out: readonly [number, number] } {
  const [a, m, b] = [0.49, 0.5, 0.51].map((share) => pxOfFt(view, curvePointAt(curve, share)));
  const [ax, ay] = a ?? [0, 0];
  const [bx, by] = b ?? [0, 0];
  const length = Math.hypot(bx - ax, by - ay) || 1;
  const [ux, uy] = [(bx - ax) / length, (by - ay) / length];
  const degrees = (Math.atan2(uy, ux) * 180) / Math.PI;
  return { at: m ?? [0, 0], turn: degrees > 90 ? degrees - 180 : degrees <= -90 ? degrees + 180 : degrees, out: [-uy * outward, ux * outward] };
}

/** 1 where the corners run counterclockwise (the bed lies to the left of its edges), −1 the other way. */
export function outlineTurn(outline: Outline): 1 | -1 {
  return outline.reduce((sum, [x, y], i) => sum + x * (outline[(i + 1) % outline.length]?.[1] ?? 0) - y * (outline[(i + 1) % outline.length]?.[0] ?? 0), 0) >= 0 ? 1 : -1;
}
