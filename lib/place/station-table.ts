// The project's compact table of normals (prisma/climate/stations.json): one array a column, integers.
import { z } from "zod";
import { NORMALS_PERIOD, NORMALS_SOURCE, type Station, type StationFreeze } from "./station";

const whole = z.array(z.number().int());
const wholeOrNone = z.array(z.number().int().nullable());
const twelve = <T extends z.ZodType>(column: T) => z.array(column).length(12);

const stationTable = z.object({
  period: z.string(),
  source: z.string(),
  units: z.record(z.string(), z.string()),
  monthlySdF: z.array(z.number()).length(12),
  count: z.number().int(),
  /** Texts are one string a column, with bars between the stations. */
  id: z.string(),
  name: z.string(),
  state: z.string(),
  lat: whole,
  lon: whole,
  elevation: whole,
  tmin: twelve(whole),
  /** tmax − tmin, a shorter number than tmax. */
  swing: twelve(whole),
  rain: twelve(wholeOrNone),
  /** One letter a station: d dates, n never, a all year, x not recorded. */
  freeze: z.string(),
  last: wholeOrNone,
  lastMild: wholeOrNone,
  first: wholeOrNone,
  firstMild: wholeOrNone,
  degreeDays: whole,
  sdScale: whole,
});
export type StationTable = z.infer<typeof stationTable>;

const LETTERS = { dates: "d", never: "n", "all year": "a", "not recorded": "x" } as const satisfies Record<StationFreeze["kind"], string>;

const UNITS = {
  id: "NOAA station number; texts are joined by |",
  lat: "0.01 degree",
  lon: "0.01 degree",
  elevation: "ft",
  tmin: "0.1 °F, mean daily minimum, January first",
  swing: "0.1 °F, mean daily maximum less minimum",
  rain: "0.01 in",
  freeze: "d dates, n no freeze in the median year, a frost risk all year, x not recorded",
  last: "day of year of the median last 32 °F; below 1 = the year before",
  lastMild: "the last 32 °F comes on this day or later in nine years of ten",
  first: "day of year of the median first 32 °F; over 365 = the year after",
  firstMild: "the first 32 °F comes on this day or earlier in nine years of ten",
  degreeDays: "°F days above 50 in a year, as published",
  sdScale: "0.01, the station's factor on monthlySdF",
};

const tenths = (x: number): number => Math.round(x * 10);

/** Stations as the compact table. `sdScale` is each station's factor on the common monthly sd, in the same order. */
export function stationTableEncode(stations: readonly Station[], sdScale: readonly number[], monthlySdF: readonly number[]): StationTable {
  const months = Array.from({ length: 12 }, (_, m) => m);
  const dated = (pick: (f: Extract<StationFreeze, { kind: "dates" }>) => number) => stations.map((s) => (s.freeze.kind === "dates" ? pick(s.freeze) : null));
  return {
    period: NORMALS_PERIOD,
    source: NORMALS_SOURCE,
    units: UNITS,
    monthlySdF: [...monthlySdF],
    count: stations.length,
    id: stations.map((s) => s.id).join("|"),
    name: stations.map((s) => s.name).join("|"),
    state: stations.map((s) => s.state).join("|"),
    lat: stations.map((s) => Math.round(s.lat * 100)),
    lon: stations.map((s) => Math.round(s.lon * 100)),
    elevation: stations.map((s) => Math.round(s.elevationFt)),
    tmin: months.map((m) => stations.map((s) => tenths(s.tminF[m] ?? 0))),
    swing: months.map((m) => stations.map((s) => tenths(s.tmaxF[m] ?? 0) - tenths(s.tminF[m] ?? 0))),
    rain: months.map((m) => stations.map((s) => (s.rainIn ? Math.round((s.rainIn[m] ?? 0) * 100) : null))),
    freeze: stations.map((s) => LETTERS[s.freeze.kind]).join(""),
    last: dated((f) => f.lastDay),
    lastMild: dated((f) => f.lastMildDay),
    first: dated((f) => f.firstDay),
    firstMild: dated((f) => f.firstMildDay),
    degreeDays: stations.map((s) => s.degreeDaysYear),
    sdScale: sdScale.map((k) => Math.round(k * 100)),
  };
}

function freezeAt(table: StationTable, i: number): StationFreeze {
  switch (table.freeze[i]) {
    case "n":
      return { kind: "never" };
    case "a":
      return { kind: "all year" };
    case "d": {
      const [lastDay, lastMildDay, firstDay, firstMildDay] = [table.last[i], table.lastMild[i], table.first[i], table.firstMild[i]];
      if (lastDay == null || lastMildDay == null || firstDay == null || firstMildDay == null) return { kind: "not recorded" };
      return { kind: "dates", lastDay, lastMildDay, firstDay, firstMildDay };
    }
    default:
      return { kind: "not recorded" };
  }
}

/**
 * Stations of the compact table.
 * @param json the parsed prisma/climate/stations.json
 * @throws ZodError when the file is not such a table: a damaged build, not a user's mistake
 */
export function decodeStations(json: unknown): readonly Station[] {
  const table = stationTable.parse(json);
  const column = (rows: readonly (readonly (number | null)[])[], i: number, unit: number) => rows.map((month) => (month[i] ?? 0) / unit);
  const names = table.name.split("|");
  const states = table.state.split("|");
  return table.id.split("|").map((id, i) => ({
    id,
    name: names[i] ?? "",
    state: states[i] ?? "",
    lat: (table.lat[i] ?? 0) / 100,
    lon: (table.lon[i] ?? 0) / 100,
    elevationFt: table.elevation[i] ?? 0,
    tminF: column(table.tmin, i, 10),
    tmaxF: table.tmin.map((month, m) => ((month[i] ?? 0) + (table.swing[m]?.[i] ?? 0)) / 10),
    rainIn: table.rain[0]?.[i] == null ? null : column(table.rain, i, 100),
    sdF: table.monthlySdF.map((sd) => (sd * (table.sdScale[i] ?? 100)) / 100),
    freeze: freezeAt(table, i),
    degreeDaysYear: table.degreeDays[i] ?? 0,
  }));
}
