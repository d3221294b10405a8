// The dataset against the USDA characteristics table, field by field, with the tolerance of each.
import { checkedValue, rangesAgree, rangeText, type UnexplainedValue } from "./checked-value";
import { daysMeet, monthSpan } from "./day-span";
import type { Taxon } from "./taxon";
import type { UsdaBloom, UsdaRow } from "./usda-table";
import type { Foliage, Light, Moisture } from "./vocabulary";

const SOURCE = "usda";

/** Months that a season of the table stands for, 1–12; it names seasons for the whole country. */
const BLOOM_MONTHS: Record<Exclude<UsdaBloom, "Indeterminate">, readonly [number, number]> = {
  Winter: [12, 2],
  "Late Winter": [2, 3],
  "Early Spring": [3, 4],
  "Mid Spring": [4, 5],
  "Late Spring": [5, 6],
  Spring: [3, 5],
  "Early Summer": [6, 6],
  "Mid Summer": [7, 7],
  "Late Summer": [8, 8],
  Summer: [6, 8],
  Fall: [9, 11],
};
/** Days a bloom may lie outside the season named. */
const BLOOM_SLACK_DAYS = 30;

const KEEPS_LEAVES: Record<Foliage, readonly boolean[]> = {
  evergreen: [true],
  wintergreen: [true, false],
  "semi-evergreen": [true, false],
  deciduous: [false],
  "dies back": [false],
};
const MOISTURE_FITS: Record<NonNullable<UsdaRow["moisture"]>, readonly Moisture[]> = { Low: ["dry", "average"], Medium: ["average", "moist"], High: ["moist", "wet"] };
const GROWTH_STEP = { Slow: 0, Moderate: 1, Rapid: 2, slow: 0, medium: 1, fast: 2 } as const;
const SALT_STEP = { None: 0, Low: 0, Medium: 1, High: 2, low: 0, medium: 1, high: 2 } as const;
const WOODY: readonly Taxon["kind"][] = ["tree", "shrub", "conifer", "vine"];

/** The coldest zone whose winters a temperature stands for: −28 °F is zone 4 (−30 to −20 °F). */
export const zoneOfMinTemp = (minTempF: number): number => Math.floor((minTempF + 70) / 10);

/** A table's shade tolerance against the light a plant does well in: it errs only where the two exclude each other. */
function shadeFits(shade: NonNullable<UsdaRow["shade"]>, light: readonly Light[]): boolean {
  switch (shade) {
    case "Intolerant":
      return light.includes("sun") && !light.includes("shade");
    case "Intermediate":
      return light.some((l) => l !== "shade");
    case "Tolerant":
      return light.some((l) => l !== "sun");
  }
}

function bloomCheck(taxon: Taxon, season: Exclude<UsdaBloom, "Indeterminate">): UnexplainedValue | null {
  const blooms = taxon.features.filter((f) => f.kind === "bloom");
  if (blooms.length === 0) return null;
  const theirs = monthSpan(...BLOOM_MONTHS[season]);
  const agrees = blooms.some((b) => daysMeet([b.startDay, b.endDay], theirs, BLOOM_SLACK_DAYS));
  return checkedValue(taxon, "features.bloom", SOURCE, blooms.map((b) => `${b.from}–${b.to}`).join(", "), season, agrees);
}

/**
 * One species against its row. Height: our range, widened by a quarter, holds the table's one figure of mature height.
 * Hardiness: the lowest temperature of the native range is no garden hardiness; only where it is more than one zone warmer than our
 * coldest zone is it held against us. Growth and salt: within one class. pH: ranges meet.
 */
export function usdaChecks(taxon: Taxon, row: UsdaRow): UnexplainedValue[] {
  const check = (field: string, ours: string, theirs: string, agrees: boolean) => checkedValue(taxon, field, SOURCE, ours, theirs, agrees);
  const values: (UnexplainedValue | null)[] = [];
  const woody = WOODY.includes(taxon.kind);
  if (row.heightFt !== null)
    values.push(check("height", rangeText(taxon.heightFt), rangeText([row.heightFt, row.heightFt]), rangesAgree(taxon.heightFt, [row.heightFt, row.heightFt])));
  if (row.minTempF !== null) {
    const zone = zoneOfMinTemp(row.minTempF);
    values.push(check("zones", `zone ${taxon.zoneLow}`, `native range to ${row.minTempF} °F (zone ${zone})`, zone - taxon.zoneLow <= 1));
  }
  if (row.moisture) {
    const fits = MOISTURE_FITS[row.moisture];
    const agrees = taxon.moisture.some((m) => fits.includes(m));
    values.push(check("moisture", taxon.moisture.join(", "), `${row.moisture} moisture use`, agrees));
  }
  if (row.shade) values.push(check("light", taxon.light.join(", "), `${row.shade} of shade`, shadeFits(row.shade, taxon.light)));
  if (row.bloom && row.bloom !== "Indeterminate") values.push(bloomCheck(taxon, row.bloom));
  if (row.evergreen !== null)
    values.push(check("foliage", taxon.foliage, row.evergreen ? "keeps its leaves" : "drops its leaves", KEEPS_LEAVES[taxon.foliage].includes(row.evergreen)));
  if (row.growth && woody) values.push(check("rate", taxon.growthRate, row.growth, Math.abs(GROWTH_STEP[taxon.growthRate] - GROWTH_STEP[row.growth]) <= 1));
  if (row.salt) values.push(check("salt", taxon.salt, row.salt, Math.abs(SALT_STEP[taxon.salt] - SALT_STEP[row.salt]) <= 1));
  if (row.phLow !== null && row.phHigh !== null)
    values.push(check("ph", rangeText(taxon.ph, "pH"), rangeText([row.phLow, row.phHigh], "pH"), rangesAgree(taxon.ph, [row.phLow, row.phHigh], 0)));
  return values.filter((v) => v !== null);
}

/** Names without hybrid signs, ranks and the infraspecific part. */
const speciesKey = (name: string): string => name.replace(/×\s*/g, "").split(" ").slice(0, 2).join(" ").toLowerCase();

/** The symbol's row must be of the same species, by its accepted or a former name. */
export function symbolCheck(taxon: Taxon, row: UsdaRow): UnexplainedValue {
  const names = [taxon.botanical, ...taxon.synonyms].map(speciesKey);
  return checkedValue(taxon, "usda", SOURCE, taxon.botanical, row.name, names.includes(speciesKey(row.name)));
}
