import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  dayReached,
  degreeDaysAverage,
  degreeDaysExpected,
  degreeDaysModified,
  degreeDaysModifiedExpected,
  degreeDaysSine,
  degreeDaysTriangle,
  runningTotals,
  totalByDay,
} from "./degree-days";

/** The mean of max(0, X − 50) over a fine grid of the normal distribution: brute force. */
function expectedByCounting(mean: number, sd: number): number {
  const STEPS = 20000;
  let sum = 0;
  let weight = 0;
  for (let i = 0; i < STEPS; i++) {
    const z = -6 + (12 * (i + 0.5)) / STEPS;
    const p = Math.exp((-z * z) / 2);
    sum += p * Math.max(0, mean + sd * z - 50);
    weight += p;
  }
  return sum / weight;
}

describe("expected degree days of a day", () => {
  it("agree with counting over the normal distribution", () => {
    for (const [mean, sd] of [
      [30, 11],
      [45, 9],
      [50, 8],
      [62, 7],
      [80, 5],
    ] as const)
      expect(degreeDaysExpected(mean, sd)).toBeCloseTo(expectedByCounting(mean, sd), 3);
  });

  it("are never below what the mean alone would give, and grow with mean and scatter", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100, noNaN: true }), fc.double({ min: 0.5, max: 15, noNaN: true }), (mean, sd) => {
        const here = degreeDaysExpected(mean, sd);
        expect(here).toBeGreaterThanOrEqual(Math.max(0, mean - 50) - 1e-6);
        expect(degreeDaysExpected(mean + 1, sd)).toBeGreaterThanOrEqual(here - 1e-6);
        expect(degreeDaysExpected(mean, sd + 1)).toBeGreaterThanOrEqual(here - 1e-6);
      }),
    );
  });

  it("count warm days in a cool March that its mean would leave out", () => {
    expect(degreeDaysAverage(48, 28, 50)).toBe(0);
    expect(degreeDaysExpected(38, 10)).toBeGreaterThan(0.5);
  });

  it("come to the mean above the base where every day is warm", () => {
    expect(degreeDaysExpected(75, 5)).toBeCloseTo(25, 4);
    expect(degreeDaysExpected(75, 0)).toBe(25);
  });

  it("are more by the modified method than by the average in spring", () => {
    expect(degreeDaysModifiedExpected(52, 32, 9)).toBeGreaterThan(2 * degreeDaysExpected(42, 9));
  });
});

describe("methods of counting a single day", () => {
  it("agree when the whole day lies between the thresholds", () => {
    for (const count of [degreeDaysAverage(80, 60, 50), degreeDaysModified(80, 60), degreeDaysSine(80, 60, 50, 86), degreeDaysTriangle(80, 60, 50, 86)])
      expect(count).toBeCloseTo(20, 9);
  });

  it("give nothing when the day stays below the base", () => {
    for (const count of [degreeDaysAverage(48, 30, 50), degreeDaysModified(48, 30), degreeDaysSine(48, 30, 50), degreeDaysTriangle(48, 30, 50)]) expect(count).toBe(0);
  });

  it("order average below triangle below sine on a day across the base", () => {
    const [average, triangle, sine] = [degreeDaysAverage(60, 36, 50), degreeDaysTriangle(60, 36, 50), degreeDaysSine(60, 36, 50)];
    expect(average).toBeLessThan(triangle);
    expect(triangle).toBeLessThan(sine);
  });
});

describe("running totals", () => {
  it("give back the day they were asked for", () => {
    const totals = runningTotals(Array.from({ length: 365 }, (_, i) => 1 + Math.sin(i / 60) ** 2));
    fc.assert(
      fc.property(fc.double({ min: 1.01, max: 364, noNaN: true }), (day) => {
        expect(dayReached(totals, totalByDay(totals, day))).toBeCloseTo(day, 6);
      }),
    );
  });

  it("say so when an amount is never reached", () => {
    expect(dayReached(runningTotals([1, 1, 1]), 4)).toBeNull();
  });

  it("have reached nothing on 1 January", () => {
    expect(dayReached(runningTotals([5, 5]), 0)).toBe(1);
  });
});
