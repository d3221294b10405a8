// Size by year: S(y) = S∞ − (S∞ − S0)·e^(−k·y), the monomolecular curve of forestry textbooks (model.md §4).
import type { Taxon } from "../plants/taxon";
import { type PlantExtent, startingExtent } from "./starting-size";
import { type GroundTaxon, rangeMiddle } from "./stratum";

/** Years the tool looks ahead: 0 is planting day. */
export const YEARS_AHEAD = 20;

/** Share of the growth still to come at planting that is made by the mature age, by growth rate (common practice, no source). */
const SHARE_BY_MATURE_AGE = { slow: 0.85, medium: 0.9, fast: 0.95 } as const satisfies Record<Taxon["growthRate"], number>;

/**
 * Most that a plant of each class grows in a year, in feet: 12 in and 24 in close the slow and medium classes of the Missouri Department of
 * Conservation (Tree Growth Information); its fast class is open above 24 in, closed here at 36 in (nursery trade, "moderate-fast 24–36").
 */
const YEARLY_MAX_FT = { slow: 1, medium: 2, fast: 3 } as const satisfies Record<Taxon["growthRate"], number>;
/** The first years, over which that gain is held on average. */
const FIRST_YEARS = 5;

/**
 * Rate k (per year) of the curve. By mature age: the share above of the remaining growth is made by then. By class: the first five years gain no more
 * than the class grows. The slower of the two holds: a tree listed at 50 ft that grows a foot a year is not 50 ft high at 20 years, whatever the label says.
 */
export function growthRate(taxon: GroundTaxon, start: PlantExtent): number {
  const byAge = -Math.log(1 - SHARE_BY_MATURE_AGE[taxon.growthRate]) / Math.max(1, taxon.matureYears);
  const gain = Math.max(rangeMiddle(taxon.heightFt) - start.heightFt, rangeMiddle(taxon.spreadFt) - start.spreadFt);
  const firstGain = FIRST_YEARS * YEARLY_MAX_FT[taxon.growthRate];
  const woody = taxon.kind === "tree" || taxon.kind === "conifer" || taxon.kind === "shrub";
  return woody && gain > firstGain ? Math.min(byAge, -Math.log(1 - firstGain / gain) / FIRST_YEARS) : byAge;
}

/** One dimension at a year; one that starts beyond its mature size stays as it is. */
function grown(startFt: number, matureFt: number, k: number, year: number): number {
  return matureFt <= startFt || year <= 0 ? startFt : matureFt - (matureFt - startFt) * Math.exp(-k * year);
}

/**
 * A plant's growth from its size at planting: height and spread in feet at a year (0 = planting day, fractions allowed, negative as 0).
 * Never shrinks from year to year. `existing`: stands there already, grown unless its size is stated.
 */
export function growthCurve(taxon: GroundTaxon, sizeText: string, existing = false): (year: number) => PlantExtent {
  const start = startingExtent(taxon, sizeText, existing);
  const k = growthRate(taxon, start);
  const [heightFt, spreadFt] = [rangeMiddle(taxon.heightFt), rangeMiddle(taxon.spreadFt)];
  return (year) => ({ heightFt: grown(start.heightFt, heightFt, k, year), spreadFt: grown(start.spreadFt, spreadFt, k, year) });
}

/** The growth curve at one year. */
export function extentAtYear(taxon: GroundTaxon, sizeText: string, year: number, existing = false): PlantExtent {
  return growthCurve(taxon, sizeText, existing)(year);
}

/** Years after planting until the plant is so many feet wide: 0 where it is from the start, null where it never will be. */
export function yearsToSpread(taxon: GroundTaxon, sizeText: string, spreadFt: number): number | null {
  const start = startingExtent(taxon, sizeText);
  const matureFt = rangeMiddle(taxon.spreadFt);
  if (spreadFt <= start.spreadFt) return 0;
  if (spreadFt >= matureFt) return null;
  return Math.log((matureFt - start.spreadFt) / (matureFt - spreadFt)) / growthRate(taxon, start);
}
