// Trees and shrubs, in leaf or bare.
import { type Frame, shrubFrame, treeFrame } from "./branches";
import { type Crown, crownPoints, crownProfile } from "./crown-profile";
import { curtain } from "./curtain";
import type { Pen } from "./face-mark";
import { type Point, pathCircle } from "./face-path";
import { woodyHead } from "./flower-form";
import { flowerHead, HEAD_LENGTH } from "./flower-head";
import { dotsOver, FINE, foliageMass, LEAFY } from "./foliage-mass";
import type { PlantLook, Wear } from "./plant-look";
import type { SilhouettePlant } from "./plant-shape";
import { toneDark, toneLight } from "./tone";

/** Clear trunk below the crown: a share of the height, more for tall trees, never over 8 ft. */
function trunkClearFt(plant: SilhouettePlant): number {
  const share = plant.habit === "columnar" || plant.habit === "conical" ? 0.07 : plant.habit === "vase" || plant.habit === "spreading" ? 0.2 : 0.16;
  return Math.min(8, plant.heightFt * share);
}

/** Width of a flower or fruit as drawn: large enough to see, small against the plant. */
const dotFt = (plant: SilhouettePlant, share: number): number => Math.max(0.07, Math.min(plant.heightFt, plant.spreadFt) * share);

/** Flowers or fruit along bare twigs. */
function dotsOnWood(draw: Pen, part: "flower" | "fruit", wear: Wear, ends: readonly Point[], sizeFt: number, random: () => number): void {
  const dots = ends.flatMap((end) =>
    Array.from({ length: wear.show * 2 - 1 }, () =>
      pathCircle([end[0] + (random() - 0.5) * sizeFt * 3.4, Math.max(sizeFt, end[1] + (random() - 0.5) * sizeFt * 3.4)], sizeFt * (0.34 + random() * 0.22)),
    ),
  );
  draw.fill(part, toneDark(wear.hex, 0.14), ...dots.filter((_, i) => i % 3 === 0));
  draw.fill(part, wear.hex, ...dots.filter((_, i) => i % 3 === 1));
  draw.fill(part, toneLight(wear.hex, 0.35), ...dots.filter((_, i) => i % 3 === 2));
}

/** Heads where the genus is known by them, dots else. */
export function flowersInLeaf(draw: Pen, plant: SilhouettePlant, wear: Wear, crown: Crown, random: () => number): void {
  const head = woodyHead(plant.genus);
  if (!head) {
    dotsOver(draw, "flower", wear, crown, dotFt(plant, 0.028), random);
    return;
  }
  const sizeFt = Math.max(0.12, Math.min(plant.heightFt, plant.spreadFt) * head.share);
  const apart = (sizeFt * 1.45) / Math.sqrt(wear.show / 3);
  const spots = crownPoints(crown, Math.max(apart, Math.max(crown.heightFt, crown.widthFt) / 14), 0.94, random).sort((a, b) => b[1] - a[1]);
  for (const [x, y] of spots)
    flowerHead(draw, { part: "flower", form: head.form, hex: wear.hex, sizeFt: sizeFt * (0.85 + random() * 0.3) }, [x, y + (sizeFt * HEAD_LENGTH[head.form]) / 2], 0);
}

function dress(draw: Pen, plant: SilhouettePlant, look: PlantLook, crown: Crown, frame: Frame, random: () => number): void {
  const bare = look.leafHex === null;
  if (look.fruit) {
    const few = { ...look.fruit, show: Math.max(1, look.fruit.show - 1) };
    if (bare) dotsOnWood(draw, "fruit", few, frame.ends, dotFt(plant, 0.018), random);
    else dotsOver(draw, "fruit", few, crown, dotFt(plant, 0.02), random);
  }
  if (look.seedhead && !look.flower) dotsOver(draw, "seedhead", { ...look.seedhead, show: 1 }, crown, dotFt(plant, 0.045), random);
  if (look.flower && bare) dotsOnWood(draw, "flower", look.flower, frame.ends, dotFt(plant, 0.026), random);
  else if (look.flower) flowersInLeaf(draw, plant, look.flower, crown, random);
}

/** A tree on a trunk. */
export function drawTree(draw: Pen, plant: SilhouettePlant, look: PlantLook, random: () => number): void {
  const { habit, heightFt, spreadFt, kind } = plant;
  const footFt = trunkClearFt(plant);
  const crown: Crown = { footFt, heightFt: heightFt - footFt, widthFt: spreadFt, profile: crownProfile(habit) };
  if (habit === "weeping") {
    curtain(draw, plant, look, random);
    return;
  }
  const frame = treeFrame(draw, look.stemHex, habit, crown, look.leafHex ? 0.75 : 1, random);
  const lean = habit === "irregular" ? (random() < 0.5 ? -1 : 1) : 0;
  if (look.leafHex) foliageMass(draw, look.leafHex, crown, kind === "conifer" ? FINE : LEAFY, random, lean);
  dress(draw, plant, look, crown, frame, random);
}

/** A shrub on several stems, leafy nearly to the ground. */
export function drawShrub(draw: Pen, plant: SilhouettePlant, look: PlantLook, random: () => number): void {
  const { habit, heightFt, spreadFt } = plant;
  if (habit === "weeping") {
    curtain(draw, plant, look, random);
    return;
  }
  const low = habit === "mounded" || habit === "mat" || habit === "conical" || habit === "columnar" ? 0.02 : habit === "vase" ? 0.14 : 0.07;
  const footFt = heightFt * low;
  const crown: Crown = { footFt, heightFt: heightFt - footFt, widthFt: spreadFt, profile: crownProfile(habit) };
  const frame = shrubFrame(draw, look.stemHex, habit, { ...crown, footFt: 0, heightFt }, look.leafHex ? 0.7 : 1, random);
  const lean = habit === "irregular" ? (random() < 0.5 ? -1 : 1) : 0;
  const small = Math.min(heightFt, spreadFt) < 2.5 || habit === "columnar";
  if (look.leafHex) foliageMass(draw, look.leafHex, crown, small ? FINE : LEAFY, random, lean);
  dress(draw, plant, look, crown, frame, random);
}
