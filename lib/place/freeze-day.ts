// Freeze dates carried from a station to a place that is warmer or colder.
import { DAYS } from "./harmonic";

const LONGEST_WALK_DAYS = 100;

/**
 * A freeze date moved to where the minima differ by `shiftF`: the day on which the moved minima are what they are at the
 * station on its own date. Held to the coldest or warmest day of the year when no such day comes.
 * @param dailyMinF the station's smoothed daily minima, 365
 * @param day day of year of the date at the station; may lie outside 1–365 (see StationFreeze)
 * @param shiftF daily shift of the minima, °F, 365
 * @param limb the last freeze lies where minima rise, the first where they fall
 */
export function freezeDayMoved(dailyMinF: readonly number[], day: number, shiftF: readonly number[], limb: "rising" | "falling"): number {
  const at = (series: readonly number[], d: number): number => {
    const low = Math.floor(d);
    const value = (n: number) => series[(((n - 1) % DAYS) + DAYS) % DAYS] ?? 0;
    return value(low) + (value(low + 1) - value(low)) * (d - low);
  };
  const moved = (d: number) => at(dailyMinF, d) + at(shiftF, d);
  const level = at(dailyMinF, day);
  const colder = moved(day) < level;
  // Colder minima put the last freeze later and the first earlier.
  const step = colder === (limb === "rising") ? 1 : -1;
  let here = day;
  for (let walked = 0; walked < LONGEST_WALK_DAYS; walked++) {
    const next = here + step;
    if (colder ? moved(next) >= level : moved(next) <= level) {
      const change = moved(next) - moved(here);
      return change === 0 ? next : here + (step * (level - moved(here))) / change;
    }
    if (colder ? moved(next) < moved(here) : moved(next) > moved(here)) return here;
    here = next;
  }
  return here;
}
