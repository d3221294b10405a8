import { describe, expect, it } from "vitest";
import type { Station, StationFreeze } from "./station";
import { decodeStations, stationTableEncode } from "./station-table";

const SD = [12, 11.5, 10.8, 9.3, 7.9, 6.3, 5.6, 5.8, 7.2, 8.6, 9.7, 11];
const station = (id: string, freeze: StationFreeze, rainIn: readonly number[] | null): Station => ({
  id,
  name: `STATION ${id}`,
  state: "OH",
  lat: 40.78,
  lon: -81.92,
  elevationFt: 1020,
  tminF: [18.2, 19.9, 27.3, 37.5, 47.3, 56.5, 60.2, 58.4, 50.8, 40.1, 32.1, -2.8],
  tmaxF: [34.5, 38.1, 48, 61, 70.9, 79.5, 83.1, 81.7, 74.6, 62.7, 50.7, 38.4],
  rainIn,
  sdF: SD,
  freeze,
  degreeDaysYear: 2816,
});

describe("the compact table of normals", () => {
  it("gives back the stations it was made from", () => {
    const rain = [2.29, 1.97, 2.79, 3.65, 4.45, 4.45, 4.28, 3.88, 3.43, 3.07, 3.11, 2.71];
    const stations = [
      station("A", { kind: "dates", lastDay: 121, lastMildDay: 108, firstDay: 280, firstMildDay: 295 }, rain),
      station("B", { kind: "dates", lastDay: 19, lastMildDay: -12, firstDay: 370, firstMildDay: 390 }, null),
      station("C", { kind: "never" }, rain),
      station("D", { kind: "all year" }, rain),
      station("E", { kind: "not recorded" }, rain),
    ];
    const back = decodeStations(
      JSON.parse(
        JSON.stringify(
          stationTableEncode(
            stations,
            stations.map(() => 1),
            SD,
          ),
        ),
      ),
    );
    expect(back).toEqual(stations);
  });

  it("refuses a file that is no such table", () => {
    expect(() => decodeStations({ period: "1981–2010" })).toThrow();
  });
});
