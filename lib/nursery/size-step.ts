// How many steps of the trade's size scales one size is above another: #3 to #5 is one up, 2 in caliper to 3 in two.
import type { LineSize } from "./size-read";

/** Steps as lists and the nursery stock standard grade them (from memory; common practice, no source). Containers in trade gallons, the rest in inches. */
const CONTAINERS = [0.03, 0.125, 0.25, 0.5, 1, 2, 3, 5, 7, 10, 15, 20, 25, 30, 45, 65, 100];
const CALIPERS = [0.5, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8];
const LENGTHS = [6, 9, 12, 15, 18, 24, 30, 36, 48, 60, 72, 84, 96, 120, 144, 168, 192, 216, 240];
const BULBS = [4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 24, 26];

/** Place of a figure on a scale: the step nearest to it in proportion. */
function scalePlace(scale: readonly number[], value: number): number {
  let best = 0;
  for (const [i, step] of scale.entries()) if (Math.abs(Math.log(step / value)) < Math.abs(Math.log((scale[best] ?? 1) / value))) best = i;
  return best;
}

const steps = (scale: readonly number[], wanted: number, offered: number): number => scalePlace(scale, offered) - scalePlace(scale, wanted);

/**
 * Steps from the wanted size up to the offered one: 0 the same, negative smaller. Null where the two cannot be compared: another root
 * (a ball for a container), or no figure in common. A size that names no root is compared with any.
 */
export function sizeSteps(wanted: LineSize, offered: LineSize): number | null {
  if (wanted.root !== "unknown" && offered.root !== "unknown" && wanted.root !== offered.root) return null;
  if (wanted.caliperIn && offered.caliperIn) return steps(CALIPERS, wanted.caliperIn[0], offered.caliperIn[0]);
  if (wanted.caliperIn !== null && offered.containerGal === null) return null;
  if (wanted.containerGal !== null && offered.containerGal !== null) return steps(CONTAINERS, wanted.containerGal, offered.containerGal);
  if (wanted.heightIn && offered.heightIn) return steps(LENGTHS, wanted.heightIn[0], offered.heightIn[0]);
  if (wanted.spreadIn && offered.spreadIn) return steps(LENGTHS, wanted.spreadIn[0], offered.spreadIn[0]);
  if (wanted.bulbCm && offered.bulbCm) return steps(BULBS, wanted.bulbCm[0], offered.bulbCm[0]);
  const silent = ![wanted, offered].some((size) => size.caliperIn ?? size.heightIn ?? size.spreadIn ?? size.bulbCm ?? size.containerGal);
  return silent && wanted.root === offered.root ? 0 : null;
}
