// The degree days of the normals against published ones, as percentages of the published figure.
import { climateAt } from "../../lib/place/climate-at";
import { degreeDaysExpected } from "../../lib/place/degree-days";
import { harmonicSeries, MONTH_LENGTHS } from "../../lib/place/harmonic";
import { climateWarmed } from "../../lib/place/microclimate";
import { type PlaceYear, placeYear } from "../../lib/place/place-year";
import { stationsRead } from "./dataset";
import { NEW_YORK_1991_2020, NEW_YORK_CUMULATIVE } from "./new-york-degree-days";
import type { Comparison } from "./score";
import { type MonthlyDegreeDays, WRCC_MONTHLY } from "./wrcc-monthly";

const stations = stationsRead();
const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** A published figure is 100, what is computed its percentage. */
const percent = (name: string, published: number, computed: number): Comparison => ({
  name: `${name}, ${published} degree days`,
  observed: 100,
  computed: (100 * computed) / published,
});

const CENTRAL_PARK = stations.find((s) => s.id === "USW00094728");
const NO_FREEZE_DAYS = { lastFreezeDay: null, firstFreezeDay: null, lastFreezeLateDay: null, firstFreezeEarlyDay: null } as const;

/** New York's station fed with monthly means of one period or the other; its day-to-day scatter is that of the 1981–2010 table. */
export function newYorkYear(period: "1991–2020" | "1981–2010"): PlaceYear {
  if (!CENTRAL_PARK) throw new Error("The station is not in the table of normals");
  const { tminF, tmaxF, sdF, lat, lon, elevationFt } = CENTRAL_PARK;
  const means = period === "1991–2020" ? NEW_YORK_1991_2020 : { tminF, tmaxF };
  return placeYear({ lat, lon, elevationFt, ...means, sdF, rainIn: [], ...NO_FREEZE_DAYS, stations: [] });
}

/** NOAA's cumulative figures of the 1991–2020 normals, from 31 March on, against the method fed with monthly means of a period. */
export function newYorkComparisons(period: "1991–2020" | "1981–2010"): Comparison[] {
  const { degreeDayTotals } = newYorkYear(period);
  return NEW_YORK_CUMULATIVE.map(({ dayOfYear, degreeDays }) => percent(`day ${dayOfYear}`, degreeDays, degreeDayTotals[dayOfYear - 1] ?? 0));
}

function monthlySums(daily: readonly number[]): number[] {
  let day = 0;
  return MONTH_LENGTHS.map((length) => {
    const sum = daily.slice(day, day + length).reduce((total, dd) => total + dd, 0);
    day += length;
    return sum;
  });
}

/** Beyond the change of any station's mean temperature from one period to another. */
const MOST_SHIFT_F = 6;

/**
 * A station's months from the normals around it, as they are and brought to the published period. The published figures
 * average other years than 1981–2010 (some begin in 1903), and most of the twelve are not in the normals: the climate of the
 * point is moved by one number, a steady difference in temperature, until the year's total is the published one. What that
 * leaves to check is how the method spreads a year's degree days over its months.
 */
function stationMonths(row: MonthlyDegreeDays): { readonly asTheyAre: readonly number[]; readonly inPeriod: readonly number[]; readonly shiftF: number } {
  const answer = climateAt(stations, row);
  if (answer.kind === "fault") throw new Error(answer.message);
  const { climate } = answer;
  const total = (shiftF: number) => placeYear(climateWarmed(climate, shiftF)).degreeDayTotals.at(-1) ?? 0;
  let [low, high] = [-MOST_SHIFT_F, MOST_SHIFT_F];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (total(middle) < row.year) low = middle;
    else high = middle;
  }
  return { asTheyAre: monthlySums(placeYear(climate).degreeDays), inPeriod: monthlySums(placeYear(climateWarmed(climate, low)).degreeDays), shiftF: low };
}

const MEANS_BASE_F = 40;
/** Under so many degree days base 40 the month is winter: its mean cannot be told from them, and it has none base 50. */
const MEANS_LEAST = 60;
/** Steps to the means; each comes nearer by half or more. */
const MEANS_STEPS = 60;

/**
 * A station's months by the method, fed with the means of its own years: each month's mean temperature is the one that gives the published degree days
 * base 40 °F, the day-to-day scatter is that of the normals. As for New York, the same period stands on both sides. In midsummer, when no day is below 50,
 * base 50 follows from base 40 by subtraction and nothing is tested; in spring and fall it tests the spread about the mean and the course within the month.
 */
function stationMonthsOfPeriod({ monthsBase40, ...point }: MonthlyDegreeDays): readonly number[] {
  const answer = climateAt(stations, point);
  if (answer.kind === "fault") throw new Error(answer.message);
  const { tminF, tmaxF, sdF } = answer.climate;
  const scatter = harmonicSeries(sdF);
  const sums = (means: readonly number[], baseF: number) => monthlySums(harmonicSeries(means).map((mean, i) => degreeDaysExpected(mean, scatter[i] ?? 0, baseF)));
  let means = tminF.map((min, m) => (min + (tmaxF[m] ?? min)) / 2);
  for (let step = 0; step < MEANS_STEPS; step++) {
    const have = sums(means, MEANS_BASE_F);
    means = means.map((mean, m) => {
      const wanted = monthsBase40[m] ?? 0;
      return wanted < MEANS_LEAST ? mean : mean + (0.7 * (wanted - (have[m] ?? 0))) / (MONTH_LENGTHS[m] ?? 30);
    });
  }
  return sums(means, 50);
}

const LEAST_DEGREE_DAYS = 50;

export type StationMonth = {
  readonly station: string;
  readonly month: number;
  readonly shiftF: number;
  readonly asItIs: Comparison;
  readonly inPeriod: Comparison;
  readonly byMeans: Comparison;
};

/** Every month of the twelve stations in which more than 50 degree days were published. */
export function stationMonthComparisons(): StationMonth[] {
  return WRCC_MONTHLY.flatMap((row) => {
    const { asTheyAre, inPeriod, shiftF } = stationMonths(row);
    const byMeans = stationMonthsOfPeriod(row);
    return row.months.flatMap((published, m): StationMonth[] => {
      if (published <= LEAST_DEGREE_DAYS) return [];
      const name = `${row.name} ${MONTHS[m] ?? ""}`;
      return [
        {
          station: row.name,
          month: m + 1,
          shiftF,
          asItIs: percent(name, published, asTheyAre[m] ?? 0),
          inPeriod: percent(name, published, inPeriod[m] ?? 0),
          byMeans: percent(name, published, byMeans[m] ?? 0),
        },
      ];
    });
  });
}
