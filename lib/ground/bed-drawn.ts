// A bed whose plants stand on its drawing, ready for figures: who stands where, grown; what they crowd; whether the whole list is on it.
import type { Bed } from "./bed";
import type { BedGround } from "./bed-ground";
import { bedSizeEdges } from "./bed-size";
import { type Crowding, planCrowding } from "./crowding";
import { type GroundPlan, groundPlan } from "./ground-plan";
import { YEARS_AHEAD } from "./growth";
import { type PlanCover, planCover, planCoverByYear, planDensity } from "./plan-cover";
import { type GrownPlant, plantsGrown, radiusAtYear } from "./plan-plant";
import type { GroundTaxon } from "./stratum";

export type DrawnBed = {
  readonly plan: GroundPlan;
  /** In the order of the drawing; their key is the row's id. Plants whose taxon is gone are not among them. */
  readonly plants: readonly GrownPlant[];
  /** Soonest first. */
  readonly crowding: readonly Crowding[];
};

/** Names of what a bed's edges border and of the things on its drawing. */
export function bedBorders(bed: Bed): ReadonlySet<string> {
  const edges = bed.size.by === "drawing" ? bed.size.edges.map(({ border }) => border.what) : [];
  return new Set<string>([...edges, ...(bed.drawing?.things ?? []).map(({ what }) => what)]);
}

/** The drawn plants of a bed, grown, with what they crowd; null where none stand on a drawing. @param taxonOf by row id; null when it left the dataset */
export function bedDrawn(bed: Bed, taxonOf: (rowId: string) => GroundTaxon | null): DrawnBed | null {
  if (!bed.drawing?.plants.length) return null;
  const rows = new Map(bed.rows.map((row) => [row.id, row]));
  const plants = plantsGrown(
    bed.drawing.plants.flatMap(({ id, rowId, at }) => {
      const row = rows.get(rowId);
      const taxon = taxonOf(rowId);
      return row && taxon ? [{ id, key: rowId, at, taxon, sizeText: row.size, existing: row.existing }] : [];
    }),
  );
  const plan = groundPlan(bedSizeEdges(bed.size), bed.drawing.things);
  return { plan, plants, crowding: planCrowding(plants, plan) };
}

/** What the ground comes to where every plant has its place: exact unions of crowns, clipped to the bed. */
export function drawnGround({ plan, plants }: DrawnBed, cover: PlanCover): BedGround {
  const { atMaturity } = planDensity({ areaSqFt: plan.areaSqFt, plants });
  return {
    plantableSqFt: plan.areaSqFt,
    density: atMaturity.label,
    densityRaw: atMaturity.raw,
    densityWords: atMaturity.words,
    takenSqFt: atMaturity.takenSqFt,
    coverByYear: planCoverByYear(cover),
  };
}

/** The drawing made ready for its cover. */
export function drawnCover({ plan, plants }: DrawnBed): PlanCover {
  return planCover(plants, plan.outline);
}

/** Square feet of the bed under the crowns of one row's plants at a year. */
export function drawnRowSqFt({ plants, union }: PlanCover, rowId: string, year: number): number {
  const at = Math.min(YEARS_AHEAD, year);
  return union.areaAt(
    Float64Array.from(plants, ({ growth }) => radiusAtYear(growth, at)),
    Uint8Array.from(plants, ({ key }) => (key === rowId ? 1 : 0)),
  );
}
