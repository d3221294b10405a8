// A plant drawn from what is known of it: kind, habit, mature size, and the colors it wears on a day. Marks, not pixels: screen and paper draw them alike.
import { drawConifer } from "./conifer";
import { type FaceMark, pen } from "./face-mark";
import { drawHerb } from "./herb";
import { drawClimber, drawMat } from "./low";
import type { PlantLook } from "./plant-look";
import type { SilhouettePlant } from "./plant-shape";
import { seeded } from "./seeded";
import { drawShrub, drawTree } from "./woody";

/**
 * Marks of a plant standing on the ground at x = 0, in feet, y down (so everything above ground is negative), back to front.
 * The same plant, look and seed give the same marks. Nothing is drawn of what has died back and left nothing standing.
 * @param seed tells two plants of one kind apart
 */
export function silhouette(plant: SilhouettePlant, look: PlantLook, seed: string): readonly FaceMark[] {
  const draw = pen();
  const random = seeded(seed);
  const { kind, habit } = plant;
  if (habit === "climbing" || kind === "vine") drawClimber(draw, plant, look, random);
  else if (habit === "mat" && kind !== "grass" && kind !== "fern" && kind !== "bulb") drawMat(draw, plant, look, random);
  else if (kind === "conifer") drawConifer(draw, plant, look, random);
  else if (kind === "tree") drawTree(draw, plant, look, random);
  else if (kind === "shrub") drawShrub(draw, plant, look, random);
  else if (kind === "groundcover" && plant.foliage === "evergreen" && habit !== "clump") drawMat(draw, plant, look, random);
  else drawHerb(draw, plant, look, random);
  return draw.marks();
}
