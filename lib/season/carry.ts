// A date of the reference climate carried to a place, by what drives it (model.md §3). Days are real numbers here, not wrapped.
import { dayLengthHours } from "../place/day-length";
import { dayReached, totalByDay } from "../place/degree-days";
import { DAYS } from "../place/harmonic";
import type { PlaceYear } from "../place/place-year";
import { REFERENCE_YEAR } from "../place/reference";
import type { Spring } from "../place/spring";

/** What scripts/calibrate-phenology.ts fits, on all sources together and with each left out in turn. */
export type CarryModel = {
  /** Until here warmth alone decides; from then on the calendar's share grows, to half on `halfHeatDay` and to all as far again. */
  readonly pureHeatUntilDay: number;
  readonly halfHeatDay: number;
  /** Leaves color and fall with the day on which the smoothed daily mean falls through this, °F … */
  readonly coolingF: number;
  /** … by this share of the difference of those days. */
  readonly coolingShare: number;
};

/**
 * 15 June and 1 August as model.md has them: the observed dates lie before or after, and choose nothing better.
 * Cooling share: half color and half leaf fall at Harvard Forest are met best at 0.3 and 0.7 of the difference of the cooling
 * days, both within eight days at 0.6, which makes fall a week later in northern Ohio than in central Massachusetts.
 */
export const CARRY_MODEL: CarryModel = { pureHeatUntilDay: 166, halfHeatDay: 213, coolingF: 52, coolingShare: 0.6 };

/** Warmth that a place never gathers: the event comes when nearly all of the year's warmth is there. */
const NEARLY_ALL = 0.97;
const HEAT_EARLIEST_DAYS = -80;
const HEAT_LATEST_DAYS = 60;
const LIGHT_DAYS = 21;
/** Leaves do not stay into January in the far south, nor color in July in the mountains (common practice, no source). */
const COOLING_MOST_DAYS = 45;

const clamp = (x: number, low: number, high: number): number => Math.min(high, Math.max(low, x));

/** The part of warmth, 0–1, in what sets the date of an event on this reference day. */
export function heatShare(referenceDay: number, model: CarryModel = CARRY_MODEL): number {
  return clamp(1 - (0.5 * (referenceDay - model.pureHeatUntilDay)) / (model.halfHeatDay - model.pureHeatUntilDay), 0, 1);
}

/**
 * The day on which a place has gathered the weighted warmth that the reference climate has gathered on `referenceDay`,
 * blended with the calendar past midsummer. A day before the coldest of the reference winter stays as it is.
 */
export function heatDay(referenceDay: number, place: PlaceYear, spring: Spring = "normal", model: CarryModel = CARRY_MODEL): number {
  const amount = totalByDay(REFERENCE_YEAR.warmthTotals.normal, referenceDay);
  if (amount <= 0) return referenceDay;
  const totals = place.warmthTotals[spring];
  const most = (totals.at(-1) ?? 0) * NEARLY_ALL;
  const reached = dayReached(totals, Math.min(amount, most)) ?? referenceDay;
  const share = heatShare(referenceDay, model);
  return referenceDay + clamp(share * (reached - referenceDay), HEAT_EARLIEST_DAYS, HEAT_LATEST_DAYS);
}

/**
 * The day on which a published count of degree days comes together at the reference climate: base 50 °F from 1 January, by
 * the modified (50/86) method, as the Ohio calendars count. Null when a year there does not bring so many.
 */
export function referenceDayOfDegreeDays(degreeDays: number): number | null {
  return dayReached(REFERENCE_YEAR.modifiedDegreeDayTotals, degreeDays);
}

/** Local warming against the reference's over a span of days: the factor on a heat-driven duration, 0.6–1.4. */
export function heatDurationFactor(referenceStart: number, start: number, spanDays: number, place: PlaceYear, model: CarryModel = CARRY_MODEL): number {
  const span = clamp(spanDays, 10, 30);
  const gain = (totals: readonly number[], day: number) => totalByDay(totals, clamp(day + span, 1, DAYS)) - totalByDay(totals, clamp(day, 1, DAYS));
  const there = gain(REFERENCE_YEAR.warmthTotals.normal, referenceStart);
  const here = gain(place.warmthTotals.normal, start);
  const factor = clamp(here > 0 ? there / here : 1.4, 0.6, 1.4);
  return 1 + (factor - 1) * heatShare(referenceStart, model);
}

/** The day on which the day length is what it is at the reference latitude on `referenceDay`, on the same side of midsummer; at most 21 days off. */
export function lightDay(referenceDay: number, place: PlaceYear): number {
  const there = REFERENCE_YEAR.climate.lat;
  const target = dayLengthHours(referenceDay, there);
  const falling = dayLengthHours(referenceDay + 1, there) < target;
  const excess = (day: number) => (dayLengthHours(day, place.climate.lat) - target) * (falling ? 1 : -1);
  // `excess` falls through zero at the day looked for; it is negative where that day is past.
  const step = excess(referenceDay) > 0 ? 1 : -1;
  let here = referenceDay;
  for (let walked = 0; walked < LIGHT_DAYS; walked++) {
    const next = here + step;
    const [a, b] = [excess(here), excess(next)];
    if (a === 0) return here;
    if (a > 0 !== b > 0) return here + (step * a) / (a - b);
    here = next;
  }
  return here;
}

/** The day in fall on which the smoothed daily mean falls through `thresholdF`; the coldest or warmest day where it never does. */
function coolDay(place: PlaceYear, thresholdF: number): number {
  const mean = (day: number) => place.meanF[(day - 1) % DAYS] ?? 0;
  for (let d = place.warmestDay; d < place.warmestDay + DAYS; d++) {
    if (mean(d) <= thresholdF) return d;
    if (mean(d + 1) <= thresholdF) return d + (mean(d) - thresholdF) / (mean(d) - mean(d + 1));
    if (((d - 1) % DAYS) + 1 === place.coldestDay) return d;
  }
  return place.warmestDay;
}

/** Days by which fall color and leaf drop come later here than at the reference climate (earlier when negative). */
export function coolingShift(place: PlaceYear, model: CarryModel = CARRY_MODEL): number {
  const shift = coolDay(place, model.coolingF) - coolDay(REFERENCE_YEAR, model.coolingF);
  return clamp(model.coolingShare * shift, -COOLING_MOST_DAYS, COOLING_MOST_DAYS);
}
