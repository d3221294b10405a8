// What the dataset holds: counts by kind and genus, how complete each field is, where the values come from.
import type { Taxon } from "./taxon";
import { FEATURE_KINDS, type FeatureKind, KINDS, type Kind } from "./vocabulary";

export type Count = { readonly taxa: number; readonly cultivars: number };
/** `of` are the taxa the field can apply to, `known` those that have a value other than "unknown". */
export type FieldCount = { readonly field: string; readonly known: number; readonly of: number };

export const isCultivar = (t: Taxon): boolean => t.cultivar !== null || t.tradeDesignation !== null;
const countOf = (taxa: readonly Taxon[]): Count => ({ taxa: taxa.length, cultivars: taxa.filter(isCultivar).length });

export function countsByKind(taxa: readonly Taxon[]): readonly ({ readonly kind: Kind } & Count)[] {
  return KINDS.map((kind) => ({ kind, ...countOf(taxa.filter((t) => t.kind === kind)) })).filter((c) => c.taxa > 0);
}

export function countsByGenus(taxa: readonly Taxon[]): readonly ({ readonly genus: string } & Count)[] {
  const genera = [...new Set(taxa.map((t) => t.genus))].sort();
  return genera.map((genus) => ({ genus, ...countOf(taxa.filter((t) => t.genus === genus)) }));
}

const LOSES_LEAVES: readonly Taxon["foliage"][] = ["deciduous", "dies back", "semi-evergreen"];
const has = (kind: FeatureKind) => (t: Taxon) => t.features.some((f) => f.kind === kind);
const woodyBloomer = (t: Taxon) => (t.kind === "shrub" || t.kind === "vine") && has("bloom")(t);
const fruiting = (t: Taxon) => t.sex === "female" && has("fruit")(t);

type FieldTest = readonly [field: string, known: (t: Taxon, native: (t: Taxon) => boolean) => boolean, applies?: (t: Taxon) => boolean];
/** Fields that every taxon must have are proved by the loader; they are counted all the same, so that the report shows it. */
const FIELDS: readonly FieldTest[] = [
  ["common name", (t) => t.commonNames.length > 0],
  ["family", (t) => t.family !== ""],
  ["height and spread", (t) => t.heightFt[1] > 0 && t.spreadFt[1] > 0],
  ["zones", (t) => t.zoneLow >= 1 && t.zoneHigh <= 13],
  ["light", (t) => t.light.length > 0],
  ["moisture", (t) => t.moisture.length > 0],
  ["pH", (t) => t.ph[0] > 0],
  ["seasonal feature", (t) => t.features.length > 0],
  ["leaf-out and leaf-drop", (t) => t.leaves !== null, (t) => LOSES_LEAVES.includes(t.foliage)],
  ["old or new wood (flowering shrubs and vines)", (t) => t.wood !== null, woodyBloomer],
  ["pollination partner (female and fruiting)", (t) => t.partner !== null, fruiting],
  ["toxic to people", (t) => t.toxic.people !== "unknown"],
  ["toxic to dogs and cats", (t) => t.toxic.pets !== "unknown"],
  ["toxic to horses", (t) => t.toxic.horses !== "unknown"],
  ["juglone", (t) => t.juglone !== "unknown"],
  ["native states (in the nativity table)", (t, native) => native(t)],
];

/** How many taxa have each field. @param native whether the nativity table has the taxon */
export function fieldCounts(taxa: readonly Taxon[], native: (t: Taxon) => boolean): readonly FieldCount[] {
  return FIELDS.map(([field, known, applies]) => {
    const of = applies ? taxa.filter(applies) : taxa;
    return { field, known: of.filter((t) => known(t, native)).length, of: of.length };
  });
}

/** How many taxa have a feature of each kind; no field to fill, but a kind that nearly none has would be a hole. */
export function featureCounts(taxa: readonly Taxon[]): readonly { readonly kind: FeatureKind; readonly taxa: number; readonly features: number }[] {
  return FEATURE_KINDS.map((kind) => ({ kind, taxa: taxa.filter(has(kind)).length, features: taxa.flatMap((t) => t.features.filter((f) => f.kind === kind)).length }));
}

/** Values by source key, most first. */
export function sourceCounts(taxa: readonly Taxon[]): readonly { readonly source: string; readonly values: number }[] {
  const counts = new Map<string, number>();
  for (const taxon of taxa) for (const source of Object.values(taxon.sources)) counts.set(source, (counts.get(source) ?? 0) + 1);
  return [...counts].map(([source, values]) => ({ source, values })).sort((a, b) => b.values - a.values);
}
