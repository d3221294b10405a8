// The bare frame of a woody plant: trunk or stems, limbs that reach into the crown, and twigs.
import type { Habit } from "../plants/vocabulary";
import { type Crown, crownPoints } from "./crown-profile";
import type { Pen } from "./face-mark";
import { curvePoint, type Point, pathBlade, pathCurve, pathLine } from "./face-path";
import { toneLight } from "./tone";

/** Where limbs leave the trunk, as a share of the way from the crown's foot to their tip's height; and how they bend. */
type Bearing = { readonly leave: number; readonly lift: number };
const BEARING: Partial<Record<Habit, Bearing>> = {
  spreading: { leave: 0.75, lift: 0.1 },
  conical: { leave: 0.92, lift: -0.05 },
  columnar: { leave: 0.25, lift: 0.25 },
  upright: { leave: 0.35, lift: 0.25 },
  vase: { leave: 0.05, lift: 0.25 },
  weeping: { leave: 0.8, lift: 0.5 },
};
const PLAIN: Bearing = { leave: 0.5, lift: 0.2 };

/** Where twigs end: what blooms on bare wood sits there. */
export type Frame = { readonly ends: readonly Point[] };

/** Twigs at a limb's tip, fanning on in its direction. */
function twigs(tip: Point, from: Point, lengthFt: number, random: () => number): string[] {
  const angle = Math.atan2(tip[1] - from[1], tip[0] - from[0]);
  return [-0.5, -0.15, 0.2, 0.55].map((turn) => {
    const a = angle + turn + (random() - 0.5) * 0.3;
    const l = lengthFt * (0.6 + random() * 0.5);
    return pathLine([tip, [tip[0] + Math.cos(a) * l, tip[1] + Math.sin(a) * l]]);
  });
}

/** One limb from the frame to a tip, with side branches and twigs. */
function limb(from: Point, control: Point, tip: Point, widthFt: number, twigFt: number, random: () => number): { thick: string; thin: string[]; fine: string[]; ends: Point[] } {
  const thin: string[] = [];
  const ends: Point[] = [tip];
  const fine = twigs(tip, control, twigFt, random);
  for (const t of [0.45, 0.65, 0.82]) {
    const side = random() < 0.5 ? -1 : 1;
    const start = curvePoint(from, control, tip, t + (random() - 0.5) * 0.1);
    const angle = Math.atan2(tip[1] - start[1], tip[0] - start[0]) + side * (0.45 + random() * 0.35);
    const length = Math.hypot(tip[0] - start[0], tip[1] - start[1]) * 0.75 + twigFt * 0.8;
    const end: Point = [start[0] + Math.cos(angle) * length, start[1] + Math.sin(angle) * length];
    const bent: Point = [(start[0] + end[0]) / 2, (start[1] + end[1]) / 2 + length * 0.08];
    thin.push(pathCurve(start, bent, end));
    ends.push(end, bent);
    fine.push(...twigs(end, start, twigFt * 0.85, random));
  }
  return { thick: pathBlade(from, control, tip, widthFt), thin, fine, ends };
}

/** A tree: one trunk into the crown, limbs from it. @param reach how far limbs go: 1 to the crown's edge with all their twigs; less, and without them, where leaves hide them */
export function treeFrame(draw: Pen, hex: string, habit: Habit, crown: Crown, reach: number, random: () => number): Frame {
  const { footFt, heightFt, widthFt } = crown;
  const total = footFt + heightFt;
  const trunkFt = Math.max(0.12, Math.min(total * 0.045, widthFt * 0.09 + total * 0.008));
  const bearing = BEARING[habit] ?? PLAIN;
  const leader = habit === "vase" ? 0.12 : habit === "spreading" || habit === "rounded" || habit === "irregular" ? 0.45 : 0.85;
  const top = footFt + heightFt * leader;
  const sway = (random() - 0.5) * trunkFt * 0.8;
  const tips = crownPoints(crown, Math.max(widthFt, heightFt) / (habit === "columnar" || habit === "vase" || habit === "conical" ? 8 : 5.8), 0.8 * reach, random);
  const lines = tips.map((tip) => {
    const leaveY = Math.min(top, footFt * 0.92 + Math.max(0, tip[1] - footFt) * bearing.leave);
    const from: Point = [sway * (leaveY / total), leaveY];
    const control: Point = [from[0] + (tip[0] - from[0]) * (0.5 + (0.5 - bearing.leave) * 0.3), from[1] + (tip[1] - from[1]) * (0.5 + bearing.lift)];
    return limb(from, control, tip, trunkFt * 0.42, heightFt * 0.055, random);
  });
  if (reach === 1) {
    draw.line("stem", toneLight(hex, 0.12), trunkFt * 0.07, ...lines.flatMap((l) => l.fine));
    draw.line("stem", hex, trunkFt * 0.14, ...lines.flatMap((l) => l.thin));
  }
  draw.fill("stem", hex, ...lines.map((l) => l.thick));
  draw.fill("stem", hex, pathBlade([0, 0], [sway * 0.5, top * 0.5], [sway, top], trunkFt), pathBlade([0, 0], [0, trunkFt * 0.5], [0, trunkFt * 2.2], trunkFt * 1.7));
  return { ends: lines.flatMap((l) => l.ends) };
}

/** A shrub: stems from the ground, fanning into the crown. */
export function shrubFrame(draw: Pen, hex: string, habit: Habit, crown: Crown, reach: number, random: () => number): Frame {
  const { heightFt, widthFt } = crown;
  const stemFt = Math.max(0.02, Math.min(heightFt, widthFt) * 0.013);
  const tips = crownPoints(crown, Math.max(widthFt, heightFt) / 6.5, 0.84 * reach, random).filter(([, y]) => y > heightFt * 0.28);
  const arch = habit === "fountain" || habit === "weeping" ? 0.75 : habit === "vase" ? 0.3 : 0.45;
  const lines = tips.map((tip) => {
    const from: Point = [tip[0] * 0.3 + (random() - 0.5) * stemFt * 3, 0];
    const control: Point = [from[0] + (tip[0] - from[0]) * (arch === 0.75 ? 0.45 : 0.3), tip[1] * (arch + 0.25)];
    return limb(from, control, tip, stemFt, heightFt * 0.07, random);
  });
  if (reach === 1) {
    draw.line("stem", hex, stemFt * 0.4, ...lines.flatMap((l) => l.fine));
    draw.line("stem", hex, stemFt * 0.62, ...lines.flatMap((l) => l.thin));
  }
  draw.fill("stem", hex, ...lines.map((l) => l.thick));
  return { ends: lines.flatMap((l) => l.ends) };
}
