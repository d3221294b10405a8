import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { DAYS, harmonicSeries, monthlyMeans } from "./harmonic";

const WOOSTER_MEANS = [26.4, 29, 37.7, 49.3, 59.1, 68, 71.7, 70.1, 62.7, 51.4, 41.4, 30.6];

describe("a smooth year through twelve monthly means", () => {
  it("keeps every month's mean, whatever the twelve are", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -60, max: 130, noNaN: true }), { minLength: 12, maxLength: 12 }), (months) => {
        for (const [m, mean] of monthlyMeans(harmonicSeries(months)).entries()) expect(mean).toBeCloseTo(months[m] ?? 0, 6);
      }),
    );
  });

  it("has 365 days and joins December to January without a step", () => {
    const daily = harmonicSeries(WOOSTER_MEANS);
    expect(daily).toHaveLength(DAYS);
    expect(Math.abs((daily[0] ?? 0) - (daily[364] ?? 0))).toBeLessThan(0.5);
  });

  it("is flat where the months are", () => {
    for (const t of harmonicSeries(Array.from({ length: 12 }, () => 55))) expect(t).toBeCloseTo(55, 9);
  });

  it("goes beyond the warmest month's mean, as the warmest day does", () => {
    expect(Math.max(...harmonicSeries(WOOSTER_MEANS))).toBeGreaterThan(71.7);
  });
});
