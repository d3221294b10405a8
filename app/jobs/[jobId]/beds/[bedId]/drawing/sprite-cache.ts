// Plan symbols as small bitmaps: each is drawn once for its look, size and form, then only copied. This is what lets hundreds of plants move at the screen's own rate.
import type { PlanMark } from "@/lib/face/plan-symbol";
import type { Figure } from "./plan-figure";

/** Share of the radius that a symbol reaches: its shadow falls a little outside the crown. */
export const SPRITE_REACH = 1.16;
/** Steps of scale: symbols are drawn at the next step up and copied a little smaller, so that zooming does not draw them all anew. */
const STEPS_PER_DOUBLING = 4;
const SIDE_MOST_PX = 1600;
const KEPT_MOST = 900;

export type Sprite = { readonly image: HTMLCanvasElement; readonly reachFt: number };
export type SpriteCache = {
  readonly spriteOf: (figure: Figure, form: number, pxPerFt: number) => Sprite | null;
  readonly letterOf: (letter: string, ink: string, paper: string, fontPx: number, ratio: number) => HTMLCanvasElement;
};

/** Draws marks on a canvas whose unit is a foot. */
export function marksPaint(context: CanvasRenderingContext2D, marks: readonly PlanMark[]): void {
  for (const { d, fill, stroke, strokeFt, opacity } of marks) {
    const path = new Path2D(d);
    context.globalAlpha = opacity;
    if (fill !== "none") {
      context.fillStyle = fill;
      context.fill(path);
    }
    if (stroke !== "none") {
      context.strokeStyle = stroke;
      context.lineWidth = strokeFt;
      context.stroke(path);
    }
  }
  context.globalAlpha = 1;
}

function canvasOf(sidePx: number, heightPx = sidePx): HTMLCanvasElement {
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.ceil(sidePx));
  canvas.height = Math.max(1, Math.ceil(heightPx));
  return canvas;
}

export function spriteCache(): SpriteCache {
  const sprites = new Map<string, Sprite>();
  const letters = new Map<string, HTMLCanvasElement>();
  return {
    spriteOf: (figure, form, pxPerFt) => {
      const reachFt = figure.radiusFt * SPRITE_REACH;
      const step = Math.ceil(Math.log2(pxPerFt) * STEPS_PER_DOUBLING);
      const scale = Math.min(2 ** (step / STEPS_PER_DOUBLING), SIDE_MOST_PX / (2 * reachFt));
      const key = `${figure.look} ${form} ${scale.toFixed(3)}`;
      const kept = sprites.get(key);
      if (kept) return kept;
      const marks = figure.marksOf(form);
      if (!marks.length) return null;
      if (sprites.size > KEPT_MOST) sprites.clear();
      const image = canvasOf(2 * reachFt * scale);
      const context = image.getContext("2d");
      if (!context) return null;
      context.lineCap = "round";
      context.lineJoin = "round";
      context.setTransform(scale, 0, 0, scale, image.width / 2, image.height / 2);
      marksPaint(context, marks);
      const sprite = { image, reachFt: image.width / 2 / scale };
      sprites.set(key, sprite);
      return sprite;
    },
    letterOf: (letter, ink, paper, fontPx, ratio) => {
      const key = `${letter} ${ink} ${paper} ${fontPx} ${ratio}`;
      const kept = letters.get(key);
      if (kept) return kept;
      const image = canvasOf((letter.length * fontPx * 0.72 + 8) * ratio, (fontPx + 8) * ratio);
      const context = image.getContext("2d");
      if (context) {
        context.setTransform(ratio, 0, 0, ratio, image.width / 2, image.height / 2);
        context.font = `600 ${fontPx}px "Source Sans 3", "Segoe UI", sans-serif`;
        context.textAlign = "center";
        context.textBaseline = "middle";
        context.lineJoin = "round";
        context.strokeStyle = paper;
        context.globalAlpha = 0.82;
        context.lineWidth = 3.2;
        context.strokeText(letter, 0, 1);
        context.globalAlpha = 1;
        context.fillStyle = ink;
        context.fillText(letter, 0, 1);
      }
      letters.set(key, image);
      return image;
    },
  };
}
