// How a correction is asked for: which fields, filled with what holds now.
import { plantSizeText } from "../ground/length";
import type { CorrectableField } from "../plants/correction";
import type { Taxon } from "../plants/taxon";
import { DEER, HABITS, LEVELS, LIGHTS, MOISTURES, RATES, WET_FEET } from "../plants/vocabulary";

export type CorrectionAsk =
  /** Lengths as typed: "18 in", "4 ft". */
  | { readonly type: "lengths"; readonly low: string; readonly high: string }
  | { readonly type: "numbers"; readonly low: string; readonly high: string }
  | { readonly type: "one"; readonly options: readonly string[]; readonly value: string }
  | { readonly type: "several"; readonly options: readonly string[]; readonly values: readonly string[] }
  /** Days of year at the place shown. */
  | { readonly type: "window"; readonly from: number; readonly to: number };

/** The question for a field of a taxon, as it stands. */
export function correctionAsk(taxon: Taxon, field: CorrectableField): CorrectionAsk {
  const one = (options: readonly string[], value: string): CorrectionAsk => ({ type: "one", options, value });
  switch (field) {
    case "height":
      return { type: "lengths", low: plantSizeText(taxon.heightFt[0]), high: plantSizeText(taxon.heightFt[1]) };
    case "spread":
      return { type: "lengths", low: plantSizeText(taxon.spreadFt[0]), high: plantSizeText(taxon.spreadFt[1]) };
    case "zones":
      return { type: "numbers", low: String(taxon.zoneLow), high: String(taxon.zoneHigh) };
    case "ph":
      return { type: "numbers", low: String(taxon.ph[0]), high: String(taxon.ph[1]) };
    case "light":
      return { type: "several", options: LIGHTS, values: taxon.light };
    case "moisture":
      return { type: "several", options: MOISTURES, values: taxon.moisture };
    case "rate":
      return one(RATES, taxon.growthRate);
    case "salt":
      return one(LEVELS, taxon.salt);
    case "drought":
      return one(LEVELS, taxon.drought);
    case "deer":
      return one(DEER, taxon.deer);
    case "wet":
      return one(WET_FEET, taxon.wetFeet);
    case "habit":
      return one(HABITS, taxon.habit);
  }
}
