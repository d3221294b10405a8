// What the stations say of the constants of lib/place, each station left out in turn.
//   node_modules/.bin/tsx scripts/calibrate-climate.ts
import { climateAt, milesBetween } from "../lib/place/climate-at";
import { placeYear } from "../lib/place/place-year";
import type { Station } from "../lib/place/station";
import { zoneParse, zoneRangeF } from "../lib/place/zone";
import { zoneEstimated } from "../lib/place/zone-estimate";
import { zipRows } from "../lib/server/zip-table";
import { stationsRead } from "../tests/outside/dataset";

const EVERY = 12;
const NEIGHBORS = 8;
const stations = stationsRead();
const contiguous = stations.filter((s) => s.lat > 24 && s.lat < 50 && s.lon > -125 && s.lon < -66);

const neighbors = (s: Station): { station: Station; miles: number }[] =>
  contiguous
    .filter((t) => t.id !== s.id && Math.abs(t.lat - s.lat) < 1 && Math.abs(t.lon - s.lon) < 1.4)
    .map((station) => ({ station, miles: milesBetween(s, station) }))
    .filter((n) => n.miles > 1)
    .sort((a, b) => a.miles - b.miles)
    .slice(0, NEIGHBORS);

/** Least squares of the difference in temperature on that in elevation, near pairs first; °F per 1,000 ft of rise. */
function lapseFitted(pairs: readonly { a: Station; b: Station; miles: number }[], temperature: (s: Station) => number): number {
  const rise = ({ a, b }: { a: Station; b: Station }) => (b.elevationFt - a.elevationFt) / 1000;
  const sum = (value: (p: { a: Station; b: Station; miles: number }) => number) => pairs.reduce((total, p) => total + value(p) / (p.miles + 5), 0);
  return -sum((p) => rise(p) * (temperature(p.b) - temperature(p.a))) / sum((p) => rise(p) ** 2);
}

const pairs = contiguous.flatMap((a) => neighbors(a).map(({ station, miles }) => ({ a, b: station, miles })));
const months = Array.from({ length: 12 }, (_, m) => m);
console.log("Lapse, °F per 1,000 ft, January to December");
for (const [label, of] of [
  ["minima", "tminF"],
  ["maxima", "tmaxF"],
] as const)
  console.log(`  ${label}  ${months.map((m) => lapseFitted(pairs, (s) => s[of][m] ?? 0).toFixed(1)).join("  ")}`);

const errors: Record<string, number[]> = { "mean minimum, °F": [], "mean maximum, °F": [], "degree days a year, %": [], "last 32 °F, days": [], "first 32 °F, days": [] };
for (const s of contiguous.filter((_, i) => i % EVERY === 0)) {
  const answer = climateAt(
    stations.filter((t) => t.id !== s.id),
    s,
  );
  if (answer.kind === "fault") continue;
  const { climate } = answer;
  const mean = (a: readonly number[], b: readonly number[]) => a.reduce((sum, x, i) => sum + x - (b[i] ?? 0), 0) / 12;
  errors["mean minimum, °F"]?.push(mean(climate.tminF, s.tminF));
  errors["mean maximum, °F"]?.push(mean(climate.tmaxF, s.tmaxF));
  if (s.degreeDaysYear > 500) errors["degree days a year, %"]?.push(((placeYear(climate).degreeDayTotals.at(-1) ?? 0) / s.degreeDaysYear - 1) * 100);
  if (s.freeze.kind !== "dates" || climate.lastFreezeDay === null || climate.firstFreezeDay === null) continue;
  errors["last 32 °F, days"]?.push(climate.lastFreezeDay - s.freeze.lastDay);
  errors["first 32 °F, days"]?.push(climate.firstFreezeDay - Math.min(365, s.freeze.firstDay));
}
console.log(`Every ${EVERY}th station from its neighbors: mean error, mean absolute error, n`);
for (const [label, values] of Object.entries(errors)) {
  const mean = (xs: readonly number[]) => xs.reduce((sum, x) => sum + x, 0) / xs.length;
  console.log(`  ${label.padEnd(22)} ${mean(values).toFixed(1).padStart(5)} ${mean(values.map(Math.abs)).toFixed(1).padStart(5)} ${values.length}`);
}

// The zone of a place from its coldest month, against the 2023 table, every thirteenth ZIP code that has one.
const EVERY_ZIP = 13;
const zips = zipRows()
  .filter((row, i) => row.zone !== null && i % EVERY_ZIP === 0)
  .flatMap((row) => {
    const answer = climateAt(stations, row);
    const zone = zoneParse(row.zone ?? "");
    if (answer.kind === "fault" || zone === null) return [];
    const [low, high] = zoneRangeF(zone);
    return [{ coldestF: Math.min(...answer.climate.tminF), extremeF: (low + high) / 2, zone, estimate: zoneEstimated(answer.climate) }];
  });
const average = (of: (z: (typeof zips)[number]) => number) => zips.reduce((sum, z) => sum + of(z), 0) / zips.length;
const [meanCold, meanExtreme] = [average((z) => z.coldestF), average((z) => z.extremeF)];
const factor = average((z) => (z.coldestF - meanCold) * (z.extremeF - meanExtreme)) / average((z) => (z.coldestF - meanCold) ** 2);
const share = (halves: number) => `${Math.round(100 * average((z) => (Math.abs(z.zone - z.estimate) <= halves / 2 ? 1 : 0)))} %`;
console.log(`Zone from the coldest month's mean minimum, ${zips.length} ZIP codes: extreme = ${factor.toFixed(2)} × minimum ${(meanExtreme - factor * meanCold).toFixed(1)} °F`);
console.log(`  as in use: the half zone itself ${share(0)}, within one half zone ${share(1)}, within two ${share(2)}`);
