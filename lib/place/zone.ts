// Hardiness zones: thirteen zones of 10 °F, each in halves a and b of 5 °F, by the average yearly extreme minimum (USDA map 2012 and 2023).

/** Lower edge of zone 1a, °F. */
const COLDEST_F = -60;
const HALF_F = 5;
const HALVES = 26;

/** A half zone as a number: 5 is 5a, 5.5 is 5b. */
export type ZoneNumber = number;

/** All half zones, coldest first: "1a" … "13b". */
export const HALF_ZONES: readonly string[] = Array.from({ length: HALVES }, (_, i) => zoneText(1 + i / 2));

/** "5b" of 5.5. */
export function zoneText(zone: ZoneNumber): string {
  return `${Math.floor(zone)}${zone % 1 >= 0.5 ? "b" : "a"}`;
}

/** 5.5 of "5b", "5B" or "zone 5b"; a whole "5" is its colder half. Null when there is no such zone. */
export function zoneParse(text: string): ZoneNumber | null {
  const found = /^\s*(?:zone\s*)?(\d{1,2})\s*([ab]?)\s*$/i.exec(text);
  if (!found) return null;
  const zone = Number(found[1]) + (found[2]?.toLowerCase() === "b" ? 0.5 : 0);
  return zone >= 1 && zone < 14 ? zone : null;
}

/** Average yearly extreme minimum of a half zone, °F, low to high. */
export function zoneRangeF(zone: ZoneNumber): readonly [number, number] {
  const low = COLDEST_F + (Math.round(zone * 2) - 2) * HALF_F;
  return [low, low + HALF_F];
}

/** The half zone of an average yearly extreme minimum, °F; held to 1a and 13b at the ends. */
export function zoneOfMinimumF(minimumF: number): ZoneNumber {
  const half = Math.floor((minimumF - COLDEST_F) / HALF_F);
  return 1 + Math.min(HALVES - 1, Math.max(0, half)) / 2;
}

/** A zone so many halves warmer (colder when negative), held to 1a and 13b. */
export function zoneShifted(zone: ZoneNumber, halves: number): ZoneNumber {
  return Math.min(13.5, Math.max(1, zone + halves / 2));
}
