// Plants for an area or a run at a spacing on center. Geometry exact; quantities rounded once, upward, by quantityRoundedUp.
import type { Kind } from "../plants/vocabulary";

/** Rows in line (square), or each row offset by half a spacing so that three plants make an even triangle (triangular). */
export type Grid = "square" | "triangular";

/** Ground a plant takes at spacing 1: 1 on the square grid, √3/2 (0.866…) on the triangular. */
const CELL = { square: 1, triangular: Math.sqrt(3) / 2 } as const satisfies Record<Grid, number>;

/** A surplus smaller than this is the noise of the arithmetic, not a plant: 100.0000001 plants are 100. */
const PLANT_EPSILON = 1e-6;

function spacingChecked(spacingFt: number): number {
  if (!(spacingFt > 0) || !Number.isFinite(spacingFt)) throw new RangeError(`spacing must be more than zero, got ${spacingFt}`);
  return spacingFt;
}

/** Square feet that one plant takes at a spacing in feet: s² square, √3/2 · s² triangular. */
export function plantCellSqFt(spacingFt: number, grid: Grid): number {
  return CELL[grid] * spacingChecked(spacingFt) ** 2;
}

/** Plants per square foot at a spacing in feet. */
export function plantsPerSqFt(spacingFt: number, grid: Grid): number {
  return 1 / plantCellSqFt(spacingFt, grid);
}

/** The one rounding of plant quantities: up to whole plants, at least one for any need at all, none for none. */
export function quantityRoundedUp(exact: number): number {
  return exact > 0 ? Math.max(1, Math.ceil(exact - PLANT_EPSILON)) : 0;
}

/** Plants to fill an area, never fewer than it needs. Square feet, spacing in feet; throws RangeError for a spacing that is not more than zero. */
export function quantityForArea(areaSqFt: number, spacingFt: number, grid: Grid): number {
  return quantityRoundedUp(areaSqFt / plantCellSqFt(spacingFt, grid));
}

/** Square feet that so many plants fill at a spacing in feet. */
export function areaForQuantity(quantity: number, spacingFt: number, grid: Grid): number {
  return quantity * plantCellSqFt(spacingFt, grid);
}

/**
 * Plants in a single row of `runFt` feet, the first and last standing half a spacing in from the ends: run ÷ spacing, rounded up,
 * so that no gap is wider than asked; `rowSetOut` then gives the spacing to set them at.
 */
export function rowQuantity(runFt: number, spacingFt: number): number {
  return quantityRoundedUp(runFt / spacingChecked(spacingFt));
}

/** How so many plants stand evenly along a run: on center, and from the end of the run to the first plant (half of it). Feet. */
export function rowSetOut(runFt: number, quantity: number): { readonly spacingFt: number; readonly endFt: number } {
  const spacingFt = quantity > 0 ? runFt / quantity : runFt;
  return { spacingFt, endFt: spacingFt / 2 };
}

/**
 * A staggered double row: both rows at the single-row spacing, the back row offset by half, so it stands in the gaps of the front row and has one fewer.
 * `apartFt` is the distance between the rows at which all neighbors stand equally far (√3/2 of the spacing).
 */
export function doubleRowQuantity(runFt: number, spacingFt: number): { readonly front: number; readonly back: number; readonly total: number; readonly apartFt: number } {
  const front = rowQuantity(runFt, spacingFt);
  const back = Math.max(0, front - 1);
  return { front, back, total: front + back, apartFt: CELL.triangular * rowSetOut(runFt, front).spacingFt };
}

/** Share of mature spread to space at, by how soon the group is to close (common practice, no source). */
export const SPACING_SHARES = { "fast fill": 0.67, standard: 0.8, touching: 1 } as const;
export type SpacingAim = keyof typeof SPACING_SHARES;
export const SPACING_AIMS = Object.keys(SPACING_SHARES) as readonly SpacingAim[];

/** To the steps a crew sets out by: whole inches under 1 ft, 3 in to 4 ft, 6 in to 10 ft, whole feet above. */
function spacingPractical(feet: number): number {
  const inches = feet * 12;
  const step = inches < 12 ? 1 : inches < 48 ? 3 : inches < 120 ? 6 : 12;
  return Math.max(2, Math.round(inches / step) * step) / 12;
}

/** Spacing in feet for a mature spread in feet: closed early and thinned or sheared later, the usual, or just touching when grown. */
export function spacingForSpread(spreadFt: number, aim: SpacingAim): number {
  return spacingPractical(spreadFt * SPACING_SHARES[aim]);
}

/** How each kind is usually set (common practice, no source): woody plants that keep their shape at full spread or a little under, covers to close. */
export function spacingAimUsual(kind: Kind): SpacingAim {
  switch (kind) {
    case "tree":
    case "conifer":
      return "touching";
    case "shrub":
    case "perennial":
    case "grass":
    case "fern":
    case "vine":
    case "bulb":
      return "standard";
    case "groundcover":
    case "annual":
      return "fast fill";
  }
}
