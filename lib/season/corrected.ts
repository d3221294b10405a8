// The open dataset's taxon with the corrections of one's own region on top.
import type { PlaceYear } from "../place/place-year";
import { type CorrectableField, type Correction, isWindowField, TAXON_FIELDS, type WindowField, windowFeatureIndex, windowValue } from "../plants/correction";
import { OWN_SOURCE } from "../plants/own-taxon";
import type { Taxon } from "../plants/taxon";
import { referenceFeature } from "./reference-window";

/** A correction as it lies on the taxon, with what the dataset says. */
export type AppliedCorrection = Correction & {
  /** "heightFt", "features.2": the fact it changes. */
  readonly fact: string;
  readonly original: Taxon;
};

const fieldValues = (field: CorrectableField, value: unknown): Partial<Taxon> =>
  field === "zones" && Array.isArray(value) ? { zoneLow: Number(value[0]), zoneHigh: Number(value[1]) } : { [TAXON_FIELDS[field]]: value };

const sourceFields = (field: CorrectableField): readonly string[] => (field === "zones" ? ["zoneLow", "zoneHigh"] : [TAXON_FIELDS[field]]);

function withWindow(taxon: Taxon, field: WindowField, value: unknown, yearOf: YearOf): { taxon: Taxon; fact: string } | null {
  const index = windowFeatureIndex(taxon, field);
  const feature = taxon.features[index];
  const window = windowValue.safeParse(value);
  if (!feature || !window.success) return null;
  const { from, to, seenAt } = window.data;
  const seen = { ...feature, startDay: from, endDay: to, source: OWN_SOURCE };
  const corrected = referenceFeature(seen, taxon.leaves, yearOf(seenAt));
  return {
    taxon: { ...taxon, features: taxon.features.map((f, i) => (i === index ? corrected : f)), sources: { ...taxon.sources, [`features.${feature.kind}`]: OWN_SOURCE } },
    fact: `features.${index}`,
  };
}

/** The year of the place something was seen at; the reference climate's for null. */
export type YearOf = (seenAt: { readonly label: string; readonly lat: number; readonly lon: number; readonly elevationFt: number } | null) => PlaceYear;

/**
 * The taxon with its corrections, whose values `correctionRead` has checked. What no longer fits (a feature that left the dataset) is left out of both.
 */
export function taxonCorrected(original: Taxon, corrections: readonly Correction[], yearOf: YearOf): { taxon: Taxon; applied: AppliedCorrection[] } {
  let taxon = original;
  const applied: AppliedCorrection[] = [];
  for (const correction of corrections) {
    const { field, value } = correction;
    if (isWindowField(field)) {
      const changed = withWindow(taxon, field, value, yearOf);
      if (!changed) continue;
      taxon = changed.taxon;
      applied.push({ ...correction, fact: changed.fact, original });
    } else {
      const own = Object.fromEntries(sourceFields(field).map((f) => [f, OWN_SOURCE]));
      taxon = { ...taxon, ...fieldValues(field, value), sources: { ...taxon.sources, ...own } };
      applied.push({ ...correction, fact: TAXON_FIELDS[field], original });
    }
  }
  return { taxon, applied };
}
