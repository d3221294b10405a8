// Grasses, sedges, irises and ferns: tufts of blades or fronds that rise from one place and arch.
import type { Pen } from "./face-mark";
import { curvePoint, type Point, pathBlade, pathCurve, pathLeaf } from "./face-path";
import { toneDark, toneLight } from "./tone";

/** A blade's course, in feet. */
export type Blade = { readonly from: Point; readonly control: Point; readonly to: Point };

/**
 * A tuft `heightFt` high and `spreadFt` wide.
 * @param arch 0 stiff and upright … 1 falling over to the ground
 */
export function tuft(heightFt: number, spreadFt: number, count: number, arch: number, random: () => number): Blade[] {
  return Array.from({ length: count }, (_, i): Blade => {
    const side = -1 + (2 * (i + 0.5)) / count + (random() - 0.5) * 0.1;
    const reach = side * (spreadFt / 2) * (0.92 + random() * 0.1);
    const out = Math.abs(side);
    const top = heightFt * (1 - out * 0.16) * (0.86 + random() * 0.14);
    const tipY = Math.max(0.02 * heightFt, top * (1 - arch * out * 0.85 - arch * 0.12));
    const from: Point = [side * spreadFt * 0.07, 0];
    const control: Point = [from[0] + (reach - from[0]) * (0.28 + 0.3 * arch), Math.min(heightFt * (1.02 + 0.22 * arch), top * (0.75 + 0.62 * arch))];
    return { from, control, to: [reach, tipY] };
  }).sort((a, b) => Math.abs(b.to[0]) * random() - Math.abs(a.to[0]) * random());
}

/** Draws blades in three tones, those behind darker. */
export function drawBlades(draw: Pen, hex: string, blades: readonly Blade[], widthFt: number): void {
  const third = Math.ceil(blades.length / 3);
  const path = ({ from, control, to }: Blade) => pathBlade(from, control, to, widthFt);
  draw.fill("leaf", toneDark(hex, 0.26), ...blades.slice(0, third).map(path));
  draw.fill("leaf", hex, ...blades.slice(third, 2 * third).map(path));
  draw.fill("leaf", toneLight(hex, 0.2), ...blades.slice(2 * third).map(path));
}

/** Draws fronds: a midrib with leaflets that shrink toward the tip. */
export function drawFronds(draw: Pen, hex: string, blades: readonly Blade[], widthFt: number): void {
  blades.forEach(({ from, control, to }, i) => {
    const tone = i < blades.length / 3 ? toneDark(hex, 0.24) : i < (2 * blades.length) / 3 ? hex : toneLight(hex, 0.16);
    const leaflets: string[] = [];
    for (let k = 2; k <= 19; k++) {
      const t = k / 20;
      const [a, b] = [curvePoint(from, control, to, t), curvePoint(from, control, to, Math.min(1, t + 0.06))];
      const length = Math.hypot(b[0] - a[0], b[1] - a[1]) || 1;
      const [ux, uy] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
      const wide = widthFt * Math.sin(Math.PI * Math.min(1, t * 0.86 + 0.16));
      for (const side of [-1, 1]) leaflets.push(pathLeaf(a, [a[0] + ux * wide * 0.55 - uy * side * wide, a[1] + uy * wide * 0.55 + ux * side * wide], widthFt * 0.2));
    }
    draw.line("leaf", toneDark(hex, 0.3), widthFt * 0.09, pathCurve(from, control, to));
    draw.fill("leaf", tone, ...leaflets);
  });
}
