import { getTimes } from "suncalc";
import { describe, expect, it } from "vitest";
import { dayLengthHours } from "./day-length";

/** Minutes from sunrise to sunset by an independent library; a year that is not a leap year, at noon. */
function minutesByAlmanac(dayOfYear: number, lat: number): number {
  const { sunrise, sunset } = getTimes(new Date(Date.UTC(2011, 0, dayOfYear, 12)), lat, 0);
  return sunrise && sunset ? (sunset.getTime() - sunrise.getTime()) / 60000 : Number.NaN;
}

describe("day length", () => {
  it.each([25, 33, 40.8, 48])("agrees with the almanac within two minutes all year at %d° N", (lat) => {
    for (let day = 1; day <= 365; day += 3) expect(Math.abs(dayLengthHours(day, lat) * 60 - minutesByAlmanac(day, lat)), `day ${day}`).toBeLessThan(2);
  });

  it("is twelve hours and some minutes at the equinox everywhere", () => {
    for (const lat of [25, 40, 60]) expect(dayLengthHours(80, lat)).toBeGreaterThan(11.9);
    for (const lat of [25, 40, 60]) expect(dayLengthHours(80, lat)).toBeLessThan(12.4);
  });

  it("is longer northward in summer and shorter in winter", () => {
    expect(dayLengthHours(172, 48)).toBeGreaterThan(dayLengthHours(172, 33));
    expect(dayLengthHours(355, 48)).toBeLessThan(dayLengthHours(355, 33));
  });

  it("is 24 and 0 hours beyond the polar circle", () => {
    expect(dayLengthHours(172, 71)).toBe(24);
    expect(dayLengthHours(355, 71)).toBe(0);
  });
});
