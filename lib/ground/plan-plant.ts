// Plants on the drawing, with their growth worked out once for all years.
import { growthCurve, YEARS_AHEAD } from "./growth";
import type { Point } from "./outline";
import type { PlantExtent } from "./starting-size";
import { type GroundTaxon, groundSpread } from "./stratum";

/** One plant at its place. `key`: the row of the plant list it belongs to. */
export type PlanPlant = {
  readonly id: string;
  readonly key: string;
  readonly at: Point;
  readonly taxon: GroundTaxon;
  readonly sizeText: string;
  /** Stands there already and stays. */
  readonly existing: boolean;
};

/** Heights and crown radii over the ground in feet, by year 0–20. Plants of one taxon and size share one. */
export type Growth = { readonly heightFt: Float64Array; readonly radiusFt: Float64Array };
export type GrownPlant = PlanPlant & { readonly growth: Growth };

/** The plants with their growth, in their order; each taxon and size is worked out once. */
export function plantsGrown(plants: readonly PlanPlant[]): GrownPlant[] {
  const known = new Map<GroundTaxon, Map<string, Growth>>();
  return plants.map((plant) => {
    const sizes = known.get(plant.taxon) ?? new Map<string, Growth>();
    known.set(plant.taxon, sizes);
    const size = `${plant.existing ? "existing" : "new"} ${plant.sizeText}`;
    const growth = sizes.get(size) ?? growthTable(plant);
    sizes.set(size, growth);
    return { ...plant, growth };
  });
}

function growthTable({ taxon, sizeText, existing }: PlanPlant): Growth {
  const curve = growthCurve(taxon, sizeText, existing);
  const extents = Array.from({ length: YEARS_AHEAD + 1 }, (_, year) => curve(year));
  return { heightFt: Float64Array.from(extents, (e) => e.heightFt), radiusFt: Float64Array.from(extents, (e) => groundSpread(taxon, e.spreadFt) / 2) };
}

/** Radius at a year (whole years 0–20; others are clamped and read between). */
export function radiusAtYear({ radiusFt }: Growth, year: number): number {
  return valueAtYear(radiusFt, year);
}

/** Height and ground spread at a year. */
export function extentOfGrowth(growth: Growth, year: number): PlantExtent {
  return { heightFt: valueAtYear(growth.heightFt, year), spreadFt: 2 * valueAtYear(growth.radiusFt, year) };
}

function valueAtYear(values: Float64Array, year: number): number {
  const at = Math.min(values.length - 1, Math.max(0, year));
  const below = values[Math.floor(at)] ?? 0;
  return below + (at - Math.floor(at)) * ((values[Math.ceil(at)] ?? below) - below);
}
