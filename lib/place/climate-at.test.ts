import { describe, expect, it } from "vitest";
import { stationsRead } from "../../tests/outside/dataset";
import type { Climate } from "./climate";
import { climateAt, milesBetween, type Point } from "./climate-at";

const stations = stationsRead();
function climateOf(point: Point): Climate {
  const answer = climateAt(stations, point);
  if (answer.kind === "fault") throw new Error(answer.message);
  return answer.climate;
}
const WOOSTER = { lat: 40.78, lon: -81.92 };

describe("normals at a point", () => {
  it("are the station's own where one stands", () => {
    const climate = climateOf(WOOSTER);
    expect(climate.stations[0]?.name).toBe("WOOSTER EXP STN");
    expect(climate.tminF[0]).toBeGreaterThan(17.2);
    expect(climate.tminF[0]).toBeLessThan(19.2);
    expect(Math.abs((climate.lastFreezeDay ?? 0) - 121)).toBeLessThanOrEqual(3);
    expect(Math.abs(climate.elevationFt - 1020)).toBeLessThan(40);
  });

  it("use eight stations, nearest first, with weights that sum to one", () => {
    const { stations: used } = climateOf(WOOSTER);
    expect(used).toHaveLength(8);
    expect(used.reduce((sum, s) => sum + s.weight, 0)).toBeCloseTo(1, 9);
    for (const [i, s] of used.entries()) expect(s.miles).toBeGreaterThanOrEqual(used[i - 1]?.miles ?? 0);
  });

  it("do not depend on the order of the stations", () => {
    const turned = climateAt([...stations].reverse(), WOOSTER);
    expect(turned).toEqual(climateAt(stations, WOOSTER));
  });

  it("are colder, with a shorter season, higher up", () => {
    const low = climateOf({ ...WOOSTER, elevationFt: 1000 });
    const high = climateOf({ ...WOOSTER, elevationFt: 2000 });
    expect(Math.abs((low.tmaxF[5] ?? 0) - (high.tmaxF[5] ?? 0) - 3.8)).toBeLessThan(0.5);
    expect(high.lastFreezeDay).toBeGreaterThan((low.lastFreezeDay ?? 0) + 4);
    expect(high.firstFreezeDay).toBeLessThan((low.firstFreezeDay ?? 0) - 4);
  });

  it("rest on stations of the point's own height where it has been told", () => {
    // Evergreen, Colorado: the plains around Denver begin ten miles off and 1,500 ft lower.
    const evergreen = { lat: 39.63, lon: -105.32 };
    const share = (point: Point) => climateOf(point).stations.find((s) => s.name === "EVERGREEN")?.weight ?? 0;
    expect(share({ ...evergreen, elevationFt: 7000 })).toBeGreaterThan(share(evergreen) + 0.1);
  });

  it("put the hard years' freezes outside the median ones", () => {
    const climate = climateOf({ lat: 44.48, lon: -73.21 });
    expect(climate.lastFreezeLateDay).toBeGreaterThan(climate.lastFreezeDay ?? 999);
    expect(climate.firstFreezeEarlyDay).toBeLessThan(climate.firstFreezeDay ?? 0);
  });

  it("have no freeze dates where frost does not come, nor where it comes all year", () => {
    expect(climateOf({ lat: 25.77, lon: -80.19 }).lastFreezeDay).toBeNull();
    expect(climateOf({ lat: 39.25, lon: -106.29, elevationFt: 10150 }).firstFreezeDay).toBeNull();
  });

  it("refuse a point beyond their reach, and guess at a lost minus sign", () => {
    const london = climateAt(stations, { lat: 51.5, lon: -0.1 });
    expect(london).toMatchObject({ kind: "fault", field: "place" });
    const lost = climateAt(stations, { lat: 40.78, lon: 81.92 });
    expect(lost.kind === "fault" && lost.message).toMatch(/minus sign/);
  });

  it.each([
    [{ lat: 91, lon: -80 }, "lat"],
    [{ lat: Number.NaN, lon: -80 }, "lat"],
    [{ lat: 40, lon: -200 }, "lon"],
    [{ lat: 40, lon: -80, elevationFt: 30000 }, "elevationFt"],
    [{ lat: 40, lon: -80, elevationFt: -500 }, "elevationFt"],
  ] as const)("name the entry that cannot be: %o", (point, field) => {
    expect(climateAt(stations, point)).toMatchObject({ kind: "fault", field });
  });

  it("warn of an elevation that the stations around make unlikely", () => {
    const answer = climateAt(stations, { ...WOOSTER, elevationFt: 9000 });
    expect(answer.kind === "climate" && answer.warnings.join(" ")).toMatch(/Check the elevation/);
  });
});

describe("distance", () => {
  it("is 69 miles a degree of latitude", () => {
    expect(milesBetween({ lat: 40, lon: -80 }, { lat: 41, lon: -80 })).toBeCloseTo(69.1, 1);
  });
});
