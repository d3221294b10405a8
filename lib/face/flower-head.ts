// One flower head of a herb, seen from the side.
import type { FacePart, Pen } from "./face-mark";
import { type Point, pathBlade, pathCircle, pathEllipse, pathLeaf } from "./face-path";
import type { FlowerForm } from "./flower-form";
import { toneDark, toneLight } from "./tone";

const EYE = "#5b4022";

export type HeadStyle = { readonly part: FacePart; readonly form: FlowerForm; readonly hex: string /** Width of the head, ft. */; readonly sizeFt: number };

/** How long a head is along its stem, in head widths. */
export const HEAD_LENGTH: Record<FlowerForm, number> = { daisy: 0.6, spike: 3.4, plume: 2.6, umbel: 0.5, globe: 1, trumpet: 0.9, bell: 1.6, cup: 0.8, panicle: 1.5 };

function spike(draw: Pen, { part, hex, sizeFt }: HeadStyle, [x, y]: Point, length: number, lean: number): void {
  const rows = 7;
  for (let i = 0; i < rows; i++) {
    const t = i / rows;
    const r = sizeFt * 0.36 * (1 - t * 0.72);
    const at: Point = [x - lean * length * (1 - t), y - length * (1 - t)];
    draw.fill(part, i % 2 ? hex : toneDark(hex, 0.14), pathEllipse([at[0] - r * 0.55, at[1]], r * 0.75, r * 0.95), pathEllipse([at[0] + r * 0.55, at[1]], r * 0.75, r * 0.95));
  }
}

function plume(draw: Pen, { part, hex, sizeFt }: HeadStyle, [x, y]: Point, length: number, lean: number): void {
  const foot: Point = [x - lean * length, y - length];
  const branches = [-0.46, -0.28, -0.12, 0.12, 0.28, 0.46].map((side) =>
    pathLeaf([foot[0], foot[1] + length * (0.42 - Math.abs(side) * 0.6)], [x + side * sizeFt, y - length * (0.22 + Math.abs(side) * 0.75)], sizeFt * 0.14),
  );
  draw.fill(part, toneDark(hex, 0.15), ...branches);
  draw.fill(part, hex, pathLeaf(foot, [x, y], sizeFt * 0.3));
  draw.fill(part, toneLight(hex, 0.3), pathLeaf([foot[0], foot[1] + length * 0.3], [x, y], sizeFt * 0.12));
}

function daisy(draw: Pen, { part, hex, sizeFt }: HeadStyle, [x, y]: Point): void {
  const petals = Array.from({ length: 11 }, (_, i) => {
    const a = (2 * Math.PI * i) / 11 + 0.2;
    return pathLeaf([x, y], [x + Math.cos(a) * sizeFt * 0.52, y + Math.sin(a) * sizeFt * 0.34], sizeFt * 0.16);
  });
  draw.fill(part, toneDark(hex, 0.12), ...petals.filter((_, i) => i % 2));
  draw.fill(part, hex, ...petals.filter((_, i) => i % 2 === 0));
  draw.fill(part, EYE, pathEllipse([x, y + sizeFt * 0.03], sizeFt * 0.16, sizeFt * 0.12));
}

function umbel(draw: Pen, { part, hex, sizeFt }: HeadStyle, [x, y]: Point): void {
  const dots = Array.from({ length: 9 }, (_, i): Point => {
    const side = -1 + (2 * i) / 8;
    return [x + side * sizeFt * 0.48, y + (1 - side * side) * sizeFt * 0.1];
  });
  draw.fill(part, toneDark(hex, 0.16), ...dots.map(([a, b]) => pathEllipse([a, b - sizeFt * 0.06], sizeFt * 0.12, sizeFt * 0.09)));
  draw.fill(part, hex, ...dots.map(([a, b]) => pathEllipse([a, b], sizeFt * 0.1, sizeFt * 0.07)));
  draw.fill(part, toneLight(hex, 0.35), ...dots.filter((_, i) => i % 2).map(([a, b]) => pathCircle([a, b + sizeFt * 0.03], sizeFt * 0.05)));
}

function globe(draw: Pen, { part, hex, sizeFt }: HeadStyle, [x, y]: Point): void {
  draw.fill(part, toneDark(hex, 0.15), pathCircle([x, y], sizeFt * 0.44));
  const rays = Array.from({ length: 12 }, (_, i) => {
    const a = (2 * Math.PI * i) / 12;
    return pathCircle([x + Math.cos(a) * sizeFt * 0.36, y + Math.sin(a) * sizeFt * 0.36], sizeFt * 0.13);
  });
  draw.fill(part, hex, ...rays);
  draw.fill(part, toneLight(hex, 0.3), pathCircle([x - sizeFt * 0.1, y + sizeFt * 0.12], sizeFt * 0.17));
}

function trumpet(draw: Pen, { part, hex, sizeFt }: HeadStyle, [x, y]: Point, lean: number): void {
  const turn = lean >= 0 ? 0.5 : -0.5;
  const petals = [-0.95, -0.5, 0, 0.5, 0.95].map((a) =>
    pathLeaf([x, y - sizeFt * 0.3], [x + Math.sin(a + turn) * sizeFt * 0.62, y - sizeFt * 0.3 + Math.cos(a + turn) * sizeFt * 0.62], sizeFt * 0.2),
  );
  draw.fill(part, toneDark(hex, 0.16), ...petals.filter((_, i) => i % 2));
  draw.fill(part, hex, ...petals.filter((_, i) => i % 2 === 0));
}

function bells(draw: Pen, { part, hex, sizeFt }: HeadStyle, [x, y]: Point, length: number, lean: number): void {
  for (let i = 0; i < 5; i++) {
    const t = i / 5;
    const side = i % 2 ? 1 : -1;
    const at: Point = [x - lean * length * t + side * sizeFt * 0.24, y - length * t];
    draw.fill(
      part,
      i % 2 ? hex : toneDark(hex, 0.12),
      pathBlade([at[0], at[1] - sizeFt * 0.24], [at[0], at[1]], [at[0] - side * sizeFt * 0.06, at[1] + sizeFt * 0.22], sizeFt * 0.36),
    );
  }
}

function cup(draw: Pen, { part, hex, sizeFt }: HeadStyle, [x, y]: Point): void {
  const petals = [-0.9, 0.9, -0.35, 0.35].map((a) =>
    pathLeaf([x, y - sizeFt * 0.34], [x + Math.sin(a) * sizeFt * 0.52, y - sizeFt * 0.34 + Math.cos(a) * sizeFt * 0.66], sizeFt * 0.34),
  );
  draw.fill(part, toneDark(hex, 0.14), ...petals.slice(0, 2));
  draw.fill(part, hex, ...petals.slice(2));
  draw.fill(part, toneLight(hex, 0.3), pathEllipse([x, y - sizeFt * 0.02], sizeFt * 0.16, sizeFt * 0.2));
}

function panicle(draw: Pen, { part, hex, sizeFt }: HeadStyle, [x, y]: Point, length: number): void {
  const dots = Array.from({ length: 16 }, (_, i): Point => {
    const t = i / 16;
    const wide = sizeFt * 0.5 * Math.sin(Math.PI * (0.15 + 0.85 * t) ** 0.8);
    return [x + Math.sin(i * 2.4) * wide, y - length * (1 - t)];
  });
  draw.fill(part, toneDark(hex, 0.12), ...dots.filter((_, i) => i % 3 === 0).map((p) => pathCircle(p, sizeFt * 0.13)));
  draw.fill(part, hex, ...dots.filter((_, i) => i % 3 === 1).map((p) => pathCircle(p, sizeFt * 0.13)));
  draw.fill(part, toneLight(hex, 0.3), ...dots.filter((_, i) => i % 3 === 2).map((p) => pathCircle(p, sizeFt * 0.11)));
}

/** Draws a head whose top is at `tip`, on a stem that leans by `lean` (ft sideways a foot up). */
export function flowerHead(draw: Pen, style: HeadStyle, tip: Point, lean: number): void {
  const length = style.sizeFt * HEAD_LENGTH[style.form];
  const middle: Point = [tip[0], tip[1] - length / 2];
  switch (style.form) {
    case "spike":
      spike(draw, style, tip, length, lean);
      break;
    case "plume":
      plume(draw, style, tip, length, lean);
      break;
    case "daisy":
      daisy(draw, style, middle);
      break;
    case "umbel":
      umbel(draw, style, middle);
      break;
    case "globe":
      globe(draw, style, middle);
      break;
    case "trumpet":
      trumpet(draw, style, middle, lean);
      break;
    case "bell":
      bells(draw, style, tip, length, lean);
      break;
    case "cup":
      cup(draw, style, middle);
      break;
    case "panicle":
      panicle(draw, style, tip, length);
      break;
  }
}
