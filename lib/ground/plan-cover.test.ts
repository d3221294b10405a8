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

  it("never falls, overall or in any stratum, as plants are larger from the start or when mature", () => {
    const higher = (own: PlanPlant, sizeText: string, share: number): PlanPlant => ({
      ...own,
      sizeText,
      taxon: { ...own.taxon, spreadFt: [own.taxon.spreadFt[0] * share, own.taxon.spreadFt[1] * share] },
    });
    fc.assert(
      fc.property(lists, fc.integer({ min: 0, max: 20 }), fc.double({ min: 1, max: 2, noNaN: true }), (plants, year, share) => {
        // The size at planting is stated, so that both start alike; strata go by height, which stays.
        const before = planCoverAtYear(coverOf(plants.map((own) => higher(own, "6 in spread", 1))), year);
        const wider = planCoverAtYear(coverOf(plants.map((own) => higher(own, "6 in spread", share))), year);
        const older = planCoverAtYear(coverOf(plants.map((own) => higher(own, "6 in spread", 1))), Math.min(20, year + 1));
        for (const after of [wider, older]) {
          expect(after.overall).toBeGreaterThanOrEqual(before.overall - 1e-9);
          for (const stratum of STRATA) expect(after.byStratum[stratum]).toBeGreaterThanOrEqual(before.byStratum[stratum] - 1e-9);
        }
      }),
      { numRuns: 40 },
    );
  });

  it("never falls in any stratum when a plant is added, and never by more than its crown is large", () => {
    fc.assert(
      fc.property(lists, fc.integer({ min: 0, max: 20 }), (plants, year) => {
        const [last] = plantsGrown(plants.slice(-1));
        if (!last) return;
        const before = planCoverAtYear(coverOf(plants.slice(0, -1)), year);
        const after = planCoverAtYear(coverOf(plants), year);
        const crown = (Math.PI * radiusAtYear(last.growth, year) ** 2) / outlineArea(bed);
        for (const stratum of STRATA) expect(after.byStratum[stratum]).toBeGreaterThanOrEqual(before.byStratum[stratum] - 1e-9);
        expect(after.overall - before.overall).toBeLessThanOrEqual(crown + 1e-9);
      }),
      { numRuns: 60 },
    );
  });

  it("is never made more by clipping: a part of the bed has no more ground covered than the whole, the whole no more than the crowns, and two parts make it up", () => {
    fc.assert(
      fc.property(lists, fc.integer({ min: 0, max: 20 }), fc.double({ min: 1, max: 39, noNaN: true }), (plants, year, split) => {
        const sqFt = (outline: readonly Point[]) => planCoverAtYear(coverOf(plants, [...outline]), year).overall * outlineArea([...outline]);
        const left = rectangleOutline(split, 12);
        const right = rectangleOutline(40 - split, 12).map(([x, y]): Point => [x + split, y]);
        const whole = sqFt(bed);
        const circles = plantsGrown(plants).map(({ at, growth }) => ({ center: at, radiusFt: radiusAtYear(growth, year) }));
        expect(sqFt(left)).toBeLessThanOrEqual(whole + 1e-7);
        expect(whole).toBeLessThanOrEqual(unionArea(circles, null) + 1e-7);
        expect(sqFt(left) + sqFt(right)).toBeCloseTo(whole, 6);
      }),
      { numRuns: 60 },
    );
  });

  it("does not mind the order in any stratum, nor a bed moved far away", () => {
    fc.assert(
      fc.property(lists, fc.integer({ min: -2000, max: 2000 }), (plants, shift) => {
        const before = planCoverAtYear(coverOf(plants), 9);
        const moved = [...plants].reverse().map((own) => ({ ...own, at: [own.at[0] + shift, own.at[1] - shift] as const }));
        const after = planCoverAtYear(
          coverOf(
            moved.map((own) => ({ ...own, at: [...own.at] })),
            bed.map(([x, y]): Point => [x + shift, y - shift]),
          ),
          9,
        );
        expect(after.overall).toBeCloseTo(before.overall, 9);
        for (const stratum of STRATA) expect(after.byStratum[stratum]).toBeCloseTo(before.byStratum[stratum], 9);
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
