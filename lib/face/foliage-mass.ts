// A mass of leaves: a scalloped body with clumps in sun and shade, and what flowers or fruits upon it.
import { type Crown, crownOutline, crownPoints } from "./crown-profile";
import type { FacePart, Pen } from "./face-mark";
import { type Point, pathCircle, pathScalloped } from "./face-path";
import type { Wear } from "./plant-look";
import { toneDark, toneLight } from "./tone";

/** A clump: a scalloped blob, flattened a little. */
function clump([x, y]: Point, radius: number, random: () => number): string {
  const n = 7;
  const turn = random() * Math.PI;
  const points = Array.from({ length: n }, (_, i): Point => {
    const a = turn + (2 * Math.PI * i) / n;
    const r = radius * (0.82 + random() * 0.3);
    return [x + Math.cos(a) * r, Math.max(0, y + Math.sin(a) * r * 0.72)];
  });
  return pathScalloped(points, 0.32);
}

/** How finely a mass is drawn: edge of a scallop as a share of the smaller side, roughness of the outline, size of clumps. */
export type Texture = { readonly edge: number; readonly rough: number; readonly clump: number };
export const LEAFY: Texture = { edge: 0.125, rough: 0.08, clump: 0.095 };
export const FINE: Texture = { edge: 0.08, rough: 0.05, clump: 0.075 };

/** Body and clumps of a crown. Light comes from the upper left. */
export function foliageMass(draw: Pen, hex: string, crown: Crown, texture: Texture, random: () => number, lean = 0): void {
  const small = Math.min(crown.heightFt, crown.widthFt);
  // A long crown has more, not longer, clumps.
  const cell = Math.max(small * texture.clump * 1.5, Math.max(crown.heightFt, crown.widthFt) / 20);
  draw.fill("leaf", toneDark(hex, 0.13), pathScalloped(crownOutline(crown, Math.max(small * texture.edge, cell * 0.5), texture.rough, random, lean), 0.36));
  const points = crownPoints(crown, cell, 0.86, random);
  const half = crown.widthFt / 2;
  const place = points.map((p): { p: Point; sun: number } => {
    const [x, y] = p;
    const t = (y - crown.footFt) / crown.heightFt;
    return { p: [x + lean * half * 0.35 * t, y], sun: t - 0.5 - ((x - (crown.middleFt ?? 0)) / half) * 0.42 + (random() - 0.5) * 0.5 };
  });
  const blobs = (wanted: (sun: number) => boolean, size: number) => place.filter(({ sun }) => wanted(sun)).map(({ p }) => clump(p, cell * size, random));
  draw.fill("leaf", toneDark(hex, 0.26), ...blobs((sun) => sun < -0.22, 0.5));
  draw.fill("leaf", hex, ...blobs((sun) => sun >= -0.22 && sun < 0.3, 0.56));
  draw.fill("leaf", toneLight(hex, 0.16), ...blobs((sun) => sun >= 0.18, 0.42));
  draw.fill("leaf", toneLight(hex, 0.3), ...blobs((sun) => sun >= 0.48, 0.22));
}

/** Needles or small leaves as short strokes over a mass. `rise` −1 hanging … 1 upright. */
export function strokesOver(draw: Pen, hex: string, crown: Crown, lengthFt: number, rise: number, random: () => number): void {
  const cell = lengthFt * 1.15;
  const stroke = ([x, y]: Point): string => {
    const side = (x - (crown.middleFt ?? 0)) / (crown.widthFt / 2 || 1);
    const angle = Math.PI / 2 - side * (1.25 - rise * 0.75) + (random() - 0.5) * 0.35;
    const turned = rise < 0 ? -angle : angle;
    const [dx, dy] = [Math.cos(turned) * lengthFt, Math.sin(turned) * lengthFt];
    return `M${round(x)} ${round(-y)}l${round(dx)} ${round(-dy)}`;
  };
  const points = crownPoints(crown, cell, 0.9, random);
  const [dark, light] = [points.filter((_, i) => i % 2 === 0), points.filter((_, i) => i % 2 === 1)];
  draw.line("leaf", toneDark(hex, 0.3), lengthFt * 0.13, dark.map(stroke).join(""));
  draw.line("leaf", toneLight(hex, 0.22), lengthFt * 0.11, light.map(stroke).join(""));
}

const round = (n: number): string => String(Math.round(n * 1000) / 1000);

const COVER = [0, 0.35, 0.62, 1] as const;

/** Flowers or fruit dotted over a crown; more with more show. `sizeFt` is their width. */
export function dotsOver(draw: Pen, part: FacePart, wear: Wear, crown: Crown, sizeFt: number, random: () => number): void {
  const cell = (sizeFt * 1.55) / Math.sqrt(COVER[wear.show] ?? 0.6);
  const points = crownPoints(crown, Math.max(cell, Math.max(crown.heightFt, crown.widthFt) / 28), 0.93, random);
  const dot = (p: Point) => pathCircle(p, sizeFt * (0.36 + random() * 0.22));
  draw.fill(part, toneDark(wear.hex, 0.14), ...points.filter((_, i) => i % 3 === 0).map(dot));
  draw.fill(part, wear.hex, ...points.filter((_, i) => i % 3 === 1).map(dot));
  draw.fill(part, toneLight(wear.hex, 0.4), ...points.filter((_, i) => i % 3 === 2).map(dot));
}
