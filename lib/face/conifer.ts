// Conifers: tiers of boughs, flames, globes, layered fans, carpets.
import { type Crown, crownOutline, crownProfile } from "./crown-profile";
import { curtain } from "./curtain";
import type { Pen } from "./face-mark";
import { type Point, pathBlade, pathLeaf, pathLine, pathScalloped } from "./face-path";
import { dotsOver, FINE, foliageMass, strokesOver } from "./foliage-mass";
import type { PlantLook } from "./plant-look";
import type { SilhouettePlant } from "./plant-shape";
import { toneDark, toneLight } from "./tone";

const crownOf = (plant: SilhouettePlant, footFt: number): Crown => ({ footFt, heightFt: plant.heightFt - footFt, widthFt: plant.spreadFt, profile: crownProfile(plant.habit) });

function trunk(draw: Pen, plant: SilhouettePlant, look: PlantLook, toFt: number): void {
  const width = Math.max(0.1, Math.min(plant.heightFt * 0.035, plant.spreadFt * 0.09));
  draw.fill("stem", look.stemHex, pathBlade([0, 0], [0, toFt / 2], [0, toFt], width * 1.5));
}

/** One tier: a skirt that hangs from `top` to `y`, its lower edge in points. */
function tier(top: Point, y: number, half: number, points: number, drop: number, random: () => number): string {
  const edge = Array.from({ length: points * 2 + 1 }, (_, i): Point => {
    const x = 1 - (2 * i) / (points * 2);
    const isTip = i % 2 === 0;
    return [x * half * (isTip ? 1 : 0.98), Math.max(0, y - (isTip ? drop * (0.7 + random() * 0.5) : -drop * 0.35) - Math.abs(x) * drop * 0.5)];
  });
  return pathLine([top, [half * 0.45, (top[1] * 1.3 + y) / 2.3], ...edge, [-half * 0.45, (top[1] * 1.3 + y) / 2.3]], true);
}

/** Spruce and fir: tier on tier, each in the shade of the one above. */
function tiers(draw: Pen, plant: SilhouettePlant, hex: string, random: () => number): void {
  const { heightFt, spreadFt } = plant;
  const footFt = heightFt * 0.035;
  const slender = heightFt / spreadFt;
  const count = Math.round(Math.min(12, Math.max(5, 4 + slender * 1.8)));
  const tall = heightFt - footFt;
  for (let i = 0; i < count; i++) {
    const t = i / count;
    const half = (spreadFt / 2) * (1 - t) ** 0.92 * (0.96 + random() * 0.08);
    const y = footFt + tall * t * 0.97;
    const top: Point = [0, Math.min(heightFt, footFt + tall * (t + 2.1 / count))];
    const drop = (tall / count) * 0.34;
    const points = Math.max(3, Math.round((half / (spreadFt / 2)) * 9));
    draw.fill("leaf", toneDark(hex, 0.24), tier(top, y, half, points, drop, random));
    draw.fill("leaf", i % 2 ? hex : toneDark(hex, 0.06), tier([0, top[1]], y + drop * 0.75, half * 0.96, points, drop, random));
    draw.fill("leaf", toneLight(hex, 0.1), tier([-half * 0.12, top[1]], y + drop * 1.9, half * 0.5, Math.max(2, points - 3), drop * 0.7, random));
  }
}

/** Arborvitae and upright juniper: a closed flame of upright sprays. */
function flame(draw: Pen, plant: SilhouettePlant, hex: string, random: () => number): void {
  const crown = crownOf(plant, plant.heightFt * 0.015);
  draw.fill("leaf", toneDark(hex, 0.16), pathScalloped(crownOutline(crown, Math.min(plant.spreadFt * 0.16, plant.heightFt * 0.09), 0.06, random), 0.3));
  strokesOver(draw, hex, crown, Math.min(plant.spreadFt * 0.17, plant.heightFt * 0.08), 0.85, random);
}

/** Yew, mugo pine, globe arborvitae: a dense mass. */
function globe(draw: Pen, plant: SilhouettePlant, hex: string, random: () => number): void {
  const crown = crownOf(plant, 0);
  foliageMass(draw, hex, crown, FINE, random);
  strokesOver(draw, hex, crown, Math.min(plant.heightFt, plant.spreadFt) * 0.06, 0.4, random);
}

/** Spreading junipers and yews: a low mass with sprays that reach out of it, layer over layer. */
function fans(draw: Pen, plant: SilhouettePlant, hex: string, random: () => number): void {
  const { heightFt, spreadFt } = plant;
  const sprays = (count: number, inner: number, outer: number, width: number) =>
    Array.from({ length: count }, (_, i) => {
      const side = -1 + (2 * (i + 0.5)) / count + (random() - 0.5) * 0.06;
      const angle = Math.PI / 2 - side * 1.42;
      const reach = 0.9 + random() * 0.12;
      const on = (share: number): Point => [Math.cos(angle) * (spreadFt / 2) * share, Math.max(heightFt * 0.03, Math.sin(angle) * heightFt * share)];
      return pathLeaf(on(inner * reach), on(Math.min(1, outer * reach)), width, side * 0.14);
    });
  const width = Math.min(spreadFt * 0.035, heightFt * 0.09);
  draw.fill("leaf", toneDark(hex, 0.3), ...sprays(45, 0.5, 1, width));
  foliageMass(draw, hex, { footFt: 0, heightFt: heightFt * 0.78, widthFt: spreadFt * 0.8, profile: crownProfile("mounded") }, FINE, random);
  draw.fill("leaf", toneDark(hex, 0.14), ...sprays(27, 0.4, 0.82, width));
  draw.fill("leaf", hex, ...sprays(21, 0.22, 0.62, width));
  draw.fill("leaf", toneLight(hex, 0.18), ...sprays(15, 0.1, 0.42, width * 0.8));
}

/** Pines that grow as they will: a bent trunk and flat clouds. */
function clouds(draw: Pen, plant: SilhouettePlant, look: PlantLook, hex: string, random: () => number): void {
  const { heightFt, spreadFt } = plant;
  const lean = (random() < 0.5 ? -1 : 1) * spreadFt * 0.08;
  const width = Math.max(0.12, heightFt * 0.035);
  const n = heightFt > spreadFt * 1.6 ? 7 : 6;
  const pads = Array.from({ length: n }, (_, i) => {
    const t = 0.26 + (0.74 * (i + 0.4)) / n;
    const side = i === n - 1 ? 0 : (i % 2 ? 1 : -1) * (0.28 + random() * 0.14) * (1.12 - t * 0.75);
    const wide = spreadFt * (0.5 - t * 0.16) * (0.9 + random() * 0.25);
    return {
      x: side * spreadFt + lean * t,
      y: heightFt * t,
      wide: Math.min(wide, spreadFt - 2 * Math.abs(side * spreadFt + lean * t) || wide),
      tall: Math.min(heightFt * 0.17, heightFt - heightFt * t + heightFt * 0.06),
    };
  });
  draw.fill(
    "stem",
    look.stemHex,
    pathBlade([0, 0], [lean * 1.6, heightFt * 0.4], [lean, heightFt * 0.94], width),
    ...pads.map((p) => pathBlade([lean * 0.6, p.y * 0.78], [p.x * 0.4, p.y * 0.9], [p.x, p.y + p.tall * 0.2], width * 0.4)),
  );
  for (const p of pads) {
    const crown: Crown = { middleFt: p.x, footFt: p.y - p.tall * 0.35, heightFt: p.tall, widthFt: Math.max(spreadFt * 0.2, p.wide), profile: crownProfile("mounded") };
    foliageMass(draw, hex, crown, FINE, random);
    strokesOver(draw, hex, crown, p.tall * 0.28, 0.6, random);
  }
}

/** Any conifer. */
export function drawConifer(draw: Pen, plant: SilhouettePlant, look: PlantLook, random: () => number): void {
  const hex = look.leafHex;
  if (plant.habit === "weeping") curtain(draw, plant, look, random);
  else if (!hex) trunk(draw, plant, look, plant.heightFt);
  else {
    trunk(draw, plant, look, plant.heightFt * 0.3);
    switch (plant.habit) {
      case "conical":
        tiers(draw, plant, hex, random);
        break;
      case "columnar":
        flame(draw, plant, hex, random);
        break;
      case "irregular":
        clouds(draw, plant, look, hex, random);
        break;
      case "spreading":
      case "mat":
      case "vase":
      case "fountain":
        fans(draw, plant, hex, random);
        break;
      default:
        globe(draw, plant, hex, random);
    }
  }
  if (look.fruit && hex) dotsOver(draw, "fruit", { ...look.fruit, show: 1 }, crownOf(plant, plant.heightFt * 0.1), Math.max(0.08, plant.spreadFt * 0.02), random);
}
