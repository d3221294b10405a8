// The plants as the server holds them: the open dataset read from the database once, with the user's own taxa and corrections over it,
// a search index, and by place the seasons. What the user changes is merged anew; the dataset itself stays read.
import { createHash } from "node:crypto";
import type { PlaceYear } from "../place/place-year";
import type { Origin } from "../plants/plant-list";
import { type PlantIndex, plantIndex } from "../plants/search";
import type { Taxon } from "../plants/taxon";
import { type AppliedCorrection, taxonCorrected } from "../season/corrected";
import { taxonSeason } from "../season/taxon-season";
import type { TaxonSeason } from "../season/window";
import { database } from "./database";
import { correctionRows, type OwnRow, ownRowsRead, type UnreadableRow } from "./own-rows";

type Dataset = { readonly mark: string; readonly taxa: readonly Taxon[] };

export type TaxaHeld = {
  /** Changes when the dataset, an own taxon or a correction does. */
  readonly mark: string;
  /** Dataset as corrected and own taxa together, by name. */
  readonly taxa: readonly Taxon[];
  readonly byId: ReadonlyMap<string, Taxon>;
  /** Built when first asked for: half a second for some thousands of names. */
  readonly index: PlantIndex<Taxon>;
  readonly seasons: WeakMap<PlaceYear, Map<string, TaxonSeason>>;
  readonly own: ReadonlyMap<string, OwnRow>;
  readonly corrections: ReadonlyMap<string, readonly AppliedCorrection[]>;
  readonly unreadable: readonly UnreadableRow[];
};

const memory = globalThis as { twelvemonthDataset?: Dataset; twelvemonthTaxa?: Promise<TaxaHeld> };

async function datasetOfDatabase(): Promise<Dataset> {
  const mark = (await database().mark.findUnique({ where: { key: "Taxon" } }))?.value ?? "";
  if (memory.twelvemonthDataset?.mark === mark) return memory.twelvemonthDataset;
  const rows = await database().taxon.findMany({ select: { data: true }, orderBy: { name: "asc" } });
  // Written by the seed from values zod has checked.
  const dataset = { mark, taxa: rows.map((row) => row.data as unknown as Taxon) };
  memory.twelvemonthDataset = dataset;
  return dataset;
}

const byName = (a: Taxon, b: Taxon): number => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0);

async function read(): Promise<TaxaHeld> {
  const [dataset, { rows, unreadable }, { byTaxon, yearOf }] = await Promise.all([datasetOfDatabase(), ownRowsRead(), correctionRows()]);
  const corrections = new Map<string, readonly AppliedCorrection[]>();
  const corrected = dataset.taxa.map((taxon) => {
    const own = byTaxon.get(taxon.id);
    if (!own) return taxon;
    const result = taxonCorrected(taxon, own, yearOf);
    if (result.applied.length) corrections.set(taxon.id, result.applied);
    return result.taxon;
  });
  const taxa = rows.length ? [...corrected, ...rows.map((row) => row.taxon)].sort(byName) : corrected;
  const changes = JSON.stringify([dataset.mark, rows, [...byTaxon]]);
  let index: PlantIndex<Taxon> | null = null;
  return {
    mark: createHash("sha256").update(changes).digest("hex").slice(0, 20),
    taxa,
    byId: new Map(taxa.map((t) => [t.id, t])),
    get index() {
      index ??= plantIndex(taxa);
      return index;
    },
    seasons: new WeakMap(),
    own: new Map(rows.map((row) => [row.taxon.id, row])),
    corrections,
    unreadable,
  };
}

/** All plants. Read once a process, and again after `taxaForget`. */
export function taxaHeld(): Promise<TaxaHeld> {
  memory.twelvemonthTaxa ??= read().catch((error: unknown) => {
    // A failed reading must not stay: the next caller tries again.
    memory.twelvemonthTaxa = undefined;
    throw error;
  });
  return memory.twelvemonthTaxa;
}

/** To be called after an own taxon or a correction has changed: the next reading merges anew. */
export function taxaForget(): void {
  memory.twelvemonthTaxa = undefined;
}

/** Where a plant comes from. */
export function originOf(held: TaxaHeld, taxon: Pick<Taxon, "id">): Origin {
  return held.own.has(taxon.id) ? "own" : held.corrections.has(taxon.id) ? "corrected" : "dataset";
}

/** A taxon's season at a place, kept. */
export function seasonOf(held: TaxaHeld, taxon: Taxon, year: PlaceYear): TaxonSeason {
  const ofPlace = held.seasons.get(year) ?? new Map<string, TaxonSeason>();
  held.seasons.set(year, ofPlace);
  const kept = ofPlace.get(taxon.id) ?? taxonSeason(taxon, year);
  ofPlace.set(taxon.id, kept);
  return kept;
}
