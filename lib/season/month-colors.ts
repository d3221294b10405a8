// What of a plant is in color in which month, by kind and family of color: what a designer filters by.
import { type ColorFamily, colorFamily } from "../plants/color-family";
import { MONTH_STARTS } from "../plants/thirds";
import type { FeatureKind } from "../plants/vocabulary";
import type { SeasonWindow } from "./window";

/** Twelve bits, January lowest. */
export type MonthBits = number;
export type MonthColor = { readonly kind: FeatureKind; readonly family: ColorFamily; readonly months: MonthBits };

/** A window must hold so many days of a month to count in it (or half of its own, when it is shorter). */
const COUNTS_DAYS = 7;
/** December to February: evergreens that bronze show their winter color. */
const WINTER: MonthBits = 0b1000_0000_0011;

/** Days of a span (start ≤ end, unwrapped: up to day 730) that fall in a month of either year. */
function daysInMonth(start: number, end: number, month: number): number {
  const first = (MONTH_STARTS[month] ?? 0) + 1;
  const last = MONTH_STARTS[month + 1] ?? 365;
  const overlap = (shift: number) => Math.max(0, Math.min(end, last + shift) - Math.max(start, first + shift) + 1);
  return overlap(0) + overlap(365);
}

function monthsOf(start: number, end: number): MonthBits {
  const wanted = Math.min(COUNTS_DAYS, Math.ceil((end - start + 1) / 2));
  let bits = 0;
  for (let month = 0; month < 12; month++) if (daysInMonth(start, end, month) >= wanted) bits |= 1 << month;
  return bits;
}

/** Colors of a window by month: a color that turns shows the first in its first half and the second in the rest. */
function windowColors(window: SeasonWindow): MonthColor[] {
  const { kind, feature, startDay } = window;
  const end = window.endDay < startDay ? window.endDay + 365 : window.endDay;
  const one = (color: Parameters<typeof colorFamily>[0], months: MonthBits): MonthColor => ({ kind, family: colorFamily(color), months });
  if (feature.fade) {
    const middle = Math.floor((startDay + end) / 2);
    return [one(feature.color, monthsOf(startDay, middle)), one(feature.fade, monthsOf(middle, end))];
  }
  const months = monthsOf(startDay, end);
  return feature.winter ? [one(feature.color, months & ~WINTER), one(feature.winter, months & WINTER)] : [one(feature.color, months)];
}

/** Every kind and color of a plant's year with the months it shows in. */
export function monthColors(windows: readonly SeasonWindow[]): MonthColor[] {
  return windows.flatMap(windowColors);
}
