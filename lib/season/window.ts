import type { Feature } from "../plants/taxon";
import type { Drive, FeatureKind } from "../plants/vocabulary";

/** A seasonal feature as it happens at a place. Days of year 1–365 (real numbers are rounded); over New Year startDay > endDay. */
export type SeasonWindow = {
  readonly kind: FeatureKind;
  readonly feature: Feature;
  readonly drive: Drive;
  readonly startDay: number;
  readonly endDay: number;
  readonly peakDay: number;
  /** ± days, one standard deviation of the years and of the model together. */
  readonly spreadDays: number;
  /** Source keys: the feature's and, where it decided the date, the degree-day figure's. */
  readonly sources: readonly string[];
};

/** Everything dated for one taxon at one place. */
export type TaxonSeason = {
  readonly windows: readonly SeasonWindow[];
  /** When leaves are out and gone here; null for evergreens. */
  readonly leaves: { readonly onDay: number; readonly offDay: number } | null;
};
