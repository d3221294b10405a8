// Places: ZIP table in the database, NOAA normals from prisma/climate/stations.json, both kept in memory once read.
import { readFileSync } from "node:fs";
import { climateAt } from "../place/climate-at";
import type { Place } from "../place/place";
import { type PlaceYear, placeYear } from "../place/place-year";
import type { Station } from "../place/station";
import { decodeStations } from "../place/station-table";
import { zoneParse } from "../place/zone";
import { database } from "./database";
import { projectPath } from "./environment";

const memory = globalThis as { twelvemonthStations?: readonly Station[]; twelvemonthYears?: Map<string, PlaceYear> };

function stations(): readonly Station[] {
  memory.twelvemonthStations ??= decodeStations(JSON.parse(readFileSync(projectPath("prisma", "climate", "stations.json"), "utf8")));
  return memory.twelvemonthStations;
}

/** What identifies a place; everything else follows from it. A zone set here is by hand and wins. */
export type PlaceKey = {
  readonly zip?: string | null;
  readonly town?: string;
  readonly state?: string | null;
  readonly lat?: number | null;
  readonly lon?: number | null;
  readonly elevationFt?: number | null;
  readonly zone?: string | null;
};

export type PlaceAnswer = { readonly kind: "place"; readonly place: Place } | { readonly kind: "fault"; readonly field: string; readonly message: string };

const fault = (field: string, message: string): PlaceAnswer => ({ kind: "fault", field, message });

/** The ZIP table's row. */
export async function zipFind(zip: string) {
  return database().zip.findUnique({ where: { zip } });
}

/**
 * The place of a ZIP or a point. A point without a ZIP has no map zone: the table goes by ZIP.
 * @returns a fault (with its field) when the ZIP is malformed or unknown, or the point cannot be on the ground here
 */
export async function placeFind(key: PlaceKey): Promise<PlaceAnswer> {
  let { lat = null, lon = null, state = null } = key;
  let zoneMap: number | null = null;
  if (key.zip) {
    if (!/^\d{5}$/.test(key.zip)) return fault("zip", `"${key.zip}" is not a ZIP code: five digits are wanted, such as 05401.`);
    const row = await zipFind(key.zip);
    if (!row && (lat === null || lon === null)) return fault("zip", `ZIP ${key.zip} is not in the Census table. Check the digits, or set latitude and longitude by hand.`);
    if (row) {
      lat ??= row.lat;
      lon ??= row.lon;
      state ??= row.state;
      zoneMap = row.zone ? zoneParse(row.zone) : null;
    }
  }
  const byHand = key.zone ? zoneParse(key.zone) : null;
  if (key.zone && byHand === null) return fault("zone", `"${key.zone}" is not a hardiness zone: 1a to 13b are.`);
  const base = { zip: key.zip ?? null, town: key.town ?? "", state, lat, lon, zone: byHand ?? zoneMap, zoneMap };
  if (lat === null || lon === null) return { kind: "place", place: { ...base, climate: null, warnings: [], fault: "Enter a ZIP code, or latitude and longitude." } };
  const answer = climateAt(stations(), { lat, lon, elevationFt: key.elevationFt ?? null });
  if (answer.kind === "fault") {
    if (answer.field !== "place") return fault(answer.field, answer.message);
    return { kind: "place", place: { ...base, climate: null, warnings: [], fault: answer.message } };
  }
  const warnings = [...answer.warnings];
  if (key.zip && zoneMap === null && byHand === null)
    warnings.push(`The 2023 zone table has no zone for ZIP ${key.zip} (Alaska, Hawaii, Puerto Rico and a few others are missing). Set the zone by hand.`);
  return { kind: "place", place: { ...base, climate: answer.climate, warnings, fault: null } };
}

/** The place's year, kept. */
export function placeYearOf(place: Place): PlaceYear | null {
  if (!place.climate) return null;
  memory.twelvemonthYears ??= new Map();
  const { lat, lon, elevationFt } = place.climate;
  const key = `${lat},${lon},${elevationFt}`;
  const kept = memory.twelvemonthYears.get(key) ?? placeYear(place.climate);
  if (memory.twelvemonthYears.size > 200) memory.twelvemonthYears.clear();
  memory.twelvemonthYears.set(key, kept);
  return kept;
}
