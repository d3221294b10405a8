// Paths of the drawn plants. Points are in feet, x to the right and y up from the ground; the path text has y down, as SVG wants it.

export type Point = readonly [x: number, y: number];

/** Three decimals are a hundredth of an inch. */
const figure = (n: number): string => String(Math.round(n * 1000) / 1000);
const at = ([x, y]: Point): string => `${figure(x)} ${figure(-y)}`;

/** Straight lines through the points. */
export function pathLine(points: readonly Point[], closed = false): string {
  return points.length ? `M${points.map(at).join("L")}${closed ? "Z" : ""}` : "";
}

/** A smooth line through the points (Catmull-Rom as cubic curves). */
export function pathSmooth(points: readonly Point[], closed = false): string {
  const n = points.length;
  const [first] = points;
  if (!first || n < 3) return pathLine(points, closed);
  const get = (i: number): Point => points[closed ? (i + n) % n : Math.min(n - 1, Math.max(0, i))] ?? first;
  let d = `M${at(first)}`;
  for (let i = 0; i < (closed ? n : n - 1); i++) {
    const [p0, p1, p2, p3] = [get(i - 1), get(i), get(i + 1), get(i + 2)];
    const c1: Point = [p1[0] + (p2[0] - p0[0]) / 6, p1[1] + (p2[1] - p0[1]) / 6];
    const c2: Point = [p2[0] - (p3[0] - p1[0]) / 6, p2[1] - (p3[1] - p1[1]) / 6];
    d += `C${at(c1)} ${at(c2)} ${at(p2)}`;
  }
  return closed ? `${d}Z` : d;
}

/** A closed outline whose edges bulge outward between the points, as masses of leaves do. `bulge` is a share of each edge. */
export function pathScalloped(points: readonly Point[], bulge: number): string {
  const [first] = points;
  if (!first) return "";
  let d = `M${at(first)}`;
  points.forEach((p, i) => {
    const q = points[(i + 1) % points.length] ?? first;
    // Points run counterclockwise: outward is to the right of the edge; nothing bulges into the ground.
    const control: Point = [(p[0] + q[0]) / 2 + (q[1] - p[1]) * bulge, Math.max(0, (p[1] + q[1]) / 2 - (q[0] - p[0]) * bulge)];
    d += `Q${at(control)} ${at(q)}`;
  });
  return `${d}Z`;
}

/** A circle as a path. */
export function pathCircle([x, y]: Point, radius: number): string {
  const r = figure(radius);
  return `M${figure(x - radius)} ${figure(-y)}a${r} ${r} 0 1 0 ${figure(2 * radius)} 0a${r} ${r} 0 1 0 ${figure(-2 * radius)} 0Z`;
}

/** An ellipse turned by `angle` (radians, counterclockwise). */
export function pathEllipse([x, y]: Point, rx: number, ry: number, angle = 0): string {
  const [dx, dy] = [rx * Math.cos(angle), rx * Math.sin(angle)];
  const [a, b]: [Point, Point] = [
    [x - dx, y - dy],
    [x + dx, y + dy],
  ];
  const arc = `A${figure(rx)} ${figure(ry)} ${figure((-angle * 180) / Math.PI)} 1 0`;
  return `M${at(a)}${arc} ${at(b)}${arc} ${at(a)}Z`;
}

/** A leaf: pointed at both ends, widest in the middle, from `from` to `to`; bent sideways by a share of its length. */
export function pathLeaf(from: Point, to: Point, width: number, bend = 0): string {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy) || 1;
  const [nx, ny] = [-dy / length, dx / length];
  const side = (share: number, along: number): Point => [
    from[0] + dx * along + nx * (share * width + bend * length),
    Math.max(0, from[1] + dy * along + ny * (share * width + bend * length)),
  ];
  return `M${at(from)}Q${at(side(1, 0.42))} ${at(to)}Q${at(side(-1, 0.42))} ${at(from)}Z`;
}

/** A blade: broad at the foot, tapering along a quadratic curve to a point. */
export function pathBlade(from: Point, control: Point, to: Point, width: number): string {
  const half = width / 2;
  const lean = Math.sign(to[0] - from[0]) || 1;
  const edge = (dx: number, dy: number): Point => [control[0] + dx, control[1] + dy];
  return `M${at([from[0] - half, from[1]])}Q${at(edge(-half * 0.7, lean * half * 0.7))} ${at(to)}Q${at(edge(half * 0.7, -lean * half * 0.7))} ${at([from[0] + half, from[1]])}Z`;
}

/** A point on a quadratic curve, t 0–1. */
export function curvePoint(from: Point, control: Point, to: Point, t: number): Point {
  const [a, b, c] = [(1 - t) ** 2, 2 * t * (1 - t), t ** 2];
  return [a * from[0] + b * control[0] + c * to[0], a * from[1] + b * control[1] + c * to[1]];
}

/** A quadratic curve as an open path. */
export const pathCurve = (from: Point, control: Point, to: Point): string => `M${at(from)}Q${at(control)} ${at(to)}`;
