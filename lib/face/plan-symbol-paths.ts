// Paths of plan symbols: crowns with lobes, forked branches, dashed rings, and places spread over a circle. Feet, y up.
import { type Point, pathLine } from "./face-path";

const figure = (n: number): string => String(Math.round(n * 1000) / 1000);
const at = ([x, y]: Point): string => `${figure(x)} ${figure(-y)}`;

/** Points round a circle of radius 1, each a little off its place and its radius by a share. */
export function ring(count: number, chance: () => number, wander: number): Point[] {
  return Array.from({ length: count }, (_, i): Point => {
    const turn = ((i + (chance() - 0.5) * wander * 4) / count) * 2 * Math.PI;
    const radius = 1 - chance() * wander;
    return [radius * Math.cos(turn), radius * Math.sin(turn)];
  });
}

/** A closed crown of lobes that bulge outward by a share of each; nothing of it lies outside the radius. */
export function crownPath(lobes: number, radiusFt: number, wander: number, bulge: number, chance: () => number, middle: Point = [0, 0]): string {
  const reach = 1 / (1 + (bulge * Math.PI) / lobes);
  const corners = ring(lobes, chance, wander).map(([x, y]): Point => [middle[0] + x * radiusFt * reach, middle[1] + y * radiusFt * reach]);
  const [first] = corners;
  if (!first) return "";
  let d = `M${at(first)}`;
  corners.forEach((p, i) => {
    const q = corners[(i + 1) % corners.length] ?? first;
    const [dx, dy] = [q[0] - p[0], q[1] - p[1]];
    // Corners run counterclockwise: outward is to the right of the way.
    d += `C${at([p[0] + dx * 0.1 + dy * bulge, p[1] + dy * 0.1 - dx * bulge])} ${at([p[0] + dx * 0.9 + dy * bulge, p[1] + dy * 0.9 - dx * bulge])} ${at(q)}`;
  });
  return `${d}Z`;
}

/** A circle in dashes, drawn as arcs so that no pen needs a dash pattern. */
export function dashedCircle(radiusFt: number, dashes: number): string {
  const r = figure(radiusFt);
  return Array.from({ length: dashes }, (_, i) => {
    const [from, to] = [((i + 0.1) / dashes) * 2 * Math.PI, ((i + 0.62) / dashes) * 2 * Math.PI];
    return `M${at([radiusFt * Math.cos(from), radiusFt * Math.sin(from)])}A${r} ${r} 0 0 0 ${at([radiusFt * Math.cos(to), radiusFt * Math.sin(to)])}`;
  }).join("");
}

/** Places spread evenly over a circle (the sunflower's spiral, Vogel 1979), each a little off its place. */
export function spread(count: number, radiusFt: number, chance: () => number): Point[] {
  const start = chance() * 2 * Math.PI;
  return Array.from({ length: count }, (_, i): Point => {
    const turn = start + i * 2.399963;
    const radius = radiusFt * Math.min(1, Math.sqrt((i + 0.5) / count) + (chance() - 0.5) * 0.12);
    return [radius * Math.cos(turn), radius * Math.sin(turn)];
  });
}

/** Limbs from the middle, each forked twice. */
export function branchPaths(limbs: number, radiusFt: number, chance: () => number): { readonly thick: readonly string[]; readonly thin: readonly string[] } {
  const thick: string[] = [];
  const thin: string[] = [];
  for (let limb = 0; limb < limbs; limb++) {
    const turn = ((limb + (chance() - 0.5) * 0.5) / limbs) * 2 * Math.PI;
    const reach = radiusFt * (0.86 + chance() * 0.12);
    const go = (far: number, aside: number): Point => [far * Math.cos(turn + aside), far * Math.sin(turn + aside)];
    const [bend, tip] = [go(reach * 0.45, (chance() - 0.5) * 0.22), go(reach, (chance() - 0.5) * 0.16)];
    thick.push(pathLine([[0, 0], bend]));
    thin.push(pathLine([bend, tip]));
    for (const side of [-1, 1]) {
      const aside = side * (0.2 + chance() * 0.16) * Math.min(1.3, 9 / limbs);
      const fork = go(reach * (0.82 + chance() * 0.12), aside);
      thin.push(pathLine([bend, fork]));
      const twig: Point = [bend[0] + (fork[0] - bend[0]) * 0.5, bend[1] + (fork[1] - bend[1]) * 0.5];
      thin.push(pathLine([twig, go(reach * 0.94, aside * 1.55)]));
    }
  }
  return { thick, thin };
}
