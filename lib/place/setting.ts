// What a job says of its site beyond the ZIP's normals: the spot itself, a warmer climate, the kind of spring to plan for.
import type { Climate } from "./climate";
import { climateOfSite, climateOfSpring, climateWarmed, type Microclimate, SITE_SHIFTS, type WarmingF } from "./microclimate";
import type { Spring } from "./spring";
import { type ZoneNumber, zoneShifted } from "./zone";

export type PlaceSetting = {
  readonly microclimate: Microclimate;
  /** Every month so many °F warmer than the normals. */
  readonly warmingF: WarmingF;
  readonly spring: Spring;
};

/** Open ground, the normals' climate, a spring as springs go. */
export const NORMAL_SETTING: PlaceSetting = { microclimate: "open", warmingF: 0, spring: "normal" };

export function settingIsNormal(setting: PlaceSetting): boolean {
  return setting.microclimate === NORMAL_SETTING.microclimate && setting.warmingF === 0 && setting.spring === "normal";
}

/** The climate as the setting has it; the climate itself where the setting is normal. */
export function climateOfSetting(climate: Climate, setting: PlaceSetting): Climate {
  return climateOfSpring(climateWarmed(climateOfSite(climate, setting.microclimate), setting.warmingF), setting.spring);
}

/**
 * The zone of the site within a ZIP's zone, by SITE_SHIFTS. A warmer climate leaves it: hardiness goes by the map of the
 * years that were, and 4 °F are less than the 5 of a half zone.
 */
export function zoneOfSetting(zone: ZoneNumber, setting: PlaceSetting): ZoneNumber {
  return zoneShifted(zone, SITE_SHIFTS[setting.microclimate].zoneHalves);
}

const signed = (degreesF: number): string => `${degreesF < 0 ? "−" : "+"}${Math.abs(degreesF)} °F`;
const SPRING_WORDS: Readonly<Record<Spring, string>> = {
  mild: "mild spring (one year in six)",
  normal: "",
  hard: "hard spring (one year in six)",
};

/** "south wall (nights +2 °F, days +4 °F)", "climate +2 °F", "hard spring (one year in six)": what is not normal, empty where all is. */
export function settingWords(setting: PlaceSetting): readonly string[] {
  const { minimaF, maximaF } = SITE_SHIFTS[setting.microclimate];
  return [
    setting.microclimate === "open" ? "" : `${setting.microclimate} (nights ${signed(minimaF)}, days ${maximaF === 0 ? "as they are" : signed(maximaF)})`,
    setting.warmingF === 0 ? "" : `climate ${signed(setting.warmingF)}`,
    SPRING_WORDS[setting.spring],
  ].filter((words) => words !== "");
}
