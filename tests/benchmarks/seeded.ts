// A seeded source of chance, so that a benchmark draws the same cases every time.

import { seededRandom } from "../../lib/ground/seeded";

export { seededRandom };

export const drawn = <T>(list: readonly T[], random: () => number): T => {
  const item = list[Math.floor(random() * list.length)];
  if (item === undefined) throw new RangeError("nothing to draw from");
  return item;
};
