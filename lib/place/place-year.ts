// The year of a place, day by day: everything that dates are computed from. Made once a climate and kept.
import type { Climate } from "./climate";
import { dayLengthHours } from "./day-length";
import { degreeDaysExpected, degreeDaysModifiedExpected, runningTotals } from "./degree-days";
import { DAYS, harmonicSeries } from "./harmonic";
import { SEASON_SD_SHARE, SPRING_SIGN, type Spring } from "./spring";

/** Daily arrays hold 365 values, 1 January first. */
export type PlaceYear = {
  readonly climate: Climate;
  readonly minF: readonly number[];
  readonly maxF: readonly number[];
  readonly meanF: readonly number[];
  readonly sdF: readonly number[];
  readonly dayLengthH: readonly number[];
  /** Expected degree days base 50 °F, and their running total from 1 January. */
  readonly degreeDays: readonly number[];
  readonly degreeDayTotals: readonly number[];
  /** The same by the modified (50/86) method, as the published calendars of degree days at bloom count. */
  readonly modifiedDegreeDayTotals: readonly number[];
  /** Running total of degree days weighted by (day length ÷ 12 h)², from the coldest day on: what spring events wait for; in a mild, a normal and a hard spring. */
  readonly warmthTotals: Readonly<Record<Spring, readonly number[]>>;
  /** Day of year of the lowest smoothed mean. */
  readonly coldestDay: number;
  readonly warmestDay: number;
  /** Why dates cannot be computed here, in plain words; null where they can. */
  readonly noBasis: string | null;
};

/** Köppen's limit of the tropics: 18 °C in the coldest month (Kottek and others 2006, Meteorologische Zeitschrift 15:259–263). */
const TROPICAL_MONTH_F = 64.4;
const TROPICAL_LATITUDE = 25;

function basisMissing(climate: Climate, monthlyMeanF: readonly number[]): string | null {
  if (climate.lat < 0) return "South of the equator the seasons are turned about: reference months are shown.";
  if (climate.lat < TROPICAL_LATITUDE) return `South of ${TROPICAL_LATITUDE}° N there is no winter to count warmth from: reference months are shown.`;
  if (Math.min(...monthlyMeanF) >= TROPICAL_MONTH_F) return "No month here is cool enough to count warmth from: reference months are shown.";
  return null;
}

/** Weight of a day's warmth: (day length ÷ 12 h)² (model.md §3). */
const lightWeight = (hours: number): number => (hours / 12) ** 2;

/** The year of a climate. Pure and worth keeping: some tens of kilobytes, a millisecond. */
export function placeYear(climate: Climate): PlaceYear {
  const minF = harmonicSeries(climate.tminF);
  const maxF = harmonicSeries(climate.tmaxF);
  const meanF = minF.map((min, i) => (min + (maxF[i] ?? min)) / 2);
  const sdF = harmonicSeries(climate.sdF);
  const dayLengthH = Array.from({ length: DAYS }, (_, i) => dayLengthHours(i + 1, climate.lat));
  const degreeDays = meanF.map((mean, i) => degreeDaysExpected(mean, sdF[i] ?? 0));
  const coldestDay = meanF.indexOf(Math.min(...meanF)) + 1;
  // Before midwinter is past, buds rest: in mild winters the count would otherwise run on from the old year.
  const from = coldestDay < 60 ? coldestDay : 1;
  const warmth = (spring: Spring): readonly number[] =>
    runningTotals(
      meanF.map((mean, i) => (i + 1 < from ? 0 : degreeDaysExpected(mean + SPRING_SIGN[spring] * SEASON_SD_SHARE * (sdF[i] ?? 0), sdF[i] ?? 0) * lightWeight(dayLengthH[i] ?? 12))),
    );
  const monthlyMeanF = climate.tminF.map((min, m) => (min + (climate.tmaxF[m] ?? min)) / 2);
  return {
    climate,
    minF,
    maxF,
    meanF,
    sdF,
    dayLengthH,
    degreeDays,
    degreeDayTotals: runningTotals(degreeDays),
    modifiedDegreeDayTotals: runningTotals(minF.map((min, i) => degreeDaysModifiedExpected(maxF[i] ?? min, min, sdF[i] ?? 0))),
    warmthTotals: { mild: warmth("mild"), normal: warmth("normal"), hard: warmth("hard") },
    coldestDay,
    warmestDay: meanF.indexOf(Math.max(...meanF)) + 1,
    noBasis: basisMissing(climate, monthlyMeanF),
  };
}
