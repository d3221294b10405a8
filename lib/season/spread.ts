// How sure a date is: the scatter of the years, of the model, and of the words the dataset is written in, as one sd in days.
import type { PlaceYear } from "../place/place-year";
import type { Drive } from "../plants/vocabulary";
import { heatDay, heatShare } from "./carry";

/** "Early April" is ten days wide; the sd of a uniform spread over ten days. */
const THIRD_DAYS = 2.9;
/** Scatter of the years where temperature of the season decides little (Harvard Forest: fall color, half of p90 − p10 over 1.28). */
const COOLING_YEARS_DAYS = 6;
const LIGHT_YEARS_DAYS = 5;
const CALENDAR_YEARS_DAYS = 5;
/** Carrying first-flower dates between places erred by a third of the shift (model.md §3: 4.8 of 14.5 days); as sd. */
const MODEL_SHARE = 0.4;
const MODEL_MOST_DAYS = 10;

/** Half of the days between a mild and a hard spring. */
function springDays(referenceDay: number, place: PlaceYear): number {
  return Math.max(0, heatDay(referenceDay, place, "hard") - heatDay(referenceDay, place, "mild")) / 2;
}

function yearsDays(drive: Drive, referenceDay: number, place: PlaceYear): number {
  switch (drive) {
    case "heat": {
      const share = heatShare(referenceDay);
      return Math.hypot(springDays(referenceDay, place), (1 - share) * CALENDAR_YEARS_DAYS);
    }
    case "light":
      return LIGHT_YEARS_DAYS;
    case "cooling":
    case "dormancy":
      return COOLING_YEARS_DAYS;
    case "always":
      return 0;
  }
}

/** ± days, one standard deviation, of a date carried by `drive` from `referenceDay` over `shiftDays`. */
export function spreadDays(drive: Drive, referenceDay: number, shiftDays: number, place: PlaceYear): number {
  if (drive === "always") return 0;
  const model = Math.min(MODEL_MOST_DAYS, MODEL_SHARE * Math.abs(shiftDays));
  return Math.round(Math.hypot(yearsDays(drive, referenceDay, place), model, THIRD_DAYS));
}
