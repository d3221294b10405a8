import { describe, expect, it } from "vitest";
import { REFERENCE_CLIMATE } from "./reference";
import { climateOfSetting, NORMAL_SETTING, type PlaceSetting, settingIsNormal, settingWords, zoneOfSetting } from "./setting";

const having = (change: Partial<PlaceSetting>): PlaceSetting => ({ ...NORMAL_SETTING, ...change });

describe("what a job says of its site", () => {
  it("changes nothing when it says nothing", () => {
    expect(climateOfSetting(REFERENCE_CLIMATE, NORMAL_SETTING)).toBe(REFERENCE_CLIMATE);
    expect(settingIsNormal(NORMAL_SETTING)).toBe(true);
    expect(settingWords(NORMAL_SETTING)).toEqual([]);
  });

  it("adds up: a south wall in a climate four degrees warmer", () => {
    const both = climateOfSetting(REFERENCE_CLIMATE, having({ microclimate: "south wall", warmingF: 4 }));
    expect(both.tminF[0]).toBeCloseTo((REFERENCE_CLIMATE.tminF[0] ?? 0) + 6, 6);
    expect(both.tmaxF[6]).toBeCloseTo((REFERENCE_CLIMATE.tmaxF[6] ?? 0) + 8, 6);
  });

  it("moves the zone by the site alone", () => {
    expect(zoneOfSetting(5.5, having({ microclimate: "south wall" }))).toBe(6);
    expect(zoneOfSetting(5.5, having({ microclimate: "frost pocket" }))).toBe(5);
    expect(zoneOfSetting(5.5, having({ warmingF: 4, spring: "hard" }))).toBe(5.5);
    expect(zoneOfSetting(13.5, having({ microclimate: "city court" }))).toBe(13.5);
  });

  it("says each thing that is not normal, with its amount", () => {
    const words = settingWords({ microclimate: "frost pocket", warmingF: 2, spring: "hard" });
    expect(words).toEqual(["frost pocket (nights −4 °F, days as they are)", "climate +2 °F", "hard spring (one year in six)"]);
    for (const microclimate of ["south wall", "exposed", "city court"] as const) expect(settingWords(having({ microclimate }))).toHaveLength(1);
  });
});
