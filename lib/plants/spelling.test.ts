import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { editDistance, latinFold, letterSet, lettersApart, prefixDistance } from "./spelling";

/** The whole table, nothing cut short: the slow way to the same number. */
function slowDistance(a: string, b: string): number {
  const d = Array.from({ length: a.length + 1 }, (_, i) => Array.from({ length: b.length + 1 }, (_, j) => (i === 0 ? j : j === 0 ? i : 0)));
  const cell = (i: number, j: number) => d[i]?.[j] ?? 0;
  for (let i = 1; i <= a.length; i++)
    for (let j = 1; j <= b.length; j++) {
      let least = Math.min(cell(i - 1, j) + 1, cell(i, j - 1) + 1, cell(i - 1, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) least = Math.min(least, cell(i - 2, j - 2) + 1);
      (d[i] ?? [])[j] = least;
    }
  return cell(a.length, b.length);
}

const word = fc.string({ unit: fc.constantFrom("a", "b", "c", "d"), maxLength: 8 });

describe("edit distance", () => {
  it("counts dropped, added, changed and swapped letters", () => {
    expect(editDistance("hydrangea", "hydrangea", 3)).toBe(0);
    expect(editDistance("hydrngea", "hydrangea", 3)).toBe(1);
    expect(editDistance("hydrnagea", "hydrangea", 3)).toBe(1);
    expect(editDistance("viburmun", "viburnum", 3)).toBe(2);
  });

  it("agrees with the whole table, up to its limit", () => {
    fc.assert(
      fc.property(word, word, fc.integer({ min: 0, max: 4 }), (a, b, most) => {
        expect(editDistance(a, b, most)).toBe(Math.min(slowDistance(a, b), most + 1));
      }),
    );
  });

  it("never exceeds half the letters that differ being rounded up: the quick rejection loses nothing", () => {
    fc.assert(
      fc.property(word, word, (a, b) => {
        expect(lettersApart(letterSet(a), letterSet(b))).toBeLessThanOrEqual(2 * slowDistance(a, b));
      }),
    );
  });

  it("compares an unfinished word with the beginnings of a word", () => {
    expect(prefixDistance("hydra", "hydrangea", 1)).toBe(0);
    expect(prefixDistance("hyrdan", "hydrangea", 1)).toBe(1);
    expect(prefixDistance("xyz", "hydrangea", 1)).toBe(2);
  });
});

describe("the fold of Latin spellings", () => {
  it("is one for the genders and spellings of a word", () => {
    for (const [a, b] of [
      ["alatus", "alata"],
      ["sieboldii", "sieboldi"],
      ["pensylvanica", "pennsylvanica"],
      ["coerulea", "caerulea"],
      ["grandiflorum", "grandiflorus"],
    ] as const)
      expect(latinFold(a)).toBe(latinFold(b));
  });

  it("differs for different words", () => {
    for (const [a, b] of [
      ["saccharum", "saccharinum"],
      ["alba", "rubra"],
      ["virginiana", "virginica"],
      ["grandiflora", "grandifolia"],
    ] as const)
      expect(latinFold(a)).not.toBe(latinFold(b));
  });
});
