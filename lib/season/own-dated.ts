// A taxon of one's own, its windows carried from where they were seen to the reference climate.
import type { PlaceYear } from "../place/place-year";
import type { Feature, Taxon } from "../plants/taxon";
import { thirdOfDay } from "../plants/thirds";
import { referenceFeature, referenceLeaves } from "./reference-window";

/** The window of a feature that goes with the leaves: foliage while they are out, bark and structure while they are off. */
function leafWindow(feature: Feature, leaves: NonNullable<Taxon["leaves"]>): Feature {
  const { onDay, offDay } = leaves;
  if (feature.kind !== "summer foliage" && feature.drive !== "dormancy") return feature;
  const [startDay, endDay] = feature.kind === "summer foliage" ? [onDay, offDay] : [offDay, onDay];
  return { ...feature, startDay, endDay, from: thirdOfDay(startDay), to: thirdOfDay(endDay) };
}

/**
 * The taxon as the dataset would write it, for the reference climate.
 * @param seen by feature, whether its window was seen at `place`; the others go with the leaves or show all year
 */
export function ownTaxonDated(taxon: Taxon, seen: readonly boolean[], place: PlaceYear): Taxon {
  const leaves = taxon.leaves ? referenceLeaves(taxon.leaves, place) : null;
  const features = taxon.features.map((feature, i) => (seen[i] ? referenceFeature(feature, leaves, place) : leaves ? leafWindow(feature, leaves) : feature));
  return { ...taxon, leaves, features };
}
