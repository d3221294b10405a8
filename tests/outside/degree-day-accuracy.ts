// The degree days of the normals against published ones, as percentages of the published figure.
import { climateAt } from "../../lib/place/climate-at";
import { MONTH_LENGTHS } from "../../lib/place/harmonic";
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

function monthlySums(year: PlaceYear): number[] {
  let day = 0;
  return MONTH_LENGTHS.map((length) => {
    const sum = year.degreeDays.slice(day, day + length).reduce((total, dd) => total + dd, 0);
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
  return { asTheyAre: monthlySums(placeYear(climate)), inPeriod: monthlySums(placeYear(climateWarmed(climate, low))), shiftF: low };
}

const LEAST_DEGREE_DAYS = 50;

export type StationMonth = { readonly station: string; readonly month: number; readonly shiftF: number; readonly asItIs: Comparison; readonly inPeriod: Comparison };

/** Every month of the twelve stations in which more than 50 degree days were published. */
export function stationMonthComparisons(): StationMonth[] {
  return WRCC_MONTHLY.flatMap((row) => {
    const { asTheyAre, inPeriod, shiftF } = stationMonths(row);
    return row.months.flatMap((published, m): StationMonth[] => {
      if (published <= LEAST_DEGREE_DAYS) return [];
      const name = `${row.name} ${MONTHS[m] ?? ""}`;
      return [{ station: row.name, month: m + 1, shiftF, asItIs: percent(name, published, asTheyAre[m] ?? 0), inPeriod: percent(name, published, inPeriod[m] ?? 0) }];
    });
  });
}
