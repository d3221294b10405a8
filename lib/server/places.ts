// Places: ZIP table in the database, NOAA normals from prisma/climate/stations.json, both kept in memory once read.
import { readFileSync } from "node:fs";
import { climateAt, milesBetween } from "../place/climate-at";
import type { Microclimate, WarmingF } from "../place/microclimate";
import type { Place, ZoneSource } from "../place/place";
import { type PlaceYear, placeYear } from "../place/place-year";
import { climateOfSetting, NORMAL_SETTING, type PlaceSetting, zoneOfSetting } from "../place/setting";
import type { Spring } from "../place/spring";
import type { Station } from "../place/station";
import { decodeStations } from "../place/station-table";
import { zoneParse, zoneText } from "../place/zone";
import { zoneEstimated } from "../place/zone-estimate";
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
  /** What is not as the normals have it; open ground, no warming and a normal spring where nothing is said. */
  readonly microclimate?: Microclimate;
  readonly warmingF?: WarmingF;
  readonly spring?: Spring;
};

export type PlaceAnswer = { readonly kind: "place"; readonly place: Place } | { readonly kind: "fault"; readonly field: string; readonly message: string };

const fault = (field: string, message: string): PlaceAnswer => ({ kind: "fault", field, message });

/** The ZIP table's row. */
export async function zipFind(zip: string) {
  return database().zip.findUnique({ where: { zip } });
}

const settingOf = (key: PlaceKey): PlaceSetting => ({
  microclimate: key.microclimate ?? NORMAL_SETTING.microclimate,
  warmingF: key.warmingF ?? NORMAL_SETTING.warmingF,
  spring: key.spring ?? NORMAL_SETTING.spring,
});

/** A neighbor farther off says little of a site's winter. */
const NEIGHBOR_MILES = 25;
/** Miles of a degree of latitude, and of one of longitude at the northern edge of the contiguous states. */
const LATITUDE_MILES = 69;
const LONGITUDE_MILES = 44;

/** The nearest ZIP that the table has a zone for; null when there is none within so many miles. */
export async function neighborFind(lat: number, lon: number, withinMiles: number) {
  const [north, east] = [withinMiles / LATITUDE_MILES, withinMiles / LONGITUDE_MILES];
  const rows = await database().zip.findMany({ where: { lat: { gte: lat - north, lte: lat + north }, lon: { gte: lon - east, lte: lon + east }, zone: { not: null } } });
  const near = rows.map((row) => ({ ...row, miles: milesBetween(row, { lat, lon }) })).sort((a, b) => a.miles - b.miles || a.zip.localeCompare(b.zip))[0];
  return near && near.miles <= withinMiles ? near : null;
}

/** The known ZIP next to one that is not, within its sectional center: most unknown ones are slips or new boxes. */
async function zipLike(zip: string): Promise<string | null> {
  const rows = await database().zip.findMany({ where: { zip: { startsWith: zip.slice(0, 3) } }, select: { zip: true } });
  const apart = (other: string) => Math.abs(Number(other) - Number(zip));
  return rows.map((row) => row.zip).sort((a, b) => apart(a) - apart(b))[0] ?? null;
}

type ZoneAnswer = { readonly zone: number | null; readonly zoneSource: ZoneSource | null; readonly warning: string | null; readonly state: string | null };

/**
 * The zone of a point that has none by hand and none of its ZIP: the nearest ZIP's, else an estimate; with a warning that
 * says so. The state of a point without a ZIP comes along.
 */
async function zoneDefault(key: PlaceKey, lat: number, lon: number, climate: Pick<PlaceYear["climate"], "tminF"> | null): Promise<ZoneAnswer> {
  const whose = key.zip
    ? `The 2023 zone table has no zone for ZIP ${key.zip} (Alaska, Hawaii, Puerto Rico and a few others are missing).`
    : "The 2023 zone table goes by ZIP code.";
  const near = await neighborFind(lat, lon, NEIGHBOR_MILES);
  if (near?.zone) {
    const words = `${whose} Zone ${near.zone} is that of ZIP ${near.zip}, ${near.miles < 1 ? "less than a mile" : `${Math.round(near.miles)} miles`} away. Set the zone by hand if you know better.`;
    return { zone: zoneParse(near.zone), zoneSource: "nearest ZIP", warning: words, state: near.state };
  }
  if (!climate) return { zone: null, zoneSource: null, warning: `${whose} Set the zone by hand.`, state: null };
  const zone = zoneEstimated(climate);
  return {
    zone,
    zoneSource: "normals",
    warning: `${whose} Zone ${zoneText(zone)} is an estimate from the normals' coldest month, good to about half a zone. Set the zone by hand if you know better.`,
    state: null,
  };
}

/**
 * The place of a ZIP or a point, as its setting has it. A zone by hand wins and stands as it is; any other is moved by the site.
 * @returns a fault (with its field) when the ZIP is malformed or unknown, or the point cannot be on the ground here. A point
 * beyond the normals' reach is a place with a fault of its own: it has no climate, and can be set right by hand.
 */
export async function placeFind(key: PlaceKey): Promise<PlaceAnswer> {
  let { lat = null, lon = null, state = null } = key;
  const setting = settingOf(key);
  let zoneMap: number | null = null;
  if (key.zip) {
    if (!/^\d{5}$/.test(key.zip)) return fault("zip", `"${key.zip}" is not a ZIP code: five digits are wanted, such as 05401.`);
    const row = await zipFind(key.zip);
    if (!row && (lat === null || lon === null)) {
      const like = await zipLike(key.zip);
      const near = like ? ` The nearest that is known is ${like}.` : "";
      return fault("zip", `ZIP ${key.zip} is not in the Census table.${near} Check the digits, or set latitude and longitude by hand.`);
    }
    if (row) {
      lat ??= row.lat;
      lon ??= row.lon;
      state ??= row.state;
      zoneMap = row.zone ? zoneParse(row.zone) : null;
    }
  }
  const byHand = key.zone ? zoneParse(key.zone) : null;
  if (key.zone && byHand === null) return fault("zone", `"${key.zone}" is not a hardiness zone: 1a to 13b are, such as 5b.`);
  const known: ZoneAnswer = { zone: byHand ?? zoneMap, zoneSource: byHand !== null ? "hand" : zoneMap !== null ? "ZIP" : null, warning: null, state: null };
  const base = { zip: key.zip ?? null, town: key.town ?? "", state, lat, lon, zone: known.zone, zoneSource: known.zoneSource, zoneMap, setting };
  const nowhere = { ...base, climate: null, openClimate: null, warnings: [] };
  if (lat === null || lon === null) return { kind: "place", place: { ...nowhere, fault: "Enter a ZIP code, or latitude and longitude." } };
  const answer = climateAt(stations(), { lat, lon, elevationFt: key.elevationFt ?? null });
  if (answer.kind === "fault") {
    if (answer.field !== "place") return fault(answer.field, answer.message);
    return { kind: "place", place: { ...nowhere, fault: answer.message } };
  }
  const openClimate = answer.climate;
  const found = known.zone === null ? await zoneDefault(key, lat, lon, openClimate) : known;
  const zone = found.zone === null || found.zoneSource === "hand" ? found.zone : zoneOfSetting(found.zone, setting);
  const warnings = [...answer.warnings, ...(found.warning === null ? [] : [found.warning])];
  const climate = climateOfSetting(openClimate, setting);
  return { kind: "place", place: { ...base, state: state ?? found.state, zone, zoneSource: found.zoneSource, climate, openClimate, warnings, fault: null } };
}

/** The place's year, kept. */
export function placeYearOf(place: Place): PlaceYear | null {
  if (!place.climate) return null;
  memory.twelvemonthYears ??= new Map();
  const { lat, lon, tminF, tmaxF } = place.climate;
  const key = [lat, lon, ...tminF, ...tmaxF].join();
  const kept = memory.twelvemonthYears.get(key) ?? placeYear(place.climate);
  if (memory.twelvemonthYears.size > 200) memory.twelvemonthYears.clear();
  memory.twelvemonthYears.set(key, kept);
  return kept;
}
