// The open dataset as it lies in prisma/plants, for checks against outside truth.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "yaml";
import type { Station } from "../../lib/place/station";
import { decodeStations } from "../../lib/place/station-table";
import type { Taxon } from "../../lib/plants/taxon";
import { genusTaxa } from "../../lib/plants/taxon-load";

const root = join(import.meta.dirname, "../..");

/** Every taxon of the genus files; a file with faults gives what it can. */
export function datasetTaxa(): readonly Taxon[] {
  const folder = join(root, "prisma/plants");
  return readdirSync(folder)
    .filter((name) => name.endsWith(".yaml") && name !== "sources.yaml")
    .sort()
    .flatMap((name) => genusTaxa(name, parse(readFileSync(join(folder, name), "utf8"))).taxa);
}

export function stationsRead(): readonly Station[] {
  return decodeStations(JSON.parse(readFileSync(join(root, "prisma/climate/stations.json"), "utf8")));
}

const key = (name: string): string =>
  name
    .replace(/ × /g, " ")
    .replace(/ (subsp|ssp|var)\. /g, " var. ")
    .toLowerCase();

/** Taxa by accepted name and by synonym. */
export function taxaByName(taxa: readonly Taxon[]): (name: string) => Taxon | null {
  const accepted = new Map(taxa.map((t) => [key(t.name), t]));
  const synonyms = new Map(taxa.flatMap((t) => t.synonyms.map((s) => [key(s), t] as const)));
  return (name) => accepted.get(key(name)) ?? synonyms.get(key(name)) ?? null;
}

/** The first of the names that the dataset has; a species it has only as cultivars gives the first of those. */
export function taxonOf(names: readonly string[], taxa: readonly Taxon[], byName: (name: string) => Taxon | null): Taxon | null {
  for (const name of names) {
    const found = byName(name) ?? taxa.find((t) => key(t.botanical) === key(name)) ?? null;
    if (found) return found;
  }
  return null;
}
