// Degree days: what a day's warmth adds to development. Base 50 °F in the landscape trade.

export const BASE_F = 50;
/** Upper threshold of the modified method. */
export const CEILING_F = 86;

/** Standard normal density. */
const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/** Standard normal distribution: Abramowitz and Stegun (1964), Handbook of Mathematical Functions, formula 26.2.17, error under 7.5e-8. */
function distribution(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail = density(z) * t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z >= 0 ? 1 - tail : tail;
}

/**
 * Degree days a day adds on the average of many years: E[max(0, X − base)] for X ~ Normal(mean, sd) (model.md §1).
 * Counting from the normal mean alone would give nothing in a March that has its warm days.
 */
export function degreeDaysExpected(meanF: number, sdF: number, baseF: number = BASE_F): number {
  const above = meanF - baseF;
  if (sdF <= 0) return Math.max(0, above);
  const z = above / sdF;
  return Math.max(0, above * distribution(z) + sdF * density(z));
}

/** The average method: (max + min) / 2 − base, not below 0. Any unit, all arguments in the same. */
export function degreeDaysAverage(max: number, min: number, base: number): number {
  return Math.max(0, (max + min) / 2 - base);
}

/** The modified (50/86) method: the maximum is cut to the ceiling and both to no less than the base before averaging. */
export function degreeDaysModified(max: number, min: number, base: number = BASE_F, ceiling: number = CEILING_F): number {
  const cut = (x: number) => Math.min(ceiling, Math.max(base, x));
  return (cut(max) + cut(min)) / 2 - base;
}

/**
 * Degree days a day adds by the modified (50/86) method on the average of many years: minimum and maximum each Normal.
 * Ohio's calendars of degree days at bloom count this way, and early in spring it runs far ahead of the average method:
 * a day of 61 and 30 °F adds 5.5 by the one and nothing by the other.
 */
export function degreeDaysModifiedExpected(maxF: number, minF: number, sdF: number): number {
  return (degreeDaysExpected(maxF, sdF) - degreeDaysExpected(maxF, sdF, CEILING_F) + degreeDaysExpected(minF, sdF)) / 2;
}

/** Area above `threshold` of one day's sine between min and max: Baskerville and Emin (1969), Ecology 50:514–517. */
function sineAbove(max: number, min: number, threshold: number): number {
  const mean = (max + min) / 2;
  if (min >= threshold) return mean - threshold;
  if (max <= threshold) return 0;
  const amplitude = (max - min) / 2;
  const crossing = Math.asin((threshold - mean) / amplitude);
  return ((mean - threshold) * (Math.PI / 2 - crossing) + amplitude * Math.cos(crossing)) / Math.PI;
}

/** Area above `threshold` of one day's triangle between min and max: Lindsey and Newman (1956), Ecology 37:812–823. */
function triangleAbove(max: number, min: number, threshold: number): number {
  if (min >= threshold) return (max + min) / 2 - threshold;
  if (max <= threshold) return 0;
  return (max - threshold) ** 2 / (2 * (max - min));
}

/** Single sine with a horizontal cutoff: what is above the upper threshold counts no further. */
export function degreeDaysSine(max: number, min: number, base: number, upper: number = Infinity): number {
  return sineAbove(max, min, base) - (upper < max ? sineAbove(max, min, upper) : 0);
}

/** Single triangle with a horizontal cutoff. */
export function degreeDaysTriangle(max: number, min: number, base: number, upper: number = Infinity): number {
  return triangleAbove(max, min, base) - (upper < max ? triangleAbove(max, min, upper) : 0);
}

/** Running totals of a daily series: entry d−1 is what has come together by the end of day d. */
export function runningTotals(daily: readonly number[]): readonly number[] {
  let total = 0;
  return daily.map((x) => (total += x));
}

/**
 * The day, to a fraction, on which a running total reaches `amount`; null when the year's total stays below it.
 * Day 1.0 is the end of 31 December, so that nothing is reached at day 1.
 */
export function dayReached(totals: readonly number[], amount: number): number | null {
  if (amount <= 0) return 1;
  const at = totals.findIndex((total) => total >= amount);
  if (at < 0) return null;
  const before = totals[at - 1] ?? 0;
  const step = (totals[at] ?? 0) - before;
  return at + 1 + (step > 0 ? (amount - before) / step : 0);
}

/** A running total at the start of a day of year that need not be whole: the inverse of `dayReached`. */
export function totalByDay(totals: readonly number[], dayOfYear: number): number {
  const whole = Math.floor(dayOfYear);
  const before = totals[whole - 2] ?? 0;
  const after = totals[Math.min(whole, totals.length) - 1] ?? before;
  return before + (after - before) * (dayOfYear - whole);
}
