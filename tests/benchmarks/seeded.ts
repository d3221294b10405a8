// A seeded source of chance, so that a benchmark draws the same cases every time.

/** Uniform numbers in [0, 1) from a seed (mulberry32, public domain). */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export const drawn = <T>(list: readonly T[], random: () => number): T => {
  const item = list[Math.floor(random() * list.length)];
  if (item === undefined) throw new RangeError("nothing to draw from");
  return item;
};
