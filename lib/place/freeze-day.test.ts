import { describe, expect, it } from "vitest";
import { freezeDayMoved } from "./freeze-day";
import { harmonicSeries } from "./harmonic";
import { REFERENCE_CLIMATE } from "./reference";

const daily = harmonicSeries(REFERENCE_CLIMATE.tminF);
const shift = (degreesF: number) => Array.from({ length: 365 }, () => degreesF);

describe("a freeze date moved with the minima", () => {
  it("stays where nothing changes", () => {
    expect(freezeDayMoved(daily, 121, shift(0), "rising")).toBeCloseTo(121, 6);
  });

  it("comes later in spring and earlier in fall where it is colder, by about three days a degree", () => {
    const last = freezeDayMoved(daily, 121, shift(-3), "rising") - 121;
    const first = freezeDayMoved(daily, 280, shift(-3), "falling") - 280;
    expect(last).toBeGreaterThan(6);
    expect(last).toBeLessThan(13);
    expect(first).toBeLessThan(-6);
    expect(first).toBeGreaterThan(-13);
  });

  it("moves the other way where it is warmer", () => {
    expect(freezeDayMoved(daily, 121, shift(3), "rising")).toBeLessThan(121);
    expect(freezeDayMoved(daily, 280, shift(3), "falling")).toBeGreaterThan(280);
  });

  it("stops at the turn of the year's temperature instead of running round", () => {
    const last = freezeDayMoved(daily, 121, shift(-60), "rising");
    expect(last).toBeGreaterThan(180);
    expect(last).toBeLessThan(222);
  });
});
