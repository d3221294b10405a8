// Weeping trees and shrubs: limbs that rise and arch over, and strands that hang from them nearly to the ground.
import { type Crown, crownProfile } from "./crown-profile";
import type { Pen } from "./face-mark";
import { type Point, pathBlade, pathCurve, pathEllipse } from "./face-path";
import { FINE, foliageMass } from "./foliage-mass";
import type { PlantLook } from "./plant-look";
import type { SilhouettePlant } from "./plant-shape";
import { toneDark, toneLight } from "./tone";

type Strand = { readonly from: Point; readonly control: Point; readonly to: Point; readonly depth: number };

/** Strands of the curtain, those behind first. */
function strands({ heightFt, spreadFt }: SilhouettePlant, count: number, random: () => number): Strand[] {
  const half = spreadFt / 2;
  return Array.from({ length: count }, (_, i): Strand => {
    const x = -1 + (2 * (i + 0.5)) / count + (random() - 0.5) * 0.06;
    const dome = Math.sqrt(Math.max(0, 1 - x * x * 0.92));
    const depth = random();
    const topY = heightFt * (0.62 + 0.36 * dome) * (0.9 + depth * 0.1);
    const end = heightFt * (0.04 + random() * 0.2 + (1 - Math.abs(x)) * 0.08);
    const from: Point = [x * half * 0.72, topY];
    const to: Point = [x * half * (0.96 + random() * 0.06), Math.min(end, topY * 0.8)];
    return { from, control: [x * half * 1.06, topY * 0.86], to, depth };
  }).sort((a, b) => a.depth - b.depth);
}

/** Trunk, arching limbs, then the curtain with leaves, flowers or fruit along it. */
export function curtain(draw: Pen, plant: SilhouettePlant, look: PlantLook, random: () => number): void {
  const { heightFt, spreadFt } = plant;
  const trunkFt = Math.max(0.1, heightFt * 0.04);
  const all = strands(plant, Math.round(Math.min(120, Math.max(72, spreadFt * 5))), random);
  const strandFt = Math.max(0.02, spreadFt * 0.0065);
  const curves = (some: readonly Strand[]) => some.map(({ from, control, to }) => pathCurve(from, control, to)).join("");
  const limbs = all.filter((_, i) => i % 12 === 0).map(({ from }) => pathBlade([0, heightFt * 0.5], [from[0] * 0.25, from[1] * 1.02], from, trunkFt * 0.4));
  draw.fill(
    "stem",
    look.stemHex,
    pathBlade([0, 0], [trunkFt * 0.4, heightFt * 0.4], [0, heightFt * 0.86], trunkFt),
    pathBlade([0, 0], [0, trunkFt], [0, trunkFt * 2.4], trunkFt * 1.6),
    ...limbs,
  );
  if (!look.leafHex) draw.line("stem", look.stemHex, strandFt * 0.5, curves(all));
  else {
    const cap: Crown = { footFt: heightFt * 0.52, heightFt: heightFt * 0.47, widthFt: spreadFt * 0.86, profile: crownProfile("mounded") };
    foliageMass(draw, look.leafHex, cap, FINE, random);
    const third = Math.ceil(all.length / 3);
    draw.line("leaf", toneDark(look.leafHex, 0.24), strandFt * 3, curves(all.slice(0, third)));
    draw.line("leaf", look.leafHex, strandFt * 2.7, curves(all.slice(third, 2 * third)));
    draw.line("leaf", toneLight(look.leafHex, 0.15), strandFt * 2, curves(all.slice(2 * third)));
    const fringe = all.flatMap(({ to }) => [
      pathEllipse([to[0], to[1] + strandFt], strandFt * 1.1, strandFt * 2.6),
      pathEllipse([to[0] - strandFt, to[1] + strandFt * 3], strandFt, strandFt * 2.2, 0.5),
    ]);
    draw.fill("leaf", look.leafHex, ...fringe);
  }
  const wear = look.flower ?? look.fruit;
  if (!wear) return;
  const dots = all.flatMap(({ from, control, to }) =>
    Array.from({ length: wear.show * 3 }, () => {
      const t = 0.1 + random() * 0.85;
      const [a, b, c] = [(1 - t) ** 2, 2 * t * (1 - t), t ** 2];
      const at: Point = [a * from[0] + b * control[0] + c * to[0] + (random() - 0.5) * strandFt * 3, a * from[1] + b * control[1] + c * to[1]];
      return pathEllipse(at, strandFt * (look.flower ? 1.5 : 1), strandFt * (look.flower ? 1.3 : 1));
    }),
  );
  draw.fill(look.flower ? "flower" : "fruit", wear.hex, ...dots.filter((_, i) => i % 2 === 0));
  draw.fill(look.flower ? "flower" : "fruit", toneLight(wear.hex, 0.35), ...dots.filter((_, i) => i % 2 === 1));
}
