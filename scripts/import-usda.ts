// Turns the public source tables into the project's own: prisma/plants/tables/usda-rows.json, usda-native.json, usda-genera.json
// and street-trees.json, with the rows that the dataset uses.
//   node_modules/.bin/tsx scripts/import-usda.ts [folder of the source tables]
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { StreetTreeCells } from "../lib/plants/street-tree";
import { streetTreesFile } from "../lib/plants/street-tree";
import type { Taxon } from "../lib/plants/taxon";
import { taxonFinder } from "../lib/plants/taxon-finder";
import { USDA_COLUMNS, usdaGeneraFile, usdaNativeFile, usdaRowsFile } from "../lib/plants/usda-table";
import { datasetRead } from "../lib/server/dataset-files";

/** Zone 7 reaches down to 0 °F; a plant whose range goes to 5 °F or colder gets through most of its winters. */
const ZONE_7_F = 5;
const PUBLIC_DOMAIN = "public domain (US government work)";

const root = join(import.meta.dirname, "..");
const folder = process.argv[2] ?? join(root, "../shared/data/plants");
const target = join(root, "prisma/plants/tables");

function tableRead(name: string): Record<string, string>[] {
  const [head, ...lines] = readFileSync(join(folder, name), "utf8").trimEnd().split("\n");
  const columns = (head ?? "").split("\t");
  return lines.map((line) => Object.fromEntries(line.split("\t").map((cell, i) => [columns[i] ?? "", cell.trim()])));
}

/** One row a line, so that a change of the table can be read as a change. */
function tableWrite(name: string, head: Record<string, unknown>, key: string, rows: Record<string, unknown>): void {
  const lines = Object.keys(rows)
    .sort()
    .map((row) => `${JSON.stringify(row)}:${JSON.stringify(rows[row])}`);
  const heads = Object.entries(head).map(([k, v]) => `${JSON.stringify(k)}:${JSON.stringify(v)},\n`);
  const json = `{\n${heads.join("")}${JSON.stringify(key)}:{\n${lines.join(",\n")}\n}\n}\n`;
  mkdirSync(target, { recursive: true });
  writeFileSync(join(target, name), json);
  console.log(`${name}: ${lines.length} rows, ${Math.round(json.length / 1000)} kB`);
}

const words = (cell: string | undefined): string | null => cell || null;
const figure = (cell: string | undefined): number | null => (cell ? Number(cell) : null);
/** Names of both sides in one writing: "Acer × freemanii", "Acer ×freemanii", "Acer x freemanii"; ssp. and subsp. */
const nameKey = (name: string): string =>
  name
    .replace(/\b(ssp|subsp)\. /g, "subsp. ")
    .replace(/(×\s*|\sx\s)/g, " ")
    .replace(/\s+/g, " ")
    .trim()
    .toLowerCase();

const taxa: readonly Taxon[] = datasetRead().taxa.map((t) => t.taxon);
const symbols = new Set(taxa.flatMap((t) => t.usda ?? []));

const characteristics = tableRead("usda_characteristics.tsv");
const rows = Object.fromEntries(
  characteristics
    .filter((r) => symbols.has(r.symbol ?? ""))
    .map((r) => [
      r.symbol ?? "",
      [
        r.name ?? "",
        figure(r.height_mature_feet),
        words(r.shade_tolerance),
        words(r.moisture_use),
        figure(r.temperature_minimum_f),
        words(r.bloom_period),
        r.leaf_retention ? r.leaf_retention === "Y" : null,
        words(r.growth_rate),
        figure(r.ph_minimum),
        figure(r.ph_maximum),
        words(r.salinity_tolerance),
        words(r.commercial_availability),
      ],
    ]),
);
const usdaHead = {
  source: "PLANTS characteristics data, US Department of Agriculture, Natural Resources Conservation Service",
  licence: PUBLIC_DOMAIN,
  note: "By symbol; the symbols that the dataset uses. Heights in feet. minTempF is the lowest temperature of the native range, not a garden hardiness.",
  columns: USDA_COLUMNS,
};
usdaRowsFile.parse({ ...usdaHead, rows });
tableWrite("usda-rows.json", usdaHead, "rows", rows);

const routine: Record<string, string[]> = {};
for (const r of characteristics) {
  const coldest = figure(r.temperature_minimum_f);
  if (r.commercial_availability !== "Routinely Available" || coldest === null || coldest > ZONE_7_F) continue;
  const species = routine[r.genus ?? ""] ?? [];
  species.push((r.name ?? "").slice((r.genus ?? "").length + 1));
  routine[r.genus ?? ""] = species;
}
const generaHead = {
  source: usdaHead.source,
  licence: PUBLIC_DOMAIN,
  note: `Genera with species that the table calls Routinely Available and whose native range goes down to ${ZONE_7_F} °F or colder.`,
};
usdaGeneraFile.parse({ ...generaHead, genera: routine });
tableWrite("usda-genera.json", generaHead, "genera", routine);

const nativity = tableRead("usda_plants_nativity_by_state.tsv");
const byName = new Map(nativity.map((r) => [nameKey(r.name ?? ""), r]));
/** A name the nativity table has: the accepted name, else a former one of the same botanical rank. */
const nativityRow = (t: Taxon) => [t.botanical, ...t.synonyms.filter((s) => !s.includes("'"))].map((name) => byName.get(nameKey(name))).find((r) => r);
const symbolOf: Record<string, string> = {};
for (const t of taxa) {
  if (t.usda || t.cultivar || t.tradeDesignation) continue;
  const row = nativityRow(t);
  if (row?.symbol) symbolOf[t.botanical] = row.symbol;
}
for (const t of taxa) {
  const row = byName.get(nameKey(t.botanical));
  if (!t.usda && row?.symbol) symbolOf[t.botanical] ??= row.symbol;
}
const wanted = new Set([...symbols, ...Object.values(symbolOf)]);
const native = Object.fromEntries(nativity.filter((r) => wanted.has(r.symbol ?? "")).map((r) => [r.symbol ?? "", [r.native ?? "", r.introduced ?? ""]]));
const nativeHead = {
  source: "PLANTS nativity by state, US Department of Agriculture, Natural Resources Conservation Service",
  licence: PUBLIC_DOMAIN,
  note: "By symbol: states it is native to, states it is introduced in. symbolOf: symbols of names that the characteristics table does not have.",
  symbolOf: Object.fromEntries(Object.entries(symbolOf).sort(([a], [b]) => (a < b ? -1 : 1))),
};
usdaNativeFile.parse({ ...nativeHead, rows: native });
tableWrite("usda-native.json", nativeHead, "rows", native);

const LEAST_TREES = 15;
/** What the street-tree table means where its name alone does not tell: street honeylocusts are thornless, its Japanese cherry is 'Kanzan'. */
const STREET_NAMES: Readonly<Record<string, string>> = {
  "Gleditsia triacanthos": "Gleditsia triacanthos f. inermis",
  "Pinus thunbergiana": "Pinus thunbergii",
  "Populus sargentii": "Populus deltoides",
  "Prunus serrulata": "Prunus serrulata 'Kanzan'",
};
const find = taxonFinder(taxa);
const species: Record<string, StreetTreeCells[]> = {};
for (const r of tableRead("usfs_urban_tree_dimensions.tsv")) {
  const printed = STREET_NAMES[r.species ?? ""] ?? r.species ?? "";
  const found = printed.includes(" sp.") ? null : find({ printed });
  const trees = Number(r.n_age15plus);
  if (found?.kind !== "taxon" || trees < LEAST_TREES) continue;
  const { name } = found.taxon;
  const three = (prefix: string): [number, number, number] => [Number(r[`${prefix}_p50_age15plus`]), Number(r[`${prefix}_p90`]), Number(r[`${prefix}_max`])];
  species[name] = [...(species[name] ?? []), [trees, three("ht_ft"), three("crown_ft")]];
}
const streetHead = {
  source: "Urban Tree Database, US Forest Service, Pacific Southwest Research Station",
  licence: PUBLIC_DOMAIN,
  note: `Street trees of 17 cities. Each group: trees of 15 years or more (at least ${LEAST_TREES}); height in feet: median, 90th percentile, greatest; crown spread the same.`,
};
streetTreesFile.parse({ ...streetHead, species });
tableWrite("street-trees.json", streetHead, "species", species);

const unknown = [...symbols].filter((s) => !(s in rows));
if (unknown.length) console.log(`symbols without a row of characteristics: ${unknown.join(" ")}`);
