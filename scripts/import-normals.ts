// Turns the source tables of normals into prisma/climate/stations.json.
//   node_modules/.bin/tsx scripts/import-normals.ts [folder of the source tables]
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import type { Station, StationFreeze } from "../lib/place/station";
import { stationTableEncode } from "../lib/place/station-table";

const FEET_A_METER = 3.28084;
/** Stations under 300 degree days a year have no k of their own: the median of the others. */
const MEDIAN_SD_SCALE = 0.86;
const MONTH_STARTS = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

const root = join(import.meta.dirname, "..");
const folder = process.argv[2] ?? join(root, "../shared/data/climate");
const text = (name: string): string => readFileSync(join(folder, name), "utf8");
const monthlySdF = z
  .array(z.number())
  .length(12)
  .parse(JSON.parse(text("monthly_sd_f.json")));
const scaleOf = z.record(z.string(), z.number()).parse(JSON.parse(text("station_sd_scale_k.json")));

/** "04/18" as day of year; null for a blank. */
function dayOfYear(text: string | undefined): number | null {
  const found = /^(\d\d)\/(\d\d)$/.exec(text ?? "");
  return found ? (MONTH_STARTS[Number(found[1]) - 1] ?? 0) + Number(found[2]) : null;
}

/** -4444 is NOAA's mark for a risk of frost all year; a blank with a 365-day season is a place without frost. */
function freezeOf(row: Record<string, string>): StationFreeze {
  const [last, lastMild, first, firstMild] = [row.last32_p50, row.last32_p90, row.first32_p50, row.first32_p90].map(dayOfYear);
  if (last == null || lastMild == null || first == null || firstMild == null) {
    if (row.last32_p50 === "-4444") return { kind: "all year" };
    return row.gsl32_p50 === "365" ? { kind: "never" } : { kind: "not recorded" };
  }
  // The frost season runs from July to July: what falls on the other side of New Year counts on.
  const spring = (d: number) => (d > 212 ? d - 365 : d);
  const fall = (d: number) => (d < 182 ? d + 365 : d);
  return { kind: "dates", lastDay: spring(last), lastMildDay: spring(lastMild), firstDay: fall(first), firstMildDay: fall(firstMild) };
}

const [head, ...lines] = text("noaa_normals_1981_2010_stations.tsv").trimEnd().split("\n");
const columns = (head ?? "").split("\t");
const rows = lines.map((line) => Object.fromEntries(line.split("\t").map((cell, i) => [columns[i] ?? "", cell])));
const monthly = (row: Record<string, string>, prefix: string): number[] => Array.from({ length: 12 }, (_, m) => Number(row[`${prefix}_${String(m + 1).padStart(2, "0")}`]));

const stations: Station[] = rows.map((row) => ({
  id: row.station ?? "",
  name: row.name ?? "",
  state: row.state ?? "",
  lat: Number(row.lat),
  lon: Number(row.lon),
  elevationFt: Number(row.elev_m) * FEET_A_METER,
  tminF: monthly(row, "tmin_f"),
  tmaxF: monthly(row, "tmax_f"),
  rainIn: row.prcp_in_01 === "" ? null : monthly(row, "prcp_in"),
  sdF: monthlySdF.map((sd) => sd * (scaleOf[row.station ?? ""] ?? MEDIAN_SD_SCALE)),
  freeze: freezeOf(row),
  degreeDaysYear: Number(row.gdd50_ann),
}));

const table = stationTableEncode(
  stations,
  stations.map((s) => scaleOf[s.id] ?? MEDIAN_SD_SCALE),
  monthlySdF,
);
// One column a line, so that a change of the table can be read as a change.
const json = `{\n${Object.entries(table)
  .map(([key, value]) => `${JSON.stringify(key)}:${JSON.stringify(value)}`)
  .join(",\n")}\n}\n`;
writeFileSync(join(root, "prisma/climate/stations.json"), json);
console.log(
  `${stations.length} stations, ${(json.length / 1e6).toFixed(2)} MB; without rain ${stations.filter((s) => !s.rainIn).length}, without k ${stations.filter((s) => !(s.id in scaleOf)).length}`,
);
