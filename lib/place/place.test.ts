import { describe, expect, it } from "vitest";
import { placeLabel } from "./place";

const NOWHERE = { zip: null, town: "", state: null, lat: null, lon: null };

describe("a place's label", () => {
  it.each([
    [{ ...NOWHERE, zip: "05401", town: "Burlington", state: "VT", lat: 44.48, lon: -73.21 }, "Burlington, VT 05401"],
    [{ ...NOWHERE, zip: "05401", state: "VT", lat: 44.48, lon: -73.21 }, "VT 05401"],
    [{ ...NOWHERE, state: "GA", lat: 33.75, lon: -84.39 }, "33.75, -84.39, GA"],
    [{ ...NOWHERE, town: "Atlanta", state: "GA", lat: 33.75, lon: -84.39 }, "Atlanta, GA"],
    [{ ...NOWHERE, lat: 33.75, lon: -84.39 }, "33.75, -84.39"],
    [NOWHERE, "Place not set"],
  ])("%o is %s", (place, label) => {
    expect(placeLabel(place)).toBe(label);
  });
});
