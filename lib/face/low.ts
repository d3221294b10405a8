// What lies on the ground and what climbs: carpets, and vines on a frame.
import { type Crown, crownProfile } from "./crown-profile";
import type { Pen } from "./face-mark";
import { type Point, pathLine, pathSmooth } from "./face-path";
import { woodyHead } from "./flower-form";
import { dotsOver, FINE, foliageMass, strokesOver } from "./foliage-mass";
import type { PlantLook } from "./plant-look";
import type { SilhouettePlant } from "./plant-shape";
import { flowersInLeaf } from "./woody";

/** A carpet: several low cushions side by side, flowers over it. */
export function drawMat(draw: Pen, plant: SilhouettePlant, look: PlantLook, random: () => number): void {
  const { heightFt, spreadFt } = plant;
  const n = Math.max(3, Math.min(7, Math.round(spreadFt / Math.max(0.2, heightFt * 2.2))));
  const cushions = Array.from({ length: n }, (_, i): Crown => {
    const wide = (spreadFt / n) * 1.5;
    const x = -spreadFt / 2 + wide / 2 + ((spreadFt - wide) * i) / (n - 1);
    return { middleFt: x, footFt: 0, heightFt: heightFt * (0.72 + random() * 0.28), widthFt: wide, profile: crownProfile("mounded") };
  });
  const wear = look.flower ?? look.seedhead ?? look.fruit;
  for (const cushion of cushions) {
    if (look.leafHex) foliageMass(draw, look.leafHex, cushion, FINE, random);
    if (look.leafHex && plant.kind === "conifer") strokesOver(draw, look.leafHex, cushion, Math.min(heightFt * 0.4, spreadFt * 0.04), 0.3, random);
  }
  if (!wear) return;
  const size = Math.max(0.045, Math.min(heightFt * 0.24, spreadFt * 0.035));
  for (const cushion of cushions)
    dotsOver(draw, look.flower ? "flower" : look.seedhead ? "seedhead" : "fruit", wear, { ...cushion, heightFt: cushion.heightFt * 1.04 }, size, random);
}

const FRAME = "#8d8878";

/** A vine on posts and wires as high and wide as it grows. */
export function drawClimber(draw: Pen, plant: SilhouettePlant, look: PlantLook, random: () => number): void {
  const { heightFt, spreadFt } = plant;
  const half = spreadFt / 2;
  const post = Math.max(0.06, heightFt * 0.008);
  const wires = Math.max(3, Math.min(8, Math.round(heightFt / 3)));
  draw.line(
    "support",
    FRAME,
    post,
    pathLine([
      [-half * 0.86, 0],
      [-half * 0.86, heightFt],
    ]),
    pathLine([
      [half * 0.86, 0],
      [half * 0.86, heightFt],
    ]),
  );
  draw.line(
    "support",
    FRAME,
    post * 0.4,
    ...Array.from({ length: wires }, (_, i) => {
      const y = (heightFt * (i + 1)) / wires;
      return pathLine([
        [-half * 0.9, y],
        [half * 0.9, y],
      ]);
    }),
  );
  const runners = Array.from({ length: 7 }, (_, i): Point[] => {
    const to = -0.85 + (1.7 * i) / 6;
    return Array.from({ length: 7 }, (_, k): Point => {
      const t = k / 6;
      return [half * (to * t ** 0.8 + (random() - 0.5) * 0.22 * (k ? 1 : 0.3)), heightFt * t * (0.9 + random() * 0.1)];
    });
  });
  draw.line("stem", look.stemHex, Math.max(0.04, heightFt * 0.01), ...runners.map((points) => pathSmooth(points)));
  const crown: Crown = { footFt: heightFt * 0.08, heightFt: heightFt * 0.92, widthFt: spreadFt, profile: crownProfile("climbing") };
  if (look.leafHex) foliageMass(draw, look.leafHex, crown, { edge: 0.13, rough: 0.16, clump: 0.1 }, random);
  const wear = look.flower ?? look.fruit ?? look.seedhead;
  if (look.flower && look.leafHex && woodyHead(plant.genus)) flowersInLeaf(draw, plant, look.flower, crown, random);
  else if (wear) dotsOver(draw, look.flower ? "flower" : "fruit", wear, crown, Math.max(0.16, Math.min(heightFt, spreadFt) * 0.06), random);
}
