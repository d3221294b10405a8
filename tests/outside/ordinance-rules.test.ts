import { describe, expect, it } from "vitest";
import { coverAtYear, type GroundRow, rowsGrown } from "../../lib/ground/cover";
import { growthCurve } from "../../lib/ground/growth";
import { groupSizes } from "../../lib/ground/plant-group";
import { doubleRowQuantity, quantityForArea, rowQuantity, spacingForSpread } from "../../lib/ground/spacing";
import { groundTaxon } from "../fixtures/ground-taxa";
import { COVER_ASKED, COVER_SPACING_MOST, GROUPS, HEDGE_GROWN, ODD_GROUPS, SCREENS, SHRUB_A_PLANTER_FT } from "./ordinance-rules";

const BED_SQ_FT = 500;
/** A bed filled with one plant at a spacing on the triangular grid. */
function filled(taxon: GroundRow["taxon"], spacingFt: number, sizeText: string): GroundRow {
  return { taxon, quantity: quantityForArea(BED_SQ_FT, spacingFt, "triangular"), spacingFt, sizeText, existing: false };
}
const coverIn = (row: GroundRow, year: number) => coverAtYear(BED_SQ_FT, rowsGrown([row]), year).overall;

/** Sizes of typical plants (common practice, no source). */
const low = { pot: groundTaxon("groundcover", 0.6, 1.5, { habit: "mat" }), gallon: groundTaxon("groundcover", 1, 3, { habit: "mat" }), shrub: groundTaxon("shrub", 3, 4) };

describe("cover as ordinances ask it", () => {
  const [antioch] = COVER_ASKED;

  it("of three quarters at maturity is reached by covers at the widest spacing that the clause allows for their size", () => {
    for (const { size, mostFt } of COVER_SPACING_MOST.rows) {
      const taxon = size === "4 in pot" ? low.pot : low.gallon;
      expect(coverIn(filled(taxon, mostFt, size), 20), size).toBeGreaterThanOrEqual(antioch.share);
    }
  });

  it("of three quarters at maturity is reached by shrubs touching and by the usual spacing, not at half as far again", () => {
    for (const spacingFt of [spacingForSpread(4, "standard"), spacingForSpread(4, "touching")])
      expect(coverIn(filled(low.shrub, spacingFt, "#3"), 20)).toBeGreaterThanOrEqual(antioch.share);
    expect(coverIn(filled(low.shrub, 6, "#3"), 20)).toBeLessThan(antioch.share);
  });

  it("within 18 months is reached by covers at fast fill, and not at touching: Anaheim's rule asks for close spacing", () => {
    expect(coverIn(filled(low.pot, spacingForSpread(1.5, "fast fill"), "4 in pot"), 1.5)).toBeGreaterThanOrEqual(0.75);
    expect(coverIn(filled(low.pot, spacingForSpread(1.5, "touching"), "4 in pot"), 1.5)).toBeLessThan(0.75);
  });
});

describe("hedges and screens as ordinances ask them", () => {
  it("never leave a gap wider than asked, in one row or staggered", () => {
    for (const { source, apartFt, rowsApartFt } of SCREENS)
      for (const runFt of [10, 37, 100, 101.5]) {
        expect(runFt / rowQuantity(runFt, apartFt), source).toBeLessThanOrEqual(apartFt + 1e-6);
        if (rowsApartFt !== null) expect(doubleRowQuantity(runFt, apartFt).apartFt, source).toBeLessThanOrEqual(rowsApartFt);
      }
  });

  it("count at least one shrub for every five feet of planter, as Ventura asks, for any shrub up to six feet wide", () => {
    for (const spread of [2, 3, 4, 5, 6]) {
      const plants = rowQuantity(50, spacingForSpread(spread, "standard"));
      expect(plants, `${spread} ft`).toBeGreaterThanOrEqual(50 / SHRUB_A_PLANTER_FT.feet);
    }
  });

  // Southern Florida, where nothing rests in winter; in the program a fast shrub gains at most 36 in a year over its first five.
  it("grow from 3 ft to 8 in three years where the kind is fast, and not where it is medium", () => {
    const { fromFt, toFt, years } = HEDGE_GROWN;
    const hedge = (growthRate: "fast" | "medium", year: number) => growthCurve(groundTaxon("shrub", 12, 8, { growthRate }), "36 in ht")(year).heightFt;
    expect(hedge("fast", 0)).toBe(fromFt);
    expect(hedge("fast", years)).toBeGreaterThanOrEqual(toFt);
    expect(hedge("medium", years)).toBeLessThan(toFt);
  });
});

describe("groups as published lists have them", () => {
  it("are three, five or seven where so many are wanted, up to the nine at which odd is still seen", () => {
    for (const { sizes } of ODD_GROUPS)
      for (const size of sizes)
        for (let groups = 1; groups <= 4; groups++) {
          const made = groupSizes(size * groups, size);
          expect(made.reduce((sum, n) => sum + n, 0)).toBe(size * groups);
          expect(made, `${groups} groups of ${size}`).toEqual(Array.from({ length: groups }, () => size));
        }
  });

  it("have at least three plants, as Ogden asks, where the quantity allows groups of three", () => {
    for (let quantity = GROUPS.least; quantity <= 90; quantity += 3) expect(Math.min(...groupSizes(quantity, 3)), `${quantity}`).toBeGreaterThanOrEqual(GROUPS.least);
  });

  it("stand no further apart than their mature width at any spacing the program suggests, to the step a crew sets out by", () => {
    for (const spread of [0.75, 1, 1.5, 2, 3, 4, 6, 8])
      for (const aim of ["fast fill", "standard", "touching"] as const) expect(spacingForSpread(spread, aim)).toBeLessThanOrEqual(spread + 1e-9);
  });
});
