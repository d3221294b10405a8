import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bedGround, bedRowAreas } from "./bed-ground";
import { coverAtYear, type GroundRow, rowsGrown } from "./cover";
import { areaForQuantity } from "./spacing";
import { type GroundTaxon, STRATA } from "./stratum";

const shrub: GroundTaxon = { kind: "shrub", habit: "rounded", heightFt: [2, 4], spreadFt: [3, 5], matureYears: 10, growthRate: "medium" };
const tree: GroundTaxon = { ...shrub, kind: "tree", heightFt: [40, 60], spreadFt: [30, 40], matureYears: 20 };
const sedge: GroundTaxon = { ...shrub, kind: "grass", heightFt: [1, 1], spreadFt: [1, 2], matureYears: 3 };

const row = (over: Partial<GroundRow>): GroundRow => ({ taxon: shrub, quantity: 9, spacingFt: null, sizeText: "#3", existing: false, ...over });
const cover = (areaSqFt: number, rows: GroundRow[], year: number) => coverAtYear(areaSqFt, rowsGrown(rows), year);

const anyRow: fc.Arbitrary<GroundRow> = fc.record({
  taxon: fc.constantFrom(shrub, tree, sedge, { ...shrub, heightFt: [6, 8] as const }),
  quantity: fc.integer({ min: 0, max: 80 }),
  spacingFt: fc.option(fc.double({ min: 0.4, max: 8, noNaN: true })),
  sizeText: fc.constantFrom("#1", "#3", "2 in cal", ""),
  existing: fc.boolean(),
});

describe("cover", () => {
  it("is the circles' area over the bed's for plants that do not meet", () => {
    const bed = cover(1000, [row({ quantity: 9, existing: true, sizeText: "" })], 0);
    expect(bed.byStratum["low shrubs"]).toBeCloseTo((9 * Math.PI * 4) / 1000, 9);
    expect(bed.overall).toBeCloseTo(bed.byStratum["low shrubs"], 12);
  });

  it("is a little over nine tenths for a bed filled at mature spread: round crowns leave corners", () => {
    const area = areaForQuantity(40, 4, "triangular");
    const grown = cover(area, [row({ quantity: 40, existing: true, sizeText: "" })], 20);
    expect(grown.overall).toBeCloseTo(Math.PI / Math.sqrt(12), 9);
  });

  it("closes where the spacing is under 0.866 of the spread", () => {
    const area = areaForQuantity(40, 3.4, "triangular");
    expect(cover(area, [row({ quantity: 40, spacingFt: 3.4, existing: true, sizeText: "" })], 20).overall).toBeCloseTo(1, 9);
  });

  it("lets a group spread over open ground beside it, but not twice over its own", () => {
    const tight = cover(1000, [row({ quantity: 9, spacingFt: 2, existing: true, sizeText: "" })], 0).overall;
    const loose = cover(1000, [row({ quantity: 9, spacingFt: 4, existing: true, sizeText: "" })], 0).overall;
    expect(tight).toBeGreaterThan(areaForQuantity(9, 2, "triangular") / 1000);
    expect(tight).toBeLessThan(loose);
  });

  it("adds rows that stand side by side and have room", () => {
    const a = row({ quantity: 10, existing: true, sizeText: "" });
    const b = row({ taxon: sedge, quantity: 20, existing: true, sizeText: "" });
    const both = cover(800, [a, b], 5);
    expect(both.overall).toBeCloseTo(cover(800, [a], 5).overall + cover(800, [b], 5).overall, 9);
  });

  it("stands trees over the rest without counting the ground under them twice", () => {
    const under = row({ quantity: 40, existing: true, sizeText: "" });
    const over = row({ taxon: tree, quantity: 1, existing: true, sizeText: "" });
    const both = cover(2000, [under, over], 3);
    const [trees, rest] = [cover(2000, [over], 3).overall, cover(2000, [under], 3).overall];
    expect(both.overall).toBeCloseTo(1 - (1 - trees) * (1 - rest), 12);
  });

  it("counts one plant in one of four layers", () => {
    expect(Object.keys(cover(100, [], 0).byStratum)).toEqual([...STRATA]);
    const bed = cover(400, [row({ taxon: tree, quantity: 1, sizeText: "2 in cal" })], 4);
    expect(bed.byStratum["canopy trees"]).toBeGreaterThan(0);
    expect(bed.byStratum["low shrubs"]).toBe(0);
  });

  it("is a share from 0 to 1 that never falls from year to year and does not depend on the order of the rows", () => {
    fc.assert(
      fc.property(fc.array(anyRow, { maxLength: 8 }), fc.double({ min: 1, max: 3000, noNaN: true }), (rows, areaSqFt) => {
        const ground = bedGround({ areaSqFt, rows });
        const turned = bedGround({ areaSqFt, rows: [...rows].reverse() });
        expect(ground.coverByYear).toHaveLength(21);
        expect(turned.densityRaw).toBeCloseTo(ground.densityRaw, 6);
        ground.coverByYear.forEach((at, year) => {
          expect(at.year).toBe(year);
          expect(turned.coverByYear[year]?.overall).toBeCloseTo(at.overall, 9);
          for (const share of [at.overall, ...Object.values(at.byStratum)]) expect(share >= 0 && share <= 1).toBe(true);
          expect(at.overall).toBeGreaterThanOrEqual((ground.coverByYear[year - 1]?.overall ?? 0) - 1e-12);
          expect(at.overall).toBeGreaterThanOrEqual(at.byStratum["canopy trees"] - 1e-12);
        });
      }),
    );
  });
});

describe("the ground of a bed", () => {
  it("never falls in any layer when a row is added or a row gets more plants", () => {
    fc.assert(
      fc.property(
        fc.array(anyRow, { maxLength: 6 }),
        anyRow,
        fc.integer({ min: 1, max: 40 }),
        fc.double({ min: 20, max: 2000, noNaN: true }),
        fc.integer({ min: 0, max: 20 }),
        (rows, more, extra, area, year) => {
          const before = cover(area, rows, year);
          const added = cover(area, [...rows, more], year);
          const larger = cover(area, [...rows, { ...more, quantity: more.quantity + extra }], year);
          for (const [less, after] of [
            [before, added],
            [added, larger],
          ] as const) {
            expect(after.overall).toBeGreaterThanOrEqual(less.overall - 1e-9);
            for (const stratum of STRATA) expect(after.byStratum[stratum]).toBeGreaterThanOrEqual(less.byStratum[stratum] - 1e-9);
          }
        },
      ),
      { numRuns: 200 },
    );
  });

  it("is bare, density 1, without plants or without ground", () => {
    expect(bedGround({ areaSqFt: 200, rows: [] })).toMatchObject({ plantableSqFt: 200, density: 1, densityRaw: 0 });
    expect(bedGround({ areaSqFt: 200, rows: [row({ quantity: 0 })] }).coverByYear[20]?.overall).toBe(0);
    expect(bedGround({ areaSqFt: 0, rows: [row({})] }).coverByYear[20]?.overall).toBe(0);
  });

  it("gives each row's own ground, at most the bed", () => {
    const rows = [row({ quantity: 9, existing: true, sizeText: "" }), row({ quantity: 0 }), row({ taxon: tree, quantity: 1, existing: true, sizeText: "" })];
    const [shrubs, none, trees] = bedRowAreas({ areaSqFt: 500, rows }, 3);
    expect(shrubs).toBeCloseTo(9 * Math.PI * 4, 6);
    expect(none).toBe(0);
    expect(trees).toBe(500);
  });
});
