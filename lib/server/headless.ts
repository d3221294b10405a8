// The engine without the browser. Every verb gives the figures the screens show, from the same functions.
import { readFileSync, statSync } from "node:fs";
import { BED_FILE_MAX, bedFileRead, bedOfFile } from "../papers/bed-file";
import { bedView, type PlacedTaxon } from "../papers/bed-view";
import { groundPaper } from "../papers/ground-view";
import type { Place } from "../place/place";
import { REFERENCE_YEAR } from "../place/reference";
import { zoneText } from "../place/zone";
import { matchName } from "../plants/name-match";
import { searchPlants } from "../plants/search";
import { MONTH_STARTS } from "../plants/thirds";
import { dayIso } from "../season/sentence";
import { nameFinder } from "./bed-import";
import { matchVerb } from "./headless-match";
import { viewPlaceOf } from "./job-context";
import { databaseMigrate } from "./migrate";
import { type PlaceKey, placeFind, placeYearOf } from "./places";
import { databaseSeed } from "./seed";
import { seasonOf, taxaHeld } from "./taxa";

export type HeadlessAnswer = { readonly kind: "answer"; readonly value: unknown } | { readonly kind: "fault"; readonly message: string };

const fault = (message: string): HeadlessAnswer => ({ kind: "fault", message });
const answer = (value: unknown): HeadlessAnswer => ({ kind: "answer", value });

const USAGE = `Usage: npm run -s twelvemonth -- VERB … --json
  place ZIP|LAT,LON[,ELEVFT]              zone, freeze dates, degree days
  plants QUERY [--limit N]                best matches first
  plants --all                            every taxon in full
  windows NAME… --place ZIP|LAT,LON[,ELEVFT]   when things happen there (NAME - reads names from standard input, one a line)
  bed FILE [--year N]                     a bed file checked (FILE - reads standard input)
  match FILE                              a supplier's list (CSV) matched line by line (FILE - reads standard input)`;

type Args = { readonly words: readonly string[]; readonly options: Readonly<Record<string, string | true>> };

const TAKES_VALUE = new Set(["place", "limit", "year"]);

/** Splits words from --options; an option that takes a value takes the next word. A minus number is a word. */
function argsRead(argv: readonly string[]): Args | { readonly message: string } {
  const words: string[] = [];
  const options: Record<string, string | true> = {};
  for (let i = 0; i < argv.length; i++) {
    const arg = argv[i] ?? "";
    const named = /^--([a-z-]+)(?:=(.*))?$/s.exec(arg);
    if (!named) {
      words.push(arg);
      continue;
    }
    const name = named[1] ?? "";
    if (!TAKES_VALUE.has(name)) {
      if (!["json", "all", "help"].includes(name)) return { message: `--${name} is not an option.\n${USAGE}` };
      options[name] = true;
      continue;
    }
    const value = named[2] ?? argv[++i];
    if (value === undefined) return { message: `--${name} needs a value.` };
    options[name] = value;
  }
  return { words, options };
}

/** "05401", or "44.5,-73.2" or "44.5,-73.2,200". */
function placeKeyRead(text: string): PlaceKey | string {
  if (/^\d{5}$/.test(text)) return { zip: text };
  const parts = text.split(",").map((part) => part.trim());
  if (parts.length < 2 || parts.length > 3) return `place: "${text}" is neither a five-digit ZIP code nor LAT,LON[,ELEVFT].`;
  const numbers = parts.map(Number);
  if (parts.some((part) => part === "") || numbers.some((n) => !Number.isFinite(n))) return `place: "${text}" holds something that is not a number.`;
  const [lat = Number.NaN, lon = Number.NaN, elevationFt = null] = numbers;
  if (Math.abs(lat) > 90) return `place: latitude ${lat} is not between −90 and 90.`;
  if (Math.abs(lon) > 180) return `place: longitude ${lon} is not between −180 and 180.`;
  return { lat, lon, elevationFt };
}

async function placeRead(text: string): Promise<Place | string> {
  const key = placeKeyRead(text);
  if (typeof key === "string") return key;
  const found = await placeFind(key);
  return found.kind === "fault" ? `${found.field}: ${found.message}` : found.place;
}

const isoOrNull = (day: number | null) => (day === null ? null : dayIso(day));
const zoneOrNull = (zone: number | null) => (zone === null ? null : zoneText(zone));

async function placeVerb(words: readonly string[]): Promise<HeadlessAnswer> {
  const [text, ...more] = words;
  if (text === undefined || more.length) return fault(`place takes one place.\n${USAGE}`);
  const place = await placeRead(text);
  if (typeof place === "string") return fault(place);
  const year = placeYearOf(place);
  if (!place.climate || !year) return fault(`place: ${place.fault ?? "no climate is known there."}`);
  const totals = MONTH_STARTS.slice(1).map((day) => Math.round((year.degreeDayTotals[day - 1] ?? 0) * 10) / 10);
  return answer({
    zip: place.zip,
    state: place.state,
    lat: place.climate.lat,
    lon: place.climate.lon,
    elevationFt: Math.round(place.climate.elevationFt),
    zone: zoneOrNull(place.zone),
    zoneMap: zoneOrNull(place.zoneMap),
    lastFreeze: isoOrNull(place.climate.lastFreezeDay),
    firstFreeze: isoOrNull(place.climate.firstFreezeDay),
    degreeDays50: { monthEnd: totals, annual: totals.at(-1) ?? 0 },
    normals: "NOAA 1981–2010",
    warnings: place.warnings,
  });
}

async function plantsVerb({ words, options }: Args): Promise<HeadlessAnswer> {
  const held = await taxaHeld();
  if (options.all) return words.length ? fault("plants: either --all or a query, not both.") : answer(held.taxa);
  const query = words.join(" ").trim();
  if (!query) return fault(`plants needs a query, or --all.\n${USAGE}`);
  const limit = Number(options.limit ?? 10);
  if (!Number.isInteger(limit) || limit < 1 || limit > 1000) return fault("limit: a whole number from 1 to 1000.");
  const hits = searchPlants(held.index, query, limit);
  return answer(
    hits.map(({ taxon, score, matchedName }) => ({
      name: taxon.name,
      tradeDesignation: taxon.tradeDesignation,
      commonNames: taxon.commonNames,
      kind: taxon.kind,
      zoneLow: taxon.zoneLow,
      zoneHigh: taxon.zoneHigh,
      score: Math.round(score * 1000) / 1000,
      matchedName,
    })),
  );
}

async function windowsVerb({ words, options }: Args): Promise<HeadlessAnswer> {
  if (typeof options.place !== "string") return fault(`windows needs --place ZIP or LAT,LON.\n${USAGE}`);
  if (!words.length) return fault(`windows needs a plant's name, or - for names on standard input.\n${USAGE}`);
  const place = await placeRead(options.place);
  if (typeof place === "string") return fault(place);
  const year = placeYearOf(place);
  if (!year) return fault(`place: ${place.fault ?? "no climate is known there."}`);
  const names =
    words.length === 1 && words[0] === "-"
      ? readFileSync(0, "utf8")
          .split(/\r?\n/)
          .map((line) => line.trim())
          .filter(Boolean)
      : words;
  const held = await taxaHeld();
  return answer(
    names.map((query) => {
      const match = matchName(held.index, query);
      const taxon = match && !match.fallback ? held.byId.get(match.taxonId) : undefined;
      if (!taxon) return { query, name: null, windows: [] };
      const season = seasonOf(held, taxon, year);
      return {
        query,
        name: taxon.name,
        basis: season.basis,
        basisNote: season.basisNote,
        leaves: season.leaves && { ...season.leaves, onSpreadDays: season.leafSpread?.onDays ?? null, offSpreadDays: season.leafSpread?.offDays ?? null },
        windows: season.windows.map((w) => ({
          kind: w.kind,
          color: w.feature.color,
          show: w.feature.show,
          drive: w.drive,
          startDay: w.startDay,
          endDay: w.endDay,
          peakDay: w.peakDay,
          spreadDays: w.spreadDays,
          degreeDays: w.degreeDays,
          degreeDaysFull: w.degreeDaysFull ?? null,
          sources: w.sources,
        })),
      };
    }),
  );
}

function fileText(path: string): { text: string } | { message: string } {
  if (path === "-") return { text: readFileSync(0, "utf8") };
  try {
    const { size } = statSync(path);
    if (size > BED_FILE_MAX * 2) return { message: `file: ${(size / 1e6).toFixed(1)} MB is no bed file: at most 2 MB are read.` };
    return { text: readFileSync(path, "utf8") };
  } catch (error) {
    return { message: `file: ${path} cannot be read (${error instanceof Error ? error.message : String(error)}).` };
  }
}

async function bedVerb({ words, options }: Args): Promise<HeadlessAnswer> {
  const [path, ...more] = words;
  if (path === undefined || more.length) return fault(`bed takes one file.\n${USAGE}`);
  const year = options.year === undefined ? undefined : Number(options.year);
  if (year !== undefined && (!Number.isInteger(year) || year < 0 || year > 20)) return fault("year: a whole number of years after planting, 0 to 20.");
  const file = fileText(path);
  if ("message" in file) return fault(file.message);
  const read = bedFileRead(file.text);
  if (read.kind === "fault") return fault(`${read.field}: ${read.message}`);
  const made = bedOfFile(read.file, await nameFinder());
  if (made.kind === "fault") return fault(`${made.field}: ${made.message}`);
  const found = await placeFind(read.file.place);
  if (found.kind === "fault") return fault(`place.${found.field}: ${found.message}`);
  const { place } = found;
  if (place.fault) return fault(`place: ${place.fault}`);
  const held = await taxaHeld();
  const placeYear = placeYearOf(place) ?? REFERENCE_YEAR;
  const placed: Record<string, PlacedTaxon> = {};
  for (const { taxonId } of made.bed.rows) {
    const taxon = held.byId.get(taxonId);
    if (taxon) placed[taxonId] = { taxon, season: seasonOf(held, taxon, placeYear) };
  }
  const viewPlace = viewPlaceOf(place);
  const view = bedView(made.bed, placed, viewPlace, read.file.targets, year);
  const nameOfRow = new Map(view.rows.map((r) => [r.row.id, r.row.taxonName]));
  return answer({
    site: {
      name: made.bed.name,
      zip: place.zip,
      state: place.state,
      zone: zoneOrNull(place.zone),
      lastFreeze: isoOrNull(viewPlace.lastFreezeDay),
      firstFreeze: isoOrNull(viewPlace.firstFreezeDay),
      areaSqFt: view.areaSqFt,
      ...made.bed.site,
    },
    quantities: view.rows.map((r) => ({ plant: r.row.taxonName, quantity: r.quantity, spacingFt: r.spacingFt, size: r.row.size, existing: r.row.existing })),
    ground: { ...view.ground, ...groundPaper(view) },
    season: {
      year: view.yearShown,
      halfMonths: view.season.halfMonths.map(({ index, label, interest, target, byKind, bare }) => ({ index, label, interest, target, byKind, bare })),
      gaps: view.season.gaps,
      score: view.season.score,
      restingOnOne: view.season.resting.map(({ index, label, key }) => ({ index, label, plant: nameOfRow.get(key) ?? null })),
    },
    findings: view.findings.map(({ check, severity, plant, message }) => ({ check, severity, plant, message })),
  });
}

/** Runs one command. @param argv words after the program's name */
export async function headlessAnswer(argv: readonly string[]): Promise<HeadlessAnswer> {
  const args = argsRead(argv);
  if ("message" in args) return fault(args.message);
  const [verb, ...words] = args.words;
  if (verb === undefined || args.options.help) return fault(USAGE);
  if (!["place", "plants", "windows", "bed", "match"].includes(verb)) return fault(`"${verb}" is not a verb.\n${USAGE}`);
  await databaseMigrate();
  await databaseSeed((line) => process.stderr.write(`${line}\n`));
  switch (verb) {
    case "place":
      return placeVerb(words);
    case "plants":
      return plantsVerb({ words, options: args.options });
    case "windows":
      return windowsVerb({ words, options: args.options });
    case "match":
      return matchVerb(words);
    default:
      return bedVerb({ words, options: args.options });
  }
}
