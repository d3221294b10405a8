// Cover and density of a drawn bed, where every plant has its place: exact unions, not the closed form of cover.ts.
import { type CircleUnion, circleUnion } from "./circle-union";
import type { Cover } from "./cover";
import { bedDensity, type Density, densityOfTaken } from "./density";
import { YEARS_AHEAD } from "./growth";
import { type Outline, outlineArea } from "./outline";
import { type GrownPlant, radiusAtYear } from "./plan-plant";
import { plantCellSqFt } from "./spacing";
import { STRATA, type Stratum, taxonStratum } from "./stratum";

/** A drawing made ready for its cover: who meets whom at twenty years is worked out once. */
export type PlanCover = { readonly areaSqFt: number; readonly plants: readonly GrownPlant[]; readonly union: CircleUnion; readonly members: Readonly<Record<Stratum, Uint8Array>> };

/** Makes a drawing ready. Existing trees' crowns that hang in from outside count where they hang. */
export function planCover(plants: readonly GrownPlant[], outline: Outline): PlanCover {
  const largest = plants.map(({ growth }) => radiusAtYear(growth, YEARS_AHEAD));
  const union = circleUnion(
    plants.map(({ at }) => at),
    largest,
    outline,
  );
  const strata = plants.map(({ taxon }) => taxonStratum(taxon));
  const member = (stratum: Stratum) => Uint8Array.from(strata, (own) => (own === stratum ? 1 : 0));
  const members = {
    "canopy trees": member("canopy trees"),
    "tall shrubs": member("tall shrubs"),
    "low shrubs": member("low shrubs"),
    "herbs and groundcover": member("herbs and groundcover"),
  } satisfies Record<Stratum, Uint8Array>;
  return { areaSqFt: outlineArea(outline), plants, union, members };
}

/** Cover at a year (0–20, fractions allowed): by stratum the union of its crowns, overall the union of all, each as a share of the bed. */
export function planCoverAtYear({ areaSqFt, plants, union, members }: PlanCover, year: number): Cover {
  const radii = Float64Array.from(plants, ({ growth }) => radiusAtYear(growth, year));
  const share = (counts?: Uint8Array) => (areaSqFt > 0 ? Math.min(1, union.areaAt(radii, counts) / areaSqFt) : 0);
  const filled = STRATA.filter((stratum) => members[stratum].includes(1));
  const overall = share();
  // Where one stratum holds all plants, its cover is the overall one.
  const of = (stratum: Stratum) => (!filled.includes(stratum) ? 0 : filled.length === 1 ? overall : share(members[stratum]));
  return {
    year,
    overall,
    byStratum: { "canopy trees": of("canopy trees"), "tall shrubs": of("tall shrubs"), "low shrubs": of("low shrubs"), "herbs and groundcover": of("herbs and groundcover") },
  };
}

/** Cover for years 0 (planting day) to 20, in order. */
export function planCoverByYear(cover: PlanCover): Cover[] {
  return Array.from({ length: YEARS_AHEAD + 1 }, (_, year) => planCoverAtYear(cover, year));
}

export type PlanDensity = {
  /** By what the plants take at hand-over: their spread on planting day. A bed is always open on that scale; it shows how soon it will look full. */
  readonly atHandOver: Density;
  /** By mature spread: the density of the bed (model.md §4). */
  readonly atMaturity: Density;
  /** Square feet of plants, at mature spread, that one step of the scale is worth in this bed. */
  readonly stepSqFt: number;
};

/** Density of a drawn bed, 1–10, at hand-over and at maturity. Trees do not count: plants grow under them. */
export function planDensity({ areaSqFt, plants }: Pick<PlanCover, "areaSqFt" | "plants">): PlanDensity {
  const rows = plants.map(({ taxon }) => ({ taxon, quantity: 1 }));
  const atMaturity = bedDensity(areaSqFt, rows);
  const startSqFt = plants.reduce((sum, { taxon, growth }) => {
    const spread = 2 * radiusAtYear(growth, 0);
    return taxonStratum(taxon) === "canopy trees" || spread <= 0 ? sum : sum + plantCellSqFt(spread, "triangular");
  }, 0);
  return { atHandOver: densityOfTaken(areaSqFt, startSqFt), atMaturity, stepSqFt: areaSqFt / 5 };
}
