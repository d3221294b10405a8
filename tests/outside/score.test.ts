import { describe, expect, it } from "vitest";
import { rankCorrelation, scoreOf } from "./score";

const pairs = (rows: readonly (readonly [number, number])[]) => rows.map(([observed, computed], i) => ({ name: `${i}`, observed, computed }));

describe("scores", () => {
  it("count a date too late as a positive error", () => {
    expect(
      scoreOf(
        pairs([
          [100, 110],
          [100, 96],
        ]),
        5,
      ),
    ).toMatchObject({ n: 2, meanError: 3, meanAbsoluteError: 7, shareWithin: 0.5 });
  });

  it("give 1 for the same order, −1 for the reverse, and share ranks among ties", () => {
    expect(
      rankCorrelation(
        pairs([
          [1, 10],
          [2, 20],
          [3, 30],
        ]),
      ),
    ).toBe(1);
    expect(
      rankCorrelation(
        pairs([
          [1, 30],
          [2, 20],
          [3, 10],
        ]),
      ),
    ).toBe(-1);
    expect(
      rankCorrelation(
        pairs([
          [1, 10],
          [1, 20],
          [3, 30],
        ]),
      ),
    ).toBeCloseTo(0.866, 3);
  });
});
