// The plants by which a place's year is told: common everywhere, known by everybody.
import type { FeatureKind } from "../plants/vocabulary";
import type { YearMarker } from "../season/year-moves";
import { taxaHeld } from "./taxa";

const MARKERS: readonly (readonly [label: string, name: string, kind: FeatureKind])[] = [
  ["Forsythia blooms", "Forsythia × intermedia", "bloom"],
  ["Lilac blooms", "Syringa vulgaris", "bloom"],
  ["Smooth hydrangea blooms", "Hydrangea arborescens", "bloom"],
  ["New England aster blooms", "Symphyotrichum novae-angliae", "bloom"],
  ["Sugar maple colors", "Acer saccharum", "fall color"],
];

/** The markers whose plant is in the dataset. */
export async function yearMarkers(): Promise<YearMarker[]> {
  const { taxa } = await taxaHeld();
  return MARKERS.flatMap(([label, name, kind]) => {
    const taxon = taxa.find((t) => t.name === name);
    return taxon ? [{ label, taxon, kind }] : [];
  });
}
