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
  /** The published degree days (base 50 °F from 1 January) that decided the onset; null where the dataset's words did. */
  readonly degreeDays: number | null;
  /** The published degree days that decided full bloom; absent where it lies by rule within the window. */
  readonly degreeDaysFull?: number;
  /** Source keys of the feature. */
  readonly sources: readonly string[];
};

/** Everything dated for one taxon at one place. */
export type TaxonSeason = {
  readonly windows: readonly SeasonWindow[];
  /** When leaves are out and gone here; null for evergreens. */
  readonly leaves: { readonly onDay: number; readonly offDay: number } | null;
  /** How sure the leaves' dates are: ± days, one standard deviation; absent where there are no leaves to date. */
  readonly leafSpread?: { readonly onDays: number; readonly offDays: number };
  /** Whether the dates are this place's, or those of the reference climate because the model has no basis here. */
  readonly basis: "computed" | "reference months";
  /** Why they are reference months, in plain words; null where they are computed. */
  readonly basisNote: string | null;
};
