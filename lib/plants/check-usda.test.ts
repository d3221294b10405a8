import { describe, expect, it } from "vitest";
import { TEST_ENTRY } from "../../tests/fixtures/test-taxon";
import { symbolCheck, usdaChecks, zoneOfMinTemp } from "./check-usda";
import { genusTaxa } from "./taxon-load";
import type { UsdaRow } from "./usda-table";

const SHRUB = {
  ...TEST_ENTRY,
  name: "Cornus sericea",
  synonyms: ["Cornus stolonifera"],
  height: [6, 9],
  spread: [7, 10],
  rate: "fast",
  zones: [3, 7],
  light: ["sun", "part"],
  moisture: ["average", "moist"],
  ph: [5, 7.5],
  wet: "yes",
  roots: "suckering",
  features: { bloom: { color: "white", from: "late May", to: "mid Jun", show: 1 } },
};
const ROW: UsdaRow = {
  name: "Cornus sericea ssp. sericea",
  heightFt: 8,
  shade: "Intermediate",
  moisture: "Medium",
  minTempF: -38,
  bloom: "Late Spring",
  evergreen: false,
  growth: "Moderate",
  phLow: 4.8,
  phHigh: 7.5,
  salt: "None",
  availability: "Routinely Available",
};

/** Fields that disagree once the taxon and the row are changed so. */
function apart(over: object, row: Partial<UsdaRow> = {}): string[] {
  const [taxon] = genusTaxa("cornus.yaml", { genus: "Cornus", family: "Cornaceae", taxa: [{ ...SHRUB, ...over }] }).taxa;
  if (!taxon) throw new Error("the example does not load");
  return [symbolCheck(taxon, { ...ROW, ...row }), ...usdaChecks(taxon, { ...ROW, ...row })].filter((v) => !v.agrees).map((v) => v.field);
}

describe("a species against its row of the USDA table", () => {
  it("agrees when all is within tolerance", () => {
    expect(apart({})).toEqual([]);
  });

  it("knows a row by the present or a former name of the species, whatever the subspecies", () => {
    expect(apart({}, { name: "Cornus stolonifera" })).toEqual([]);
    expect(apart({}, { name: "Cornus alba" })).toEqual(["usda"]);
  });

  it("holds the height to a quarter beyond our range", () => {
    expect(apart({}, { heightFt: 11 })).toEqual([]);
    expect(apart({}, { heightFt: 12 })).toEqual(["height"]);
  });

  it("reads −28 °F as zone 4, and minds a native range only where it is more than one zone warmer than ours", () => {
    expect([zoneOfMinTemp(-28), zoneOfMinTemp(-30), zoneOfMinTemp(0), zoneOfMinTemp(-38)]).toEqual([4, 4, 7, 3]);
    expect(apart({}, { minTempF: -25 })).toEqual([]);
    expect(apart({}, { minTempF: -20 })).toEqual(["zones"]);
    expect(apart({ zones: [6, 8] }, { minTempF: -47 })).toEqual([]);
  });

  it("minds shade and moisture only where the two exclude each other", () => {
    expect(apart({ light: ["sun"] }, { shade: "Tolerant" })).toEqual(["light"]);
    expect(apart({ light: ["sun", "shade"] }, { shade: "Intolerant" })).toEqual(["light"]);
    expect(apart({ light: ["shade"] })).toEqual(["light"]);
    expect(apart({ moisture: ["dry"] })).toEqual(["moisture"]);
    expect(apart({ moisture: ["moist"] }, { moisture: "Low" })).toEqual(["moisture"]);
    expect(apart({ moisture: ["dry", "average"] }, { moisture: "High" })).toEqual(["moisture"]);
  });

  it("takes a bloom within a month of the season named, and none where none is listed", () => {
    expect(apart({}, { bloom: "Mid Summer" })).toEqual([]);
    expect(apart({}, { bloom: "Late Summer" })).toEqual(["features.bloom"]);
    expect(apart({ features: { fruit: { color: "white", from: "early Aug", to: "mid Sep", show: 1 } } }, { bloom: "Late Summer" })).toEqual([]);
  });

  it("lets semi-evergreens be either", () => {
    expect(apart({}, { evergreen: true })).toEqual(["foliage"]);
    expect(apart({ foliage: "semi-evergreen" }, { evergreen: true })).toEqual([]);
  });

  it("allows a class of growth and of salt either way", () => {
    expect(apart({}, { growth: "Slow", salt: "High" })).toEqual(["rate"]);
    expect(apart({ salt: "high" })).toEqual(["salt"]);
  });
});
