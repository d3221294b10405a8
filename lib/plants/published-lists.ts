// Shapes of published figures that the dataset is set beside. Names come as printed, with present names where the print is old.
import type { Range } from "./taxon";
import type { FeatureKind } from "./vocabulary";

/** `printed` is looked up where `names` is left out. A bare genus stands for all its taxa. */
export type PublishedName = { readonly printed: string; readonly names?: readonly string[] };

/** A published size and cold limit, in feet and whole zones. */
export type PublishedSize = PublishedName & { readonly heightFt?: Range; readonly spreadFt?: Range; readonly zoneLow?: number; readonly source: string };

/** A growth class with the height class beside it, in feet. */
export type PublishedGrowth = PublishedName & { readonly growth: "slow" | "medium" | "fast"; readonly heightFt: Range };

/** A plant recommended for winter: what it shows then. */
export type WinterInterest = PublishedName & { readonly kinds: readonly FeatureKind[]; readonly what: string };

export const FALL_TIMES = ["early", "medium"] as const;
/** A plant recommended for fall color, with the time and the hues where the list has them. */
export type FallColor = PublishedName & { readonly time?: (typeof FALL_TIMES)[number]; readonly hues?: readonly Hue[] };

export const HUES = ["red", "orange", "yellow", "purple", "brown"] as const;
export type Hue = (typeof HUES)[number];

/** The month, 1–12, in which a plant begins to bloom. */
export type BloomOnset = PublishedName & { readonly startMonth: number };

/** All lists, with the key of their source. */
export type PublishedLists = {
  readonly sizes: readonly PublishedSize[];
  readonly growth: { readonly source: string; readonly rows: readonly PublishedGrowth[] };
  readonly winter: readonly { readonly source: string; readonly rows: readonly WinterInterest[] }[];
  readonly fall: readonly { readonly source: string; readonly rows: readonly FallColor[] }[];
  readonly bloom: readonly { readonly source: string; readonly rows: readonly BloomOnset[] }[];
};
