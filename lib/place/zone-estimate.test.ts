import { describe, expect, it } from "vitest";
import { stationsRead } from "../../tests/outside/dataset";
import { climateAt } from "./climate-at";
import { zoneEstimated } from "./zone-estimate";

const stations = stationsRead();

describe("a zone from the normals", () => {
  // Half zones of the 2023 map, from memory.
  it.each([
    ["Burlington, Vermont", 44.48, -73.21, 5.5],
    ["Wooster, Ohio", 40.78, -81.92, 6.5],
    ["Anchorage, Alaska", 61.2, -149.9, 5],
    ["Honolulu, Hawaii", 21.3, -157.85, 12.5],
    ["San Juan, Puerto Rico", 18.45, -66.1, 13],
    ["Atlanta, Georgia", 33.75, -84.39, 8],
  ])("%s comes within one half zone", (_, lat, lon, zone) => {
    const answer = climateAt(stations, { lat, lon });
    expect(answer.kind === "climate" && Math.abs(zoneEstimated(answer.climate) - zone)).toBeLessThanOrEqual(0.5);
  });
});
