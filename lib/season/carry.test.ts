import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { stationsRead } from "../../tests/outside/dataset";
import { climateAt } from "../place/climate-at";
import { climateWarmed } from "../place/microclimate";
import { type PlaceYear, placeYear } from "../place/place-year";
import { REFERENCE_CLIMATE, REFERENCE_YEAR } from "../place/reference";
import { coolingShift, heatDay, heatDurationFactor, heatShare, lightDay, referenceDayOfDegreeDays } from "./carry";

const stations = stationsRead();
function yearAt(lat: number, lon: number): PlaceYear {
  const answer = climateAt(stations, { lat, lon });
  if (answer.kind === "fault") throw new Error(answer.message);
  return placeYear(answer.climate);
}
const DULUTH = yearAt(46.79, -92.1);
const RICHMOND = yearAt(37.54, -77.44);
const ORLANDO = yearAt(28.54, -81.38);

describe("a date driven by warmth", () => {
  it("stays where it is at the reference climate", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 365 }), (day) => {
        expect(heatDay(day, REFERENCE_YEAR)).toBeCloseTo(day, 6);
      }),
    );
  });

  it("keeps the order of dates at any place, to half a day where warmth gives way to the calendar", () => {
    for (const place of [DULUTH, RICHMOND, ORLANDO])
      for (let day = 30; day < 260; day++) expect(heatDay(day + 1, place), `day ${day}`).toBeGreaterThanOrEqual(heatDay(day, place) - 0.5);
  });

  it("comes later where it is colder and earlier where it is warmer", () => {
    for (let day = 60; day < 200; day += 5) {
      expect(heatDay(day, DULUTH)).toBeGreaterThan(day);
      expect(heatDay(day, RICHMOND)).toBeLessThan(day);
    }
  });

  it("comes earlier in a warmer climate, step by step", () => {
    const years = [0, 2, 4].map((f) => placeYear(climateWarmed(REFERENCE_CLIMATE, f as 0 | 2 | 4)));
    for (const day of [91, 121, 152]) {
      const dates = years.map((y) => heatDay(day, y));
      expect(dates[1]).toBeLessThan((dates[0] ?? 0) - 3);
      expect(dates[2]).toBeLessThan((dates[1] ?? 0) - 3);
    }
  });

  it("lies between those of a mild and a hard spring", () => {
    for (const day of [91, 121, 152]) {
      expect(heatDay(day, DULUTH, "mild")).toBeLessThan(heatDay(day, DULUTH));
      expect(heatDay(day, DULUTH, "hard")).toBeGreaterThan(heatDay(day, DULUTH));
    }
  });

  it("leaves warmth for the calendar by degrees after midsummer", () => {
    expect(heatShare(166)).toBe(1);
    expect(heatShare(213)).toBe(0.5);
    expect(heatShare(300)).toBe(0);
  });

  it("lasts longer where it warms slowly, within 0.6 and 1.4", () => {
    const maritime = yearAt(47.6, -122.33);
    expect(heatDurationFactor(121, heatDay(121, maritime), 20, maritime)).toBeGreaterThan(1);
    for (const place of [DULUTH, RICHMOND, ORLANDO, maritime])
      for (let day = 20; day < 250; day += 10) {
        const factor = heatDurationFactor(day, heatDay(day, place), 21, place);
        expect(factor).toBeGreaterThanOrEqual(0.6);
        expect(factor).toBeLessThanOrEqual(1.4);
      }
  });
});

describe("published degree days", () => {
  it("give April dates for the forsythias of the Ohio calendar", () => {
    expect(referenceDayOfDegreeDays(86)).toBeGreaterThan(91);
    expect(referenceDayOfDegreeDays(86)).toBeLessThan(100);
  });

  it("have no date when a year there does not bring so many", () => {
    expect(referenceDayOfDegreeDays(20000)).toBeNull();
  });
});

describe("a date driven by day length", () => {
  it("stays where it is at the reference latitude", () => {
    for (const day of [40, 120, 213, 240, 300]) expect(lightDay(day, REFERENCE_YEAR)).toBeCloseTo(day, 1);
  });

  it("comes later northward in August, when northern days are still long", () => {
    expect(lightDay(225, DULUTH)).toBeGreaterThan(225);
    expect(lightDay(225, RICHMOND)).toBeLessThan(225);
  });

  it("never moves by more than three weeks", () => {
    for (const place of [DULUTH, ORLANDO, yearAt(64.84, -147.72)]) for (let day = 1; day <= 365; day += 7) expect(Math.abs(lightDay(day, place) - day)).toBeLessThanOrEqual(21);
  });
});

describe("a date driven by cooling", () => {
  it("comes earlier in the north and later in the south, and not at all apart at the reference", () => {
    expect(coolingShift(REFERENCE_YEAR)).toBe(0);
    expect(coolingShift(DULUTH)).toBeLessThan(-4);
    expect(coolingShift(RICHMOND)).toBeGreaterThan(5);
    expect(coolingShift(ORLANDO)).toBeGreaterThan(coolingShift(RICHMOND));
    expect(coolingShift(ORLANDO)).toBeLessThanOrEqual(45);
  });
});
