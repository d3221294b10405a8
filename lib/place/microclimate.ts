// A climate made warmer or colder: by the site, by the spring, by a warmer world. All are pure changes of a Climate.
import type { Climate } from "./climate";
import { freezeDayMoved } from "./freeze-day";
import { harmonicSeries } from "./harmonic";
import { SEASON_SD_SHARE, SPRING_SIGN, type Spring } from "./spring";

export const MICROCLIMATES = ["open", "south wall", "frost pocket", "exposed", "city court"] as const;
export type Microclimate = (typeof MICROCLIMATES)[number];

export type SiteShift = {
  readonly minimaF: number;
  readonly maximaF: number;
  /** Half zones by which the winter low moves. */
  readonly zoneHalves: number;
  readonly words: string;
  readonly source: "practice";
};

/** What the trade allows for a site against its ZIP: common practice, no source. */
export const SITE_SHIFTS: Readonly<Record<Microclimate, SiteShift>> = {
  open: { minimaF: 0, maximaF: 0, zoneHalves: 0, words: "As the ZIP: open ground, neither sheltered nor low.", source: "practice" },
  "south wall": { minimaF: 2, maximaF: 4, zoneHalves: 1, words: "At the foot of a south or southwest wall: nights 2 °F and days 4 °F warmer, half a zone.", source: "practice" },
  "frost pocket": { minimaF: -4, maximaF: 0, zoneHalves: -1, words: "A hollow where cold air gathers: nights 4 °F colder, half a zone.", source: "practice" },
  exposed: {
    minimaF: -1,
    maximaF: -2,
    zoneHalves: -1,
    words: "A windy hilltop, shore or roof: nights 1 °F and days 2 °F colder, half a zone for drying wind.",
    source: "practice",
  },
  "city court": { minimaF: 4, maximaF: 2, zoneHalves: 1, words: "A walled court in the city: nights 4 °F and days 2 °F warmer, half a zone.", source: "practice" },
};

export const WARMINGS_F = [0, 2, 4] as const;
export type WarmingF = (typeof WARMINGS_F)[number];

const JANUARY_TO_JUNE = 6;

/** A climate with monthly shifts added; freeze dates move to where the shifted minima are what they were. */
function climateShifted(climate: Climate, minimaF: readonly number[], maximaF: readonly number[]): Climate {
  const dailyMin = harmonicSeries(climate.tminF);
  const shift = harmonicSeries(minimaF);
  const moved = (day: number | null, limb: "rising" | "falling") => (day === null ? null : Math.min(365, Math.max(1, Math.round(freezeDayMoved(dailyMin, day, shift, limb)))));
  const [lastFreezeDay, firstFreezeDay] = [moved(climate.lastFreezeDay, "rising"), moved(climate.firstFreezeDay, "falling")];
  const crossed = lastFreezeDay !== null && firstFreezeDay !== null && lastFreezeDay >= firstFreezeDay;
  return {
    ...climate,
    tminF: climate.tminF.map((t, m) => t + (minimaF[m] ?? 0)),
    tmaxF: climate.tmaxF.map((t, m) => t + (maximaF[m] ?? 0)),
    lastFreezeDay: crossed ? null : lastFreezeDay,
    firstFreezeDay: crossed ? null : firstFreezeDay,
    lastFreezeLateDay: crossed ? null : moved(climate.lastFreezeLateDay, "rising"),
    firstFreezeEarlyDay: crossed ? null : moved(climate.firstFreezeEarlyDay, "falling"),
  };
}

const allYear = (degreesF: number): readonly number[] => Array.from({ length: 12 }, () => degreesF);

/** The climate of a site within its ZIP, by SITE_SHIFTS. */
export function climateOfSite(climate: Climate, site: Microclimate): Climate {
  const { minimaF, maximaF } = SITE_SHIFTS[site];
  return minimaF === 0 && maximaF === 0 ? climate : climateShifted(climate, allYear(minimaF), allYear(maximaF));
}

/** Every month warmer by so many °F. */
export function climateWarmed(climate: Climate, degreesF: number): Climate {
  return degreesF === 0 ? climate : climateShifted(climate, allYear(degreesF), allYear(degreesF));
}

/** January to June warmer or colder by one standard deviation of a season's mean (spring.ts). */
export function climateOfSpring(climate: Climate, spring: Spring): Climate {
  if (SPRING_SIGN[spring] === 0) return climate;
  const shift = climate.sdF.map((sd, m) => (m < JANUARY_TO_JUNE ? SPRING_SIGN[spring] * SEASON_SD_SHARE * sd : 0));
  return climateShifted(climate, shift, shift);
}
