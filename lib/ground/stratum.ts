import type { Taxon } from "../plants/taxon";

/** What the ground needs to know of a taxon. */
export type GroundTaxon = Pick<Taxon, "kind" | "habit" | "heightFt" | "spreadFt" | "matureYears" | "growthRate">;

/** Layers of a planting, from the top. */
export const STRATA = ["canopy trees", "tall shrubs", "low shrubs", "herbs and groundcover"] as const;
export type Stratum = (typeof STRATA)[number];

/** Shrubs from this mature height (feet) are tall: they screen; lower ones are seen over (model.md §4). */
const TALL_SHRUB_FT = 4;
/** Conifers from this mature height (feet) are trees in the planting; the lower ones stand among the shrubs (common practice, no source). */
const TREE_CONIFER_FT = 12;
/** Ground that a climbing vine takes, as a spread in feet: the rest of it hangs on its support (common practice, no source). */
const VINE_GROUND_SPREAD_FT = 2;

/** Middle of a range. */
export function rangeMiddle(range: readonly [number, number]): number {
  return (range[0] + range[1]) / 2;
}

/** The layer a taxon belongs to by kind and mature height. Climbing vines stand with the low shrubs, trailing ones with the groundcovers. */
export function taxonStratum(taxon: GroundTaxon): Stratum {
  const heightFt = rangeMiddle(taxon.heightFt);
  switch (taxon.kind) {
    case "tree":
      return "canopy trees";
    case "conifer":
      if (heightFt >= TREE_CONIFER_FT) return "canopy trees";
      return heightFt >= TALL_SHRUB_FT ? "tall shrubs" : "low shrubs";
    case "shrub":
      return heightFt >= TALL_SHRUB_FT ? "tall shrubs" : "low shrubs";
    case "vine":
      return vineClimbs(taxon) ? "low shrubs" : "herbs and groundcover";
    case "perennial":
    case "grass":
    case "fern":
    case "bulb":
    case "groundcover":
    case "annual":
      return "herbs and groundcover";
  }
}

function vineClimbs(taxon: GroundTaxon): boolean {
  return taxon.kind === "vine" && taxon.habit !== "mat" && taxon.habit !== "spreading";
}

/** Spread over the ground, in feet, of a plant whose crown is so wide: the same, but a climbing vine takes little. */
export function groundSpread(taxon: GroundTaxon, spreadFt: number): number {
  return vineClimbs(taxon) ? Math.min(spreadFt, VINE_GROUND_SPREAD_FT) : spreadFt;
}

/** Mature spread over the ground in feet, from the middle of the range. */
export function matureGroundSpread(taxon: GroundTaxon): number {
  return groundSpread(taxon, rangeMiddle(taxon.spreadFt));
}
