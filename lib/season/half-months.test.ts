import { describe, expect, it } from "vitest";
import { HALF_MONTHS, halfMonthRuns } from "./half-months";

describe("half-months", () => {
  it("cover the year once, in order", () => {
    expect(HALF_MONTHS).toHaveLength(24);
    const days = HALF_MONTHS.flatMap((h) => Array.from({ length: h.endDay - h.startDay + 1 }, (_, i) => h.startDay + i));
    expect(days).toEqual(Array.from({ length: 365 }, (_, i) => i + 1));
  });
  it("are told in words, whole months as months, runs over New Year as one", () => {
    expect(halfMonthRuns([9])).toEqual(["late May"]);
    expect(halfMonthRuns([8, 9])).toEqual(["May"]);
    expect(halfMonthRuns([4, 5, 6])).toEqual(["early March through early April"]);
    expect(halfMonthRuns([22, 23, 0, 1])).toEqual(["early December through late January"]);
    expect(halfMonthRuns([1, 12])).toEqual(["late January", "early July"]);
    expect(halfMonthRuns(HALF_MONTHS.map((h) => h.index))).toEqual(["the whole year"]);
    expect(halfMonthRuns([])).toEqual([]);
  });
});
