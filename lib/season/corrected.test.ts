import { describe, expect, it } from "vitest";
import { gardenTaxon } from "../../tests/fixtures/garden-taxa";
import { REFERENCE_YEAR } from "../place/reference";
import { type Correction, correctionRead, windowFieldOf } from "../plants/correction";
import { taxonCorrected } from "./corrected";

const taxon = gardenTaxon("Hydrangea paniculata");
const correction = (field: string, value: unknown, note = ""): Correction => {
  const read = correctionRead(field, value);
  if (read.kind === "fault") throw new Error(read.message);
  return { id: field, field: read.field, value: read.value, note, savedAt: "2026-11-25T00:00:00Z" };
};
const apply = (...list: Correction[]) => taxonCorrected(taxon, list, () => REFERENCE_YEAR);

describe("corrections for one's own region", () => {
  it("lie over the dataset's values and are sourced as one's own; the rest stays", () => {
    const { taxon: corrected, applied } = apply(correction("zones", [5, 8], "dies at the lake"), correction("height", [6, 8]), correction("deer", "rarely"));
    expect(corrected).toMatchObject({ zoneLow: 5, zoneHigh: 8, heightFt: [6, 8], deer: "rarely", spreadFt: taxon.spreadFt, id: taxon.id });
    expect(corrected.sources).toMatchObject({ zoneLow: "own", zoneHigh: "own", heightFt: "own", deer: "own", ph: "usda" });
    expect(applied.map((a) => [a.fact, a.note, a.original.zoneLow])).toEqual([
      ["zoneLow", "dies at the lake", 4],
      ["heightFt", "", 4],
      ["deer", "", 4],
    ]);
  });
  it("do not touch the taxon they lie on", () => {
    const before = JSON.stringify(taxon);
    apply(correction("height", [1, 2]));
    expect(JSON.stringify(taxon)).toBe(before);
  });
  it("move a window to where it was seen", () => {
    const { taxon: corrected, applied } = apply(correction("window.bloom.0", { from: 190, to: 240, seenAt: null }));
    expect(corrected.features[0]).toMatchObject({ startDay: 190, endDay: 240, degreeDays: null, source: "own" });
    expect(corrected.features[1]).toEqual(taxon.features[1]);
    expect(applied[0]?.fact).toBe("features.0");
  });
  it("of a feature that the dataset no longer has are left out", () => {
    expect(apply(correction("window.bloom.3", { from: 190, to: 240, seenAt: null }))).toEqual({ taxon, applied: [] });
  });
  it.each([
    ["height", [5, 3]],
    ["height", ["tall", 3]],
    ["zones", [0, 30]],
    ["light", []],
    ["deer", "never"],
    ["name", "Hydrangea"],
    ["window.evergreen.0", { from: 1, to: 2, seenAt: null }],
    ["window.bloom.0", { from: 0, to: 400, seenAt: null }],
  ])("are refused when the value is none: %s %j", (field, value) => {
    expect(correctionRead(field, value)).toMatchObject({ kind: "fault", field });
  });
  it("name the window of a feature by its kind and place, and none of what shows all year", () => {
    expect(taxon.features.map((_, i) => windowFieldOf(taxon, i))).toEqual(["window.bloom.0", "window.seedhead.0"]);
    expect(windowFieldOf(gardenTaxon("Thuja"), 0)).toBeNull();
  });
});
