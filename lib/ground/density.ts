// Planting density 1–10. A scale of ten is how the trade talks; the formula is this project's (model.md §4).
import { plantCellSqFt } from "./spacing";
import { type GroundTaxon, matureGroundSpread, taxonStratum } from "./stratum";

export type DensityRow = { readonly taxon: GroundTaxon; readonly quantity: number };

export type Density = {
  /** The figure as computed, not clamped; 0 for an empty bed. */
  readonly raw: number;
  /** Whole number 1–10. */
  readonly label: number;
  /** What the step means, as a sentence without a capital. */
  readonly words: string;
  /** Square feet that the counted plants take when grown, on a triangular grid at mature spread. */
  readonly takenSqFt: number;
};

const STEPS = [
  "mostly open mulch; the plants stand as single specimens.",
  "sparse: more mulch than plants even when grown.",
  "open: gaps stay between the groups when grown.",
  "easy: the plants come near each other but do not all meet.",
  "set at mature spread: the plants just meet when grown.",
  "full: closes a little early, with light pruning where plants meet.",
  "full early: closes in a few seasons, some thinning to expect later.",
  "tight: looks finished soon, needs thinning on a schedule.",
  "crowded: plants press each other within a few years, many will have to go.",
  "about twice what will finally fit: every second plant will have to go.",
] as const;

/** Raw figure from which the words give the multiple instead of the step. */
const BEYOND_SCALE = 12;

/** Square feet that one plant takes when grown: √3/2 · (mature spread)². */
export function plantTakenSqFt(taxon: GroundTaxon): number {
  return plantCellSqFt(matureGroundSpread(taxon), "triangular");
}

/** The words for a step of the scale (1–10; others are clamped). */
export function densityWords(label: number): string {
  return STEPS[Math.min(10, Math.max(1, Math.round(label))) - 1] ?? STEPS[0];
}

/** Density where so many square feet of a plantable area are taken: 5 × taken ÷ plantable. No ground: raw 0. */
export function densityOfTaken(plantableSqFt: number, takenSqFt: number): Density {
  const raw = plantableSqFt > 0 ? (5 * takenSqFt) / plantableSqFt : 0;
  const label = Math.min(10, Math.max(1, Math.round(raw)));
  // The scale ends at ten, beds do not: far beyond it the multiple says more than the step.
  const words = raw >= BEYOND_SCALE ? `${(raw / 5).toFixed(1)} times what will finally fit: most of the plants will have to go.` : densityWords(label);
  return { raw, label, words, takenSqFt };
}

/**
 * Planting density of a bed: 5 × Σ quantity · √3/2 · (mature spread)² ÷ plantable square feet, over everything but canopy trees,
 * which plants grow under. 5 is set at mature spread. Plants that stay count. No ground: raw 0.
 */
export function bedDensity(plantableSqFt: number, rows: readonly DensityRow[]): Density {
  const takenSqFt = rows.reduce((sum, { taxon, quantity }) => (taxonStratum(taxon) === "canopy trees" ? sum : sum + quantity * plantTakenSqFt(taxon)), 0);
  return densityOfTaken(plantableSqFt, takenSqFt);
}
