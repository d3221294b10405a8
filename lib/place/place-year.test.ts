import { describe, expect, it } from "vitest";
import { placeYear } from "./place-year";
import { REFERENCE_CLIMATE, REFERENCE_YEAR } from "./reference";

describe("the year of a place", () => {
  it("has 365 days of everything", () => {
    const y = REFERENCE_YEAR;
    for (const daily of [y.minF, y.maxF, y.meanF, y.sdF, y.dayLengthH, y.degreeDays, y.degreeDayTotals, y.modifiedDegreeDayTotals, y.warmthTotals.normal])
      expect(daily).toHaveLength(365);
  });

  it("comes to the degree days NOAA gives for Wooster, 2,816, within two percent", () => {
    expect(Math.abs((REFERENCE_YEAR.degreeDayTotals.at(-1) ?? 0) / 2816 - 1)).toBeLessThan(0.02);
  });

  it("is coldest in January and warmest in July at Wooster", () => {
    expect(REFERENCE_YEAR.coldestDay).toBeLessThan(32);
    expect(REFERENCE_YEAR.warmestDay).toBeGreaterThan(181);
    expect(REFERENCE_YEAR.warmestDay).toBeLessThan(213);
  });

  it("never counts backwards", () => {
    for (const totals of [REFERENCE_YEAR.degreeDayTotals, REFERENCE_YEAR.warmthTotals.hard])
      for (const [i, t] of totals.entries()) expect(t).toBeGreaterThanOrEqual(totals[i - 1] ?? 0);
  });

  it("says why dates have no basis in the tropics and south of the equator", () => {
    expect(REFERENCE_YEAR.noBasis).toBeNull();
    expect(placeYear({ ...REFERENCE_CLIMATE, lat: 21 }).noBasis).toMatch(/25° N/);
    expect(placeYear({ ...REFERENCE_CLIMATE, lat: -34 }).noBasis).toMatch(/equator/);
    const warm = REFERENCE_CLIMATE.tminF.map(() => 68);
    expect(placeYear({ ...REFERENCE_CLIMATE, tminF: warm, tmaxF: warm }).noBasis).toMatch(/cool enough/);
  });
});
