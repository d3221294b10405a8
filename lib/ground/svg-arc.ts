import type { Point } from "./outline";

export type EllipticalArc = { readonly rx: number; readonly ry: number; readonly turnDeg: number; readonly large: boolean; readonly sweep: boolean };

/**
 * An elliptical arc between two points as cubic Béziers of at most an eighth turn each (off by under 1e-6 of the radius). Center and angles after the
 * W3C's SVG 2, appendix B.2; radii too small are scaled up as it says. Empty where a radius is 0 or the points are one: a straight line.
 */
export function arcCubics(
  from: Point,
  to: Point,
  { rx: rawX, ry: rawY, turnDeg, large, sweep }: EllipticalArc,
): { readonly control1: Point; readonly control2: Point; readonly to: Point }[] {
  let [rx, ry] = [Math.abs(rawX), Math.abs(rawY)];
  if (rx === 0 || ry === 0 || (from[0] === to[0] && from[1] === to[1])) return [];
  const turn = (turnDeg * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const [hx, hy] = [(from[0] - to[0]) / 2, (from[1] - to[1]) / 2];
  const [x, y] = [cos * hx + sin * hy, cos * hy - sin * hx];
  const scale = Math.sqrt((x / rx) ** 2 + (y / ry) ** 2);
  if (scale > 1) [rx, ry] = [rx * scale, ry * scale];
  const under = (rx * ry) ** 2 - (rx * y) ** 2 - (ry * x) ** 2;
  const factor = (large === sweep ? -1 : 1) * Math.sqrt(Math.max(0, under) / ((rx * y) ** 2 + (ry * x) ** 2));
  const [cx, cy] = [(factor * rx * y) / ry, (-factor * ry * x) / rx];
  const middle: Point = [cos * cx - sin * cy + (from[0] + to[0]) / 2, sin * cx + cos * cy + (from[1] + to[1]) / 2];
  const start = Math.atan2((y - cy) / ry, (x - cx) / rx);
  let delta = Math.atan2((-y - cy) / ry, (-x - cx) / rx) - start;
  if (sweep && delta < 0) delta += 2 * Math.PI;
  if (!sweep && delta > 0) delta -= 2 * Math.PI;
  const pieces = Math.max(1, Math.ceil(Math.abs(delta) / (Math.PI / 4) - 1e-9));
  const handle = (4 / 3) * Math.tan(delta / pieces / 4);
  const place = (ex: number, ey: number): Point => [middle[0] + cos * rx * ex - sin * ry * ey, middle[1] + sin * rx * ex + cos * ry * ey];
  return Array.from({ length: pieces }, (_, i) => {
    const [a, b] = [start + (i * delta) / pieces, start + ((i + 1) * delta) / pieces];
    return {
      control1: place(Math.cos(a) - handle * Math.sin(a), Math.sin(a) + handle * Math.cos(a)),
      control2: place(Math.cos(b) + handle * Math.sin(b), Math.sin(b) - handle * Math.cos(b)),
      to: i === pieces - 1 ? to : place(Math.cos(b), Math.sin(b)),
    };
  });
}
