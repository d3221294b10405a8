import { describe, expect, it } from "vitest";
import { HALF_ZONES, zoneOfMinimumF, zoneParse, zoneRangeF, zoneShifted, zoneText } from "./zone";

/** USDA Plant Hardiness Zone Map: edges of a few half zones, °F. */
const PUBLISHED: readonly [string, number, number][] = [
  ["1a", -60, -55],
  ["3b", -35, -30],
  ["5a", -20, -15],
  ["5b", -15, -10],
  ["6a", -10, -5],
  ["7a", 0, 5],
  ["8b", 15, 20],
  ["10a", 30, 35],
  ["13b", 65, 70],
];

describe("hardiness zones", () => {
  it.each(PUBLISHED)("%s runs from %d to %d °F", (text, low, high) => {
    const zone = zoneParse(text);
    expect(zone).not.toBeNull();
    expect(zoneRangeF(zone ?? 0)).toEqual([low, high]);
    expect(zoneText(zoneOfMinimumF(low))).toBe(text);
    expect(zoneText(zoneOfMinimumF(high - 0.1))).toBe(text);
  });

  it("are 26, and each reads back as itself", () => {
    expect(HALF_ZONES).toHaveLength(26);
    for (const text of HALF_ZONES) expect(zoneText(zoneParse(text) ?? 0)).toBe(text);
  });

  it("read 5b as five and a half, in any hand", () => {
    for (const text of ["5b", "5B", " zone 5b ", "Zone 5 b"]) expect(zoneParse(text)).toBe(5.5);
    expect(zoneParse("5")).toBe(5);
  });

  it("refuse what is no zone", () => {
    for (const text of ["", "0a", "14a", "5c", "b", "5.5", "fifty"]) expect(zoneParse(text)).toBeNull();
  });

  it("hold temperatures and shifts beyond the ends to the ends", () => {
    expect(zoneText(zoneOfMinimumF(-80))).toBe("1a");
    expect(zoneText(zoneOfMinimumF(90))).toBe("13b");
    expect(zoneShifted(13.5, 1)).toBe(13.5);
    expect(zoneShifted(5, 1)).toBe(5.5);
  });
});
