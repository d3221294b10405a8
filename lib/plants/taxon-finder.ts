// Finds what a published list means: one taxon, or a genus as a whole.
import { matchName } from "./name-match";
import type { PublishedName } from "./published-lists";
import { plantIndex } from "./search";
import type { Taxon } from "./taxon";

export type FoundTaxa = { readonly kind: "taxon"; readonly taxon: Taxon } | { readonly kind: "genus"; readonly genus: string; readonly taxa: readonly Taxon[] };
/** The taxa a name stands for: one, or all of a genus. */
export const foundTaxa = (found: FoundTaxa): readonly Taxon[] => (found.kind === "taxon" ? [found.taxon] : found.taxa);
/** What a comparison is about: the taxon, or the genus by name. */
export const foundSubject = (found: FoundTaxa): Taxon | string => (found.kind === "taxon" ? found.taxon : found.genus);
export type TaxonFinder = (name: PublishedName) => FoundTaxa | null;

/** A name of the taxon's own, in the spelling of today or of a hundred years ago ("Spiraea Thunbergi"). */
const LEAST_CONFIDENCE = 0.95;

/** A finder over the dataset. It answers only where the name is one of the taxon's own; another cultivar's species does not stand in. */
export function taxonFinder(taxa: readonly Taxon[]): TaxonFinder {
  const index = plantIndex(taxa);
  const byId = new Map(taxa.map((t) => [t.id, t]));
  const genera = new Map<string, Taxon[]>();
  for (const taxon of taxa) genera.set(taxon.genus, [...(genera.get(taxon.genus) ?? []), taxon]);
  return ({ printed, names }) => {
    for (const name of names ?? [printed]) {
      const genus = genera.get(name);
      if (genus) return { kind: "genus", genus: name, taxa: genus };
      const match = matchName(index, name);
      const taxon = match && !match.fallback && match.confidence >= LEAST_CONFIDENCE ? byId.get(match.taxonId) : undefined;
      if (taxon) return { kind: "taxon", taxon };
    }
    return null;
  };
}
