import { describe, expect, it } from "vitest";
import { climateOfSite, climateOfSpring, climateWarmed, MICROCLIMATES, SITE_SHIFTS } from "./microclimate";
import { placeYear } from "./place-year";
import { REFERENCE_CLIMATE } from "./reference";

const degreeDays = (climate: typeof REFERENCE_CLIMATE): number => placeYear(climate).degreeDayTotals.at(-1) ?? 0;

describe("a site within its ZIP", () => {
  it("leaves open ground as it is", () => {
    expect(climateOfSite(REFERENCE_CLIMATE, "open")).toBe(REFERENCE_CLIMATE);
  });

  it("lengthens the season at a south wall and in a city court, shortens it in a frost pocket", () => {
    const season = (site: (typeof MICROCLIMATES)[number]) => {
      const { firstFreezeDay, lastFreezeDay } = climateOfSite(REFERENCE_CLIMATE, site);
      return (firstFreezeDay ?? 0) - (lastFreezeDay ?? 0);
    };
    expect(season("south wall")).toBeGreaterThan(season("open"));
    expect(season("city court")).toBeGreaterThan(season("open"));
    expect(season("frost pocket")).toBeLessThan(season("open"));
  });

  it("says that its amounts are common practice", () => {
    for (const site of MICROCLIMATES) expect(SITE_SHIFTS[site].source).toBe("practice");
  });

  it("does not touch the climate it was given", () => {
    const before = structuredClone(REFERENCE_CLIMATE);
    for (const site of MICROCLIMATES) climateOfSite(REFERENCE_CLIMATE, site);
    expect(REFERENCE_CLIMATE).toEqual(before);
  });
});

describe("a warmer climate", () => {
  it("adds degree days in step and keeps freeze dates in order", () => {
    const [now, two, four] = [REFERENCE_CLIMATE, climateWarmed(REFERENCE_CLIMATE, 2), climateWarmed(REFERENCE_CLIMATE, 4)];
    expect(degreeDays(two)).toBeGreaterThan(degreeDays(now) + 300);
    expect(degreeDays(four)).toBeGreaterThan(degreeDays(two) + 300);
    expect(four.lastFreezeDay).toBeLessThan(two.lastFreezeDay ?? 0);
    expect(two.lastFreezeDay).toBeLessThan(now.lastFreezeDay ?? 0);
    expect(four.lastFreezeLateDay).toBeGreaterThan(four.lastFreezeDay ?? 999);
  });
});

describe("a mild and a hard spring", () => {
  it("lie on either side of the normal and leave summer and fall alone", () => {
    const [mild, hard] = [climateOfSpring(REFERENCE_CLIMATE, "mild"), climateOfSpring(REFERENCE_CLIMATE, "hard")];
    expect(mild.tminF[2]).toBeGreaterThan(REFERENCE_CLIMATE.tminF[2] ?? 0);
    expect(hard.tminF[2]).toBeLessThan(REFERENCE_CLIMATE.tminF[2] ?? 0);
    expect(mild.tmaxF[8]).toBe(REFERENCE_CLIMATE.tmaxF[8]);
    expect(Math.abs((hard.firstFreezeDay ?? 0) - (REFERENCE_CLIMATE.firstFreezeDay ?? 0))).toBeLessThanOrEqual(1);
  });
});
