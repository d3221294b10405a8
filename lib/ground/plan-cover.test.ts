import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { GROUND_TAXA } from "../../tests/fixtures/ground-taxa";
import { coverAtYear, rowsGrown } from "./cover";
import { bedDensity } from "./density";
import { outlineArea, type Point, rectangleOutline } from "./outline";
import { fillPoints } from "./placement";
import { planCover, planCoverAtYear, planCoverByYear, planDensity } from "./plan-cover";
import { type PlanPlant, plantsGrown, radiusAtYear } from "./plan-plant";
import { STRATA } from "./stratum";
import { unionArea } from "./union-area";

const taxa = Object.values(GROUND_TAXA);
const plant = (i: number, taxon: PlanPlant["taxon"], at: Point): PlanPlant => ({ id: `p${i}`, key: "k", taxon, at, sizeText: "", existing: false });
const lists = fc
  .array(fc.record({ taxon: fc.constantFrom(...taxa), at: fc.tuple(fc.double({ min: -2, max: 42, noNaN: true }), fc.double({ min: -2, max: 14, noNaN: true })) }), {
    maxLength: 16,
  })
  .map((list) => list.map(({ taxon, at }, i) => plant(i, taxon, at)));
const bed = rectangleOutline(40, 12);
const coverOf = (plants: readonly PlanPlant[], outline = bed) => planCover(plantsGrown(plants), outline);

describe("cover of a drawn bed", () => {
  it("is the union of the crowns in every year and stratum", () => {
    fc.assert(
      fc.property(lists, fc.integer({ min: 0, max: 20 }), (plants, year) => {
        const cover = planCoverAtYear(coverOf(plants), year);
        const circles = plantsGrown(plants).map(({ at, growth }) => ({ center: at, radiusFt: radiusAtYear(growth, year) }));
        expect(cover.overall).toBeCloseTo(unionArea(circles, bed) / outlineArea(bed), 9);
        expect(cover.overall).toBeGreaterThanOrEqual(Math.max(...STRATA.map((stratum) => cover.byStratum[stratum])) - 1e-9);
        expect(cover.overall).toBeLessThanOrEqual(STRATA.reduce((sum, stratum) => sum + cover.byStratum[stratum], 0) + 1e-9);
      }),
      { numRuns: 80 },
    );
  });

  it("never falls from year to year, nor when a plant is added", () => {
    fc.assert(
      fc.property(lists, (plants) => {
        const years = planCoverByYear(coverOf(plants));
        expect(years.length).toBe(21);
        for (const [i, cover] of years.entries()) if (i > 0) expect(cover.overall).toBeGreaterThanOrEqual((years[i - 1]?.overall ?? 0) - 1e-9);
        const fewer = planCoverAtYear(coverOf(plants.slice(1)), 10);
        expect(planCoverAtYear(coverOf(plants), 10).overall).toBeGreaterThanOrEqual(fewer.overall - 1e-9);
      }),
      { numRuns: 30 },
    );
  });

  it("is the same moved, turned and in another order", () => {
    fc.assert(
      fc.property(lists, fc.double({ min: 0, max: 6.3, noNaN: true }), fc.double({ min: -500, max: 500, noNaN: true }), (plants, angle, shift) => {
        const turn = ([x, y]: Point): Point => [x * Math.cos(angle) - y * Math.sin(angle) + shift, x * Math.sin(angle) + y * Math.cos(angle) - shift];
        const moved = [...plants].reverse().map((own) => ({ ...own, at: turn(own.at) }));
        expect(planCoverAtYear(coverOf(moved, bed.map(turn)), 7).overall).toBeCloseTo(planCoverAtYear(coverOf(plants), 7).overall, 8);
      }),
      { numRuns: 40 },
    );
  });

  it("agrees with cover by counts where a bed is filled on the grid, within the edge", () => {
    const taxon = GROUND_TAXA.tallPerennial;
    const outline = rectangleOutline(40, 20);
    const points = fillPoints({ outlines: [outline], spacingFt: 2, grid: "triangular" });
    const drawn = coverOf(
      points.map((at, i) => plant(i, taxon, at)),
      outline,
    );
    const rows = rowsGrown([{ taxon, quantity: points.length, spacingFt: 2, sizeText: "", existing: false }]);
    for (const year of [0, 1, 3, 10]) expect(Math.abs(planCoverAtYear(drawn, year).overall - coverAtYear(800, rows, year).overall)).toBeLessThan(0.04);
  });
});

describe("density of a drawn bed", () => {
  it("at maturity is the density of its counts, and less at hand-over", () => {
    const plants = plantsGrown(Array.from({ length: 20 }, (_, i) => plant(i, GROUND_TAXA.shrub, [i * 2, 6])));
    const density = planDensity({ areaSqFt: 480, plants });
    expect(density.atMaturity.raw).toBeCloseTo(bedDensity(480, [{ taxon: GROUND_TAXA.shrub, quantity: 20 }]).raw, 12);
    expect(density.atHandOver.raw).toBeLessThan(density.atMaturity.raw);
    expect(density.atHandOver.raw).toBeGreaterThan(0);
    expect((5 * density.stepSqFt) / 480).toBeCloseTo(1, 12);
  });
});
