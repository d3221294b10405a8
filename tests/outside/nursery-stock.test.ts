import { describe, expect, it } from "vitest";
import { growthCurve, yearsToSpread } from "../../lib/ground/growth";
import { lengthFromText } from "../../lib/ground/length";
import { nurserySizeFromText } from "../../lib/ground/nursery-size";
import { spacingForSpread } from "../../lib/ground/spacing";
import { startingExtent } from "../../lib/ground/starting-size";
import type { GroundTaxon } from "../../lib/ground/stratum";
import {
  CONIFER_CLASSES,
  CONTAINER_TREES,
  CONTAINER_VOLUMES,
  COVER_TIMES,
  COVER_WIDEST,
  GROWTH_CLASSES,
  LABEL_YEARS,
  LARGE_COVERS,
  MOST_COVERS,
  SHADE_TREES,
  TAG_SEASONS,
  TRADE_CLASSES,
  USUAL_CENTERS,
} from "./nursery-stock";

const LITERS_PER_GALLON = 3.785411784;
// Sizes of typical plants (common practice, no source), not of the dataset, so that the test stands by itself.
const shadeTree: GroundTaxon = { kind: "tree", habit: "oval", heightFt: [40, 60], spreadFt: [30, 50], matureYears: 20, growthRate: "medium" };
const smallTree: GroundTaxon = { ...shadeTree, heightFt: [15, 25], spreadFt: [15, 25] };
const cover: GroundTaxon = { kind: "groundcover", habit: "mat", heightFt: [0.5, 1], spreadFt: [1, 1.5], matureYears: 3, growthRate: "medium" };
const typical = {
  pachysandra: cover,
  periwinkle: { ...cover, spreadFt: [1.5, 3] },
  ivy: { ...cover, spreadFt: [1, 2] },
  "cranberry cotoneaster": { ...cover, kind: "shrub", spreadFt: [3, 6] },
  "spreading juniper": { ...cover, kind: "conifer", spreadFt: [3, 6] },
  wintercreeper: { ...cover, spreadFt: [3, 5] },
} as const satisfies Record<string, GroundTaxon>;

function feet(text: string): number {
  const result = lengthFromText(text, "in");
  if (!result.ok) throw new Error(result.fault);
  return result.feet;
}

describe("containers", () => {
  it("prints gallons and liters that agree within the rounding of the tables", () => {
    for (const { rows } of CONTAINER_VOLUMES)
      for (const [label, gallons, liters] of rows) if (liters !== null) expect(Math.abs(gallons * LITERS_PER_GALLON - liters) / liters, label).toBeLessThan(0.02);
  });

  it("reads every class by its number: a trade size, not a measure; all but the biggest hold less than their number of gallons", () => {
    for (const { rows } of CONTAINER_VOLUMES)
      for (const [label, gallons] of rows) {
        const size = nurserySizeFromText(label);
        const number = Number(/\d+/.exec(label)?.[0]);
        expect(size).toMatchObject({ root: "container", containerClass: `#${number}`, containerGal: number });
        if (number < 24) expect(gallons).toBeLessThan(number);
      }
  });
});

describe("trees by caliper and container", () => {
  it("are at least as high at planting as the published minima, slower kinds as theirs", () => {
    for (const { size, heightFt, slowHeightFt } of SHADE_TREES) {
      expect(startingExtent(shadeTree, size).heightFt, size).toBeGreaterThanOrEqual(heightFt);
      if (slowHeightFt !== null) expect(startingExtent(smallTree, size).heightFt, size).toBeGreaterThanOrEqual(slowHeightFt);
      expect(startingExtent(shadeTree, size).heightFt, size).toBeLessThan(heightFt + 4);
    }
  });

  it("have root balls of ten inches and more for an inch of caliper", () => {
    for (const { size, ballIn } of SHADE_TREES) expect(ballIn).toBeGreaterThanOrEqual(10 * (nurserySizeFromText(size).caliperIn?.[0] ?? Number.NaN));
  });

  it("in a container are about as high as by the caliper it holds", () => {
    for (const row of CONTAINER_TREES) {
      const height = startingExtent(shadeTree, row.size).heightFt;
      const byCaliper = row.caliperIn.map((caliper) => startingExtent(shadeTree, `${caliper} in cal`).heightFt);
      expect(height, row.size).toBeGreaterThanOrEqual(Math.min(...byCaliper) - 1);
      expect(height, row.size).toBeLessThanOrEqual(Math.max(...byCaliper) + 1);
      if ("heightFt" in row) expect(height >= row.heightFt[0] && height <= row.heightFt[1]).toBe(true);
    }
  });
});

describe("growth classes", () => {
  it("hold over a shade tree's first five years, within an inch a year", () => {
    for (const { slow, medium, fast } of GROWTH_CLASSES)
      for (const [growthRate, [least, most]] of Object.entries({ slow, medium, fast })) {
        const curve = growthCurve({ ...shadeTree, growthRate: growthRate as GroundTaxon["growthRate"] }, "1.5 in cal");
        const inchesAYear = ((curve(5).heightFt - curve(0).heightFt) * 12) / 5;
        expect(inchesAYear).toBeGreaterThanOrEqual((least ?? 0) - 1);
        expect(inchesAYear).toBeLessThanOrEqual((most ?? 48) + 1);
      }
  });
});

describe("growth classes of the trade", () => {
  it("are where ours end: a shade tree's first five years stay within each class, within an inch", () => {
    for (const growthRate of ["slow", "medium", "fast"] as const) {
      const curve = growthCurve({ ...shadeTree, growthRate }, "1.5 in cal");
      const inchesAYear = ((curve(5).heightFt - curve(0).heightFt) * 12) / 5;
      expect(inchesAYear, growthRate).toBeGreaterThanOrEqual(TRADE_CLASSES[growthRate][0] - 1);
      expect(inchesAYear, growthRate).toBeLessThanOrEqual(TRADE_CLASSES[growthRate][1] + 1);
    }
  });

  it("of conifers agree with themselves: inches a year make the feet of ten years, but that the intermediate are given room", () => {
    for (const { label, inchesAYear, feetAtTen } of CONIFER_CLASSES.rows) {
      const [low, high] = inchesAYear.map((inches) => (inches === null ? null : (10 * inches) / 12));
      expect(low, label).toBeGreaterThanOrEqual(feetAtTen[0] * 0.66);
      if (high !== null) expect(high, label).toBeLessThanOrEqual(feetAtTen[1] ?? Number.NaN);
    }
  });

  it("of conifers hold in the program: a dwarf sold as such is within its class at ten years, an upright of medium growth beyond the dwarfs", () => {
    const [, dwarf, intermediate] = CONIFER_CLASSES.rows;
    const conifer = (heightFt: GroundTaxon["heightFt"], growthRate: GroundTaxon["growthRate"]): GroundTaxon => ({
      ...shadeTree,
      kind: "conifer",
      habit: "conical",
      heightFt,
      spreadFt: [3, 5],
      growthRate,
      matureYears: 15,
    });
    const atTen = (taxon: GroundTaxon) => growthCurve(taxon, "#3")(10).heightFt;
    expect(atTen(conifer([3, 5], "slow"))).toBeLessThanOrEqual(dwarf.feetAtTen[1]);
    expect(atTen(conifer([3, 5], "slow"))).toBeGreaterThanOrEqual(dwarf.feetAtTen[0]);
    expect(atTen(conifer([10, 15], "medium"))).toBeGreaterThanOrEqual(intermediate.feetAtTen[0]);
    expect(atTen(conifer([10, 15], "medium"))).toBeLessThanOrEqual(intermediate.feetAtTen[1]);
  });

  it("make a shrub of the size on its label at about the ten years that labels mean: four fifths and more of it", () => {
    const shrub: GroundTaxon = { ...shadeTree, kind: "shrub", habit: "rounded", heightFt: [4, 5], spreadFt: [4, 5], matureYears: 8 };
    const { heightFt, spreadFt } = growthCurve(shrub, "#3")(LABEL_YEARS.years);
    expect(heightFt / 4.5).toBeGreaterThanOrEqual(0.8);
    expect(spreadFt / 4.5).toBeGreaterThanOrEqual(0.8);
    expect(heightFt / 4.5).toBeLessThanOrEqual(1);
  });
});

describe("groundcovers", () => {
  it.each(COVER_TIMES)("$plant from quart pots at $spacing meets within $seasons seasons ($said)", ({ plant, spacing, seasons }) => {
    const years = yearsToSpread(typical[plant], "qt", feet(spacing));
    expect(years).not.toBeNull();
    expect(years).toBeLessThanOrEqual(seasons);
  });

  it("are suggested at centers from fast fill to touching that take in the usual ones", () => {
    for (const { plants, spacing } of USUAL_CENTERS)
      for (const plant of plants) {
        const [, most] = typical[plant].spreadFt;
        expect(spacingForSpread(typical[plant].spreadFt[0], "fast fill"), plant).toBeLessThanOrEqual(feet(spacing));
        expect(spacingForSpread(most, "touching"), plant).toBeGreaterThanOrEqual(feet(spacing));
      }
  });

  it("meet sooner the closer they are set, and periwinkle at its widest later than in a few years", () => {
    const years = (spacing: string) => yearsToSpread(typical.periwinkle, "qt", feet(spacing));
    const widest = years(COVER_WIDEST.spacing);
    expect(widest).not.toBeNull();
    expect(widest).toBeGreaterThan(years("18 in") ?? Number.NaN);
  });

  it("fill in one season to two, as tags say, at the spacings the program offers from fast fill to the usual one", () => {
    for (const plant of ["pachysandra", "periwinkle", "ivy"] as const) {
      const { spreadFt } = typical[plant];
      const fast = yearsToSpread(typical[plant], "qt", spacingForSpread((spreadFt[0] + spreadFt[1]) / 2, "fast fill"));
      expect(fast, plant).not.toBeNull();
      expect(fast, plant).toBeLessThanOrEqual(TAG_SEASONS.farthest);
    }
  });

  it("of most kinds have begun to fill after a year at 8 to 18 in: a third of the ground between them and more", () => {
    for (const inches of MOST_COVERS.spacingIn) {
      const taxon: GroundTaxon = { ...cover, spreadFt: [inches / 12, (1.4 * inches) / 12] };
      const { spreadFt } = growthCurve(taxon, "qt")(MOST_COVERS.years);
      expect((Math.PI * (spreadFt / 2) ** 2) / ((Math.sqrt(3) / 2) * (inches / 12) ** 2), `${inches} in`).toBeGreaterThan(0.33);
    }
  });

  it("of the large kinds are suggested no closer than five feet where they grow so wide", () => {
    for (const spread of [8, 10]) expect(spacingForSpread(spread, "fast fill")).toBeGreaterThanOrEqual(LARGE_COVERS.leastFt);
  });
});
