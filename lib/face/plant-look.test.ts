import { describe, expect, it } from "vitest";
import { gardenTaxon } from "../../tests/fixtures/garden-taxa";
import { REFERENCE_YEAR } from "../place/reference";
import { COLORS } from "../plants/colors";
import { taxonSeason } from "../season/taxon-season";
import { lookDays, plantLook } from "./plant-look";

const look = (beginning: string, day: number) => {
  const taxon = gardenTaxon(beginning);
  return plantLook(taxon, taxonSeason(taxon, REFERENCE_YEAR), day);
};

describe("what a plant wears", () => {
  it("is leaves while they are out, flowers while they last, seedheads after", () => {
    expect(look("Hydrangea", 20)).toMatchObject({ leafHex: null, flower: null, seedhead: { hex: COLORS.tan } });
    expect(look("Hydrangea", 215)).toMatchObject({ leafHex: COLORS.green, flower: { hex: COLORS.white, show: 3 } });
    expect(look("Hydrangea", 268).flower?.hex).toBe(COLORS["dusty pink"]);
  });
  it("is the color of leaves that are a feature, and of an evergreen in winter", () => {
    expect(look("× Heucherella", 200).leafHex).toBe(COLORS.burgundy);
    expect(look("Thuja", 200).leafHex).toBe(COLORS.green);
    expect(look("Thuja", 20).leafHex).toBe(COLORS.bronze);
  });
});

describe("days worth a drawing", () => {
  it("are the peaks of its features and midwinter, in the order of the year", () => {
    const taxon = gardenTaxon("Hydrangea");
    const days = lookDays(taxonSeason(taxon, REFERENCE_YEAR));
    expect(days.map((d) => d.label)).toContain("In bloom");
    const [, ...rest] = days;
    expect(rest.map((d) => d.day)).toEqual(rest.map((d) => d.day).sort((a, b) => a - b));
  });
});
