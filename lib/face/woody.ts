// Trees and shrubs, in leaf or bare.
import { shrubFrame, treeFrame } from "./branches";
import { type Crown, crownProfile } from "./crown-profile";
import { curtain } from "./curtain";
import type { Pen } from "./face-mark";
import { dotsOver, FINE, foliageMass, LEAFY } from "./foliage-mass";
import type { PlantLook } from "./plant-look";
import type { SilhouettePlant } from "./plant-shape";
import { toneLight } from "./tone";

/** Clear trunk below the crown: a share of the height, more for tall trees, never over 8 ft. */
function trunkClearFt(plant: SilhouettePlant): number {
  const share = plant.habit === "columnar" || plant.habit === "conical" ? 0.07 : plant.habit === "vase" || plant.habit === "spreading" ? 0.2 : 0.16;
  return Math.min(8, plant.heightFt * share);
}

/** Width of a flower or fruit as drawn: large enough to see, small against the plant. */
const dotFt = (plant: SilhouettePlant, share: number): number => Math.max(0.09, Math.min(plant.heightFt, plant.spreadFt) * share);

function dress(draw: Pen, plant: SilhouettePlant, look: PlantLook, crown: Crown, random: () => number): void {
  if (look.fruit) dotsOver(draw, "fruit", { ...look.fruit, show: Math.max(1, look.fruit.show - 1) }, crown, dotFt(plant, 0.022), random);
  if (look.seedhead && !look.flower) dotsOver(draw, "seedhead", look.seedhead, crown, dotFt(plant, 0.035), random);
  if (look.flower) dotsOver(draw, "flower", look.flower, crown, dotFt(plant, 0.034), random);
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
  treeFrame(draw, look.stemHex, habit, crown, toneLight(look.stemHex, 0.12), random);
  const lean = habit === "irregular" ? (random() < 0.5 ? -1 : 1) : 0;
  if (look.leafHex) foliageMass(draw, look.leafHex, crown, kind === "conifer" ? FINE : LEAFY, random, lean);
  dress(draw, plant, look, crown, random);
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
  shrubFrame(draw, look.stemHex, habit, { ...crown, footFt: 0, heightFt }, random);
  const lean = habit === "irregular" ? (random() < 0.5 ? -1 : 1) : 0;
  const small = Math.min(heightFt, spreadFt) < 2.5 || habit === "columnar";
  if (look.leafHex) foliageMass(draw, look.leafHex, crown, small ? FINE : LEAFY, random, lean);
  dress(draw, plant, look, crown, random);
}
