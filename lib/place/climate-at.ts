// Normals at a point: the nearest eight stations, brought to its elevation, weighted by distance.
import type { Climate } from "./climate";
import { freezeDayMoved } from "./freeze-day";
import { harmonicSeries } from "./harmonic";
import { lapseShiftsF } from "./lapse";
import type { Station } from "./station";

const NEAREST = 8;
/** No station within this distance: the normals do not reach there. */
const REACH_MILES = 150;
/**
 * A station that stands 1,000 ft higher or lower counts as so many miles farther off: what the lapse does not explain of a
 * mountain (valley fog, cold pools) is shared with stations of its own height. Of every tenth station from its neighbors the
 * yearly degree days then err by 7.0 % instead of 7.4 (scripts/calibrate-climate.ts).
 */
const MILES_A_THOUSAND_FT = 25;
/** Softens the weight of a station next door, which has its own site error. */
const NEAR_MILES = 2;
const POWER = 2;
const EARTH_RADIUS_MILES = 3958.8;
/** Death Valley and Denali. */
const LOWEST_FT = -282;
const HIGHEST_FT = 20310;
/** An entered elevation so far from what the stations around suggest is likely a slip. */
const STRANGE_RISE_FT = 3000;

export type Point = { readonly lat: number; readonly lon: number; readonly elevationFt?: number | null };

/** The climate, with what is worth knowing about it; or what is wrong, and which entry would put it right. */
export type ClimateAnswer =
  | { readonly kind: "climate"; readonly climate: Climate; readonly warnings: readonly string[] }
  | { readonly kind: "fault"; readonly field: "lat" | "lon" | "elevationFt" | "place"; readonly message: string };

type Near = { readonly station: Station; readonly miles: number; readonly weight: number };

/** Great-circle distance in miles (haversine). */
export function milesBetween(a: { lat: number; lon: number }, b: { lat: number; lon: number }): number {
  const radians = Math.PI / 180;
  const dLat = (b.lat - a.lat) * radians;
  const dLon = (b.lon - a.lon) * radians;
  const h = Math.sin(dLat / 2) ** 2 + Math.cos(a.lat * radians) * Math.cos(b.lat * radians) * Math.sin(dLon / 2) ** 2;
  return 2 * EARTH_RADIUS_MILES * Math.asin(Math.min(1, Math.sqrt(h)));
}

/**
 * The eight stations within reach that `use` accepts and that are nearest over land and in height (by land alone where the
 * elevation is not known), with weights by inverse distance that sum to 1; listed by miles.
 */
function nearestStations(stations: readonly Station[], point: Point, use: (s: Station) => boolean): readonly Near[] {
  const rough = REACH_MILES / 69;
  const apart = (miles: number, s: Station) => Math.hypot(miles, (MILES_A_THOUSAND_FT * (s.elevationFt - (point.elevationFt ?? s.elevationFt))) / 1000);
  const found = stations
    .filter((s) => Math.abs(s.lat - point.lat) <= rough && use(s))
    .map((station) => ({ station, miles: milesBetween(station, point) }))
    .filter((n) => n.miles <= REACH_MILES)
    .map((n) => ({ ...n, apart: apart(n.miles, n.station) }))
    .sort((a, b) => a.apart - b.apart)
    .slice(0, NEAREST)
    .map(({ station, miles, apart: far }) => ({ station, miles, weight: 1 / (far + NEAR_MILES) ** POWER }));
  const sum = found.reduce((total, n) => total + n.weight, 0);
  return found.sort((a, b) => a.miles - b.miles).map((n) => ({ ...n, weight: n.weight / sum }));
}

const weighted = (near: readonly Near[], value: (n: Near) => number): number => near.reduce((sum, n) => sum + n.weight * value(n), 0);
const weightedMonths = (near: readonly Near[], months: (n: Near) => readonly number[]): readonly number[] =>
  Array.from({ length: 12 }, (_, m) => weighted(near, (n) => months(n)[m] ?? 0));
const added = (a: readonly number[], b: readonly number[]): readonly number[] => a.map((x, i) => x + (b[i] ?? 0));

type FreezeDays = Pick<Climate, "lastFreezeDay" | "firstFreezeDay" | "lastFreezeLateDay" | "firstFreezeEarlyDay">;
const NO_FREEZE_DAYS: FreezeDays = { lastFreezeDay: null, firstFreezeDay: null, lastFreezeLateDay: null, firstFreezeEarlyDay: null };

/**
 * Freeze dates, each station's moved by what the lapse does to its minima. The tables give the median and the mild tenth of
 * years; the hard tenth is taken to lie as far on the other side, because the shortest tenth of the growing seasons, which
 * they do give, is what that symmetry leads to (22.4 days short of the median on average; 22.2 by symmetry; 5,031 stations).
 */
function freezeDays(stations: readonly Station[], point: Point, elevationFt: number): FreezeDays {
  // By land alone: a frost hollow and a ridge of one height are less alike than neighbors (6.0 days off against 5.9).
  const near = nearestStations(stations, { lat: point.lat, lon: point.lon }, (s) => s.freeze.kind !== "not recorded");
  const dated = near.flatMap((n) => (n.station.freeze.kind === "dates" ? [{ ...n, freeze: n.station.freeze }] : []));
  const share = dated.reduce((sum, n) => sum + n.weight, 0);
  if (share < 0.5) return NO_FREEZE_DAYS;
  const moved = dated.map(({ station, freeze, weight }) => {
    const daily = harmonicSeries(station.tminF);
    const shift = harmonicSeries(lapseShiftsF(elevationFt - station.elevationFt).minima);
    const last = freezeDayMoved(daily, freeze.lastDay, shift, "rising");
    const first = freezeDayMoved(daily, freeze.firstDay, shift, "falling");
    return { weight: weight / share, last, first, late: last + freeze.lastDay - freeze.lastMildDay, early: first - (freeze.firstMildDay - freeze.firstDay) };
  });
  const mean = (pick: (m: (typeof moved)[number]) => number): number => Math.min(365, Math.max(1, Math.round(moved.reduce((sum, m) => sum + m.weight * pick(m), 0))));
  const [lastFreezeDay, firstFreezeDay] = [mean((m) => m.last), mean((m) => m.first)];
  if (lastFreezeDay >= firstFreezeDay) return NO_FREEZE_DAYS;
  const middle = Math.round((lastFreezeDay + firstFreezeDay) / 2);
  return {
    lastFreezeDay,
    firstFreezeDay,
    lastFreezeLateDay: Math.min(
      middle,
      mean((m) => m.late),
    ),
    firstFreezeEarlyDay: Math.max(
      middle,
      mean((m) => m.early),
    ),
  };
}

function pointFault(point: Point): Extract<ClimateAnswer, { kind: "fault" }> | null {
  const fault = (field: "lat" | "lon" | "elevationFt", message: string) => ({ kind: "fault", field, message }) as const;
  if (!Number.isFinite(point.lat) || Math.abs(point.lat) > 90) return fault("lat", "Latitude must be a number from -90 to 90, such as 40.8.");
  if (!Number.isFinite(point.lon) || Math.abs(point.lon) > 180) return fault("lon", "Longitude must be a number from -180 to 180; in the US it is negative, such as -81.9.");
  const e = point.elevationFt;
  if (e != null && (!Number.isFinite(e) || e < LOWEST_FT || e > HIGHEST_FT))
    return fault(
      "elevationFt",
      `Elevation must lie between ${LOWEST_FT} and ${HIGHEST_FT.toLocaleString("en-US")} ft, the lowest and highest ground in the US. Leave it empty to use that of the stations around.`,
    );
  return null;
}

/**
 * Normals 1981–2010 at a point (model.md §1).
 * @param point degrees, north and east positive; without `elevationFt` the elevation is interpolated from the stations'
 */
export function climateAt(stations: readonly Station[], point: Point): ClimateAnswer {
  const fault = pointFault(point);
  if (fault) return fault;
  // Where nobody has said how high the point lies, the stations cannot be weighed by it: their own mean stands for it.
  const near = nearestStations(stations, point, () => true);
  if (near.length === 0) {
    const hint = point.lon > 0 ? " Longitudes in the US are negative: is a minus sign missing?" : "";
    return {
      kind: "fault",
      field: "place",
      message: `No weather station within ${REACH_MILES} miles of ${point.lat.toFixed(2)}, ${point.lon.toFixed(2)}: the US normals do not reach there.${hint}`,
    };
  }
  const groundFt = weighted(
    nearestStations(stations, { lat: point.lat, lon: point.lon }, () => true),
    (n) => n.station.elevationFt,
  );
  const elevationFt = Math.round(point.elevationFt ?? groundFt);
  const rained = nearestStations(stations, point, (s) => s.rainIn !== null);
  const climate: Climate = {
    lat: point.lat,
    lon: point.lon,
    elevationFt,
    tminF: weightedMonths(near, (n) => added(n.station.tminF, lapseShiftsF(elevationFt - n.station.elevationFt).minima)),
    tmaxF: weightedMonths(near, (n) => added(n.station.tmaxF, lapseShiftsF(elevationFt - n.station.elevationFt).maxima)),
    rainIn: weightedMonths(rained, (n) => n.station.rainIn ?? []),
    sdF: weightedMonths(near, (n) => n.station.sdF),
    ...freezeDays(stations, point, elevationFt),
    stations: near.map((n) => ({ name: n.station.name, state: n.station.state, miles: n.miles, weight: n.weight })),
  };
  const strange = Math.abs(elevationFt - groundFt) > STRANGE_RISE_FT;
  const warnings = [
    ...(strange
      ? [`The stations around lie at about ${Math.round(groundFt / 100) * 100} ft; ${elevationFt.toLocaleString("en-US")} ft is far from that. Check the elevation.`]
      : []),
    ...((near[0]?.miles ?? 0) > 50 ? [`The nearest station is ${Math.round(near[0]?.miles ?? 0)} miles away: figures here are rough.`] : []),
  ];
  return { kind: "climate", climate, warnings };
}
