// The open dataset as the server holds it: read from the database once, with its search index and, by place, its seasons.
import type { PlaceYear } from "../place/place-year";
import { type PlantIndex, plantIndex } from "../plants/search";
import type { Taxon } from "../plants/taxon";
import { taxonSeason } from "../season/taxon-season";
import type { TaxonSeason } from "../season/window";
import { database } from "./database";

type Held = { mark: string; taxa: readonly Taxon[]; byId: ReadonlyMap<string, Taxon>; index: PlantIndex<Taxon>; seasons: WeakMap<PlaceYear, Map<string, TaxonSeason>> };
const memory = globalThis as { twelvemonthTaxa?: Promise<Held> };

async function read(): Promise<Held> {
  const [mark, rows] = await Promise.all([
    database().mark.findUnique({ where: { key: "Taxon" } }),
    database().taxon.findMany({ select: { data: true }, orderBy: { name: "asc" } }),
  ]);
  // Written by the seed from values zod has checked.
  const taxa = rows.map((row) => row.data as unknown as Taxon);
  return { mark: mark?.value ?? "", taxa, byId: new Map(taxa.map((t) => [t.id, t])), index: plantIndex(taxa), seasons: new WeakMap() };
}

/** The dataset. Read once a process. */
export function taxaHeld(): Promise<Held> {
  memory.twelvemonthTaxa ??= read();
  return memory.twelvemonthTaxa;
}

/** A taxon's season at a place, kept. */
export function seasonOf(held: Held, taxon: Taxon, year: PlaceYear): TaxonSeason {
  const ofPlace = held.seasons.get(year) ?? new Map<string, TaxonSeason>();
  held.seasons.set(year, ofPlace);
  const kept = ofPlace.get(taxon.id) ?? taxonSeason(taxon, year);
  ofPlace.set(taxon.id, kept);
  return kept;
}
