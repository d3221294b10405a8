// Paints the plants of a plan on a canvas: the resting plants once into a bitmap, then on every frame only what moves, is chosen or about to be set.
import type { Crowding } from "@/lib/ground/crowding";
import { barrierNearest, type GroundPlan } from "@/lib/ground/ground-plan";
import type { Outline, Point } from "@/lib/ground/outline";
import type { PlanStand } from "./plan-figure";
import { ANCHOR_REACH_PX, pxOfFt, type SheetView, viewAnchor } from "./sheet-view";
import { type SpriteCache, spriteCache } from "./sprite-cache";

export type PlanColors = { readonly ink: string; readonly paper: string; readonly soft: string; readonly accent: string; readonly alert: string };

/** What lies still between two edits, as far as the bitmap goes. */
export type PlanScene = {
  readonly view: SheetView;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Pixels of the screen for each of the page. */
  readonly ratio: number;
  readonly stands: readonly PlanStand[];
  readonly colors: PlanColors;
  /** Plants that are held and move on their own. */
  readonly lifted: ReadonlySet<string> | null;
  readonly crowding: readonly Crowding[];
  readonly plan: GroundPlan;
};

/** What may change with every frame. */
export type PlanMotion = {
  readonly by: Point;
  readonly chosen: ReadonlySet<string>;
  readonly active: string | null;
  readonly preview: readonly PlanStand[];
  readonly shape: Outline | null;
  /** Line of the tool in hand, and the places to hold it by. */
  readonly line: readonly Point[] | null;
  readonly handles: readonly Point[];
  readonly band: readonly [Point, Point] | null;
  /** Of what is held. */
  readonly crowding: readonly Crowding[];
};

const NO_IDS: ReadonlySet<string> = new Set();
/** Smaller than this (pixels) a plant has no letter of its own; its group has one. */
const LETTER_LEAST_PX = 8;
const OVER_OPACITY = 0.74;

function ring(context: CanvasRenderingContext2D, [x, y]: readonly [number, number], radiusPx: number): void {
  context.moveTo(x + radiusPx, y);
  context.arc(x, y, radiusPx, 0, 2 * Math.PI);
}

function lettersOf(stands: readonly PlanStand[], view: SheetView): PlanStand[] {
  const groups = new Map<string, PlanStand[]>();
  const own: PlanStand[] = [];
  for (const stand of stands) {
    if (stand.figure.radiusFt * view.pxPerFt >= LETTER_LEAST_PX) own.push(stand);
    else {
      const key = `${stand.plant.rowId} ${stand.plant.group}`;
      groups.set(key, [...(groups.get(key) ?? []), stand]);
    }
  }
  for (const members of groups.values()) {
    const [mx, my] = members.reduce(([x, y], { plant }): Point => [x + plant.at[0] / members.length, y + plant.at[1] / members.length], [0, 0] as Point);
    const away = ({ plant }: PlanStand) => Math.hypot(plant.at[0] - mx, plant.at[1] - my);
    const middle = members.reduce<PlanStand | null>((best, one) => (best && away(best) <= away(one) ? best : one), null);
    if (middle) own.push(middle);
  }
  return own;
}

function standsPaint(context: CanvasRenderingContext2D, sprites: SpriteCache, scene: PlanScene, stands: readonly PlanStand[], by: Point): void {
  const { view, widthPx, heightPx, ratio, colors } = scene;
  const seen = stands.flatMap((stand) => {
    const px = pxOfFt(view, [stand.plant.at[0] + by[0], stand.plant.at[1] + by[1]]);
    const reach = stand.figure.matureFt * view.pxPerFt + 8;
    return px[0] < -reach || px[1] < -reach || px[0] > widthPx + reach || px[1] > heightPx + reach ? [] : [{ stand, px }];
  });
  context.beginPath();
  for (const { stand, px } of seen) if (stand.figure.matureFt > stand.figure.radiusFt * 1.04) ring(context, px, stand.figure.matureFt * view.pxPerFt);
  context.strokeStyle = colors.soft;
  context.globalAlpha = 0.5;
  context.lineWidth = 0.7;
  context.stroke();
  for (const { stand, px } of seen) {
    const sprite = sprites.spriteOf(stand.figure, stand.form, view.pxPerFt * ratio);
    if (sprite) {
      const reachPx = sprite.reachFt * view.pxPerFt;
      context.globalAlpha = stand.figure.over ? OVER_OPACITY : 1;
      context.drawImage(sprite.image, px[0] - reachPx, px[1] - reachPx, 2 * reachPx, 2 * reachPx);
    } else {
      context.globalAlpha = 1;
      context.beginPath();
      ring(context, px, stand.figure.radiusFt * view.pxPerFt);
      context.stroke();
    }
  }
  context.globalAlpha = 1;
  for (const { plant, figure } of lettersOf(
    seen.map(({ stand }) => stand),
    view,
  )) {
    const fontPx = Math.round(Math.max(10, Math.min(15, figure.radiusFt * view.pxPerFt * 0.6)));
    const image = sprites.letterOf(figure.letter, colors.ink, colors.paper, fontPx, ratio);
    const [x, y] = pxOfFt(view, [plant.at[0] + by[0], plant.at[1] + by[1]]);
    context.drawImage(image, x - image.width / ratio / 2, y - image.height / ratio / 2, image.width / ratio, image.height / ratio);
  }
}

/** The lens in which two crowns meet, or the way from a plant to what it crowds. */
function crowdingPaint(
  context: CanvasRenderingContext2D,
  { view, colors, plan }: PlanScene,
  crowding: readonly Crowding[],
  where: ReadonlyMap<string, { at: Point; radiusFt: number }>,
): void {
  context.strokeStyle = colors.alert;
  context.fillStyle = colors.alert;
  for (const one of crowding) {
    context.beginPath();
    if (one.kind === "pair") {
      const [a, b] = one.ids.map((id) => where.get(id));
      if (!a || !b) continue;
      const away = Math.hypot(b.at[0] - a.at[0], b.at[1] - a.at[1]);
      const [wide, narrow] = a.radiusFt >= b.radiusFt ? [a, b] : [b, a];
      if (away >= a.radiusFt + b.radiusFt || away < 1e-6) continue;
      if (away <= wide.radiusFt - narrow.radiusFt) ring(context, pxOfFt(view, narrow.at), narrow.radiusFt * view.pxPerFt);
      else
        for (const [from, to] of [
          [a, b],
          [b, a],
        ] as const) {
          const along = (away * away + from.radiusFt ** 2 - to.radiusFt ** 2) / (2 * away);
          const half = Math.acos(Math.max(-1, Math.min(1, along / from.radiusFt)));
          const turn = Math.atan2(-(to.at[1] - from.at[1]), to.at[0] - from.at[0]);
          const [x, y] = pxOfFt(view, from.at);
          const radius = from.radiusFt * view.pxPerFt;
          context.moveTo(x + radius * Math.cos(turn - half), y + radius * Math.sin(turn - half));
          context.arc(x, y, radius, turn - half, turn + half);
        }
    } else {
      const plant = where.get(one.id);
      const barrier = plan.barriers[one.barrier];
      if (!plant || !barrier) continue;
      const near = pxOfFt(view, barrierNearest(plant.at, barrier).at);
      const [x, y] = pxOfFt(view, plant.at);
      context.moveTo(x, y);
      context.lineTo(near[0], near[1]);
      ring(context, near, 3);
    }
    context.globalAlpha = 0.16;
    if (one.kind === "pair") context.fill();
    context.globalAlpha = 1;
    context.lineWidth = 1.3;
    context.stroke();
  }
}

function holdPaint(context: CanvasRenderingContext2D, scene: PlanScene, motion: PlanMotion): void {
  const { view, colors } = scene;
  context.strokeStyle = colors.accent;
  if (motion.shape) {
    context.beginPath();
    for (const [i, point] of motion.shape.entries()) {
      const [x, y] = pxOfFt(view, point);
      if (i === 0) context.moveTo(x, y);
      else context.lineTo(x, y);
    }
    context.closePath();
    context.lineWidth = 1.4;
    context.stroke();
  }
  if (motion.line) {
    context.beginPath();
    for (const [i, point] of motion.line.entries()) {
      const [x, y] = pxOfFt(view, point);
      if (i === 0) context.moveTo(x, y);
      else context.lineTo(x, y);
    }
    context.lineWidth = 1;
    context.setLineDash([6, 4]);
    context.stroke();
    context.setLineDash([]);
  }
  for (const handle of motion.handles) {
    context.beginPath();
    ring(context, pxOfFt(view, handle), 6);
    context.fillStyle = colors.paper;
    context.fill();
    context.lineWidth = 2;
    context.stroke();
  }
  if (motion.band) {
    const [a, b] = motion.band.map((point) => pxOfFt(view, point));
    if (a && b) {
      context.fillStyle = colors.accent;
      context.globalAlpha = 0.08;
      context.fillRect(a[0], a[1], b[0] - a[0], b[1] - a[1]);
      context.globalAlpha = 1;
      context.lineWidth = 1;
      context.strokeRect(a[0], a[1], b[0] - a[0], b[1] - a[1]);
    }
  }
}

export type PlanPainter = { readonly paint: (canvas: HTMLCanvasElement, scene: PlanScene, motion: PlanMotion) => void };

type Where = ReadonlyMap<string, { at: Point; radiusFt: number }>;

function whereOf(stands: readonly PlanStand[], lifted: ReadonlySet<string>, by: Point): Where {
  return new Map(
    stands.map(({ plant, figure }) => [plant.id, { at: lifted.has(plant.id) ? ([plant.at[0] + by[0], plant.at[1] + by[1]] as Point) : plant.at, radiusFt: figure.radiusFt }]),
  );
}

function choicePaint(context: CanvasRenderingContext2D, { view, colors }: PlanScene, motion: PlanMotion, where: Where): void {
  context.strokeStyle = colors.accent;
  context.lineWidth = 2;
  context.beginPath();
  for (const id of motion.chosen) {
    const stand = where.get(id);
    if (stand) ring(context, pxOfFt(view, stand.at), Math.max(5, stand.radiusFt * view.pxPerFt + 2));
  }
  context.stroke();
  const active = motion.active === null ? undefined : where.get(motion.active);
  if (!active) return;
  context.beginPath();
  context.setLineDash([3, 3]);
  context.lineWidth = 1.5;
  ring(context, pxOfFt(view, active.at), Math.max(8, active.radiusFt * view.pxPerFt + 6));
  context.stroke();
  context.setLineDash([]);
}

/** The scene as its bitmap shows it: at the view's anchor, reaching a little beyond the window. */
function sceneAnchored(scene: PlanScene, anchor: SheetView): PlanScene {
  const view = { pxPerFt: anchor.pxPerFt, originPx: [anchor.originPx[0] + ANCHOR_REACH_PX, anchor.originPx[1] + ANCHOR_REACH_PX] as const };
  return { ...scene, view, widthPx: scene.widthPx + 2 * ANCHOR_REACH_PX, heightPx: scene.heightPx + 2 * ANCHOR_REACH_PX };
}

function scenesAlike(a: PlanScene, b: PlanScene): boolean {
  const views = a.view.pxPerFt === b.view.pxPerFt && a.view.originPx[0] === b.view.originPx[0] && a.view.originPx[1] === b.view.originPx[1];
  const sizes = a.widthPx === b.widthPx && a.heightPx === b.heightPx && a.ratio === b.ratio;
  return views && sizes && a.stands === b.stands && a.lifted === b.lifted && a.colors === b.colors && a.crowding === b.crowding && a.plan === b.plan;
}

function canvasSized(canvas: HTMLCanvasElement, { widthPx, heightPx, ratio }: PlanScene): void {
  const [width, height] = [Math.round(widthPx * ratio), Math.round(heightPx * ratio)];
  if (canvas.width !== width || canvas.height !== height) [canvas.width, canvas.height] = [width, height];
}

/** A canvas' pen on a clean sheet whose unit is a pixel of the page. */
function contextClean(canvas: HTMLCanvasElement, scene: PlanScene): CanvasRenderingContext2D | null {
  canvasSized(canvas, scene);
  const context = canvas.getContext("2d");
  if (!context) return null;
  context.setTransform(1, 0, 0, 1, 0, 0);
  context.globalAlpha = 1;
  context.clearRect(0, 0, canvas.width, canvas.height);
  context.setTransform(scene.ratio, 0, 0, scene.ratio, 0, 0);
  return context;
}

/** A painter with its own bitmaps. */
export function planPainter(): PlanPainter {
  const sprites = spriteCache();
  const rest = document.createElement("canvas");
  let resting: PlanScene | null = null;
  let anchorBefore: SheetView | null = null;
  return {
    paint: (canvas, scene, motion) => {
      const lifted = scene.lifted ?? NO_IDS;
      const { anchor, pushPx } = viewAnchor(scene.view, anchorBefore);
      anchorBefore = anchor;
      const anchored = sceneAnchored(scene, anchor);
      if (!resting || !scenesAlike(resting, anchored)) {
        const still = contextClean(rest, anchored);
        if (!still) return;
        standsPaint(still, sprites, anchored, lifted.size ? scene.stands.filter(({ plant }) => !lifted.has(plant.id)) : scene.stands, [0, 0]);
        crowdingPaint(still, anchored, scene.crowding, whereOf(scene.stands, NO_IDS, [0, 0]));
        resting = anchored;
      }
      const context = contextClean(canvas, scene);
      if (!context) return;
      context.drawImage(rest, pushPx[0] - ANCHOR_REACH_PX, pushPx[1] - ANCHOR_REACH_PX, anchored.widthPx, anchored.heightPx);
      if (lifted.size) {
        const held = scene.stands.filter(({ plant }) => lifted.has(plant.id));
        standsPaint(context, sprites, scene, held, motion.by);
      }
      const where = whereOf(scene.stands, lifted, motion.by);
      crowdingPaint(context, scene, motion.crowding, where);
      choicePaint(context, scene, motion, where);
      if (motion.preview.length) {
        standsPaint(context, sprites, scene, motion.preview, [0, 0]);
        context.strokeStyle = scene.colors.accent;
        context.lineWidth = 1.4;
        context.beginPath();
        for (const { plant, figure } of motion.preview) ring(context, pxOfFt(scene.view, plant.at), Math.max(3, figure.radiusFt * scene.view.pxPerFt));
        context.stroke();
      }
      holdPaint(context, scene, motion);
    },
  };
}
