import { describe, expect, it } from "vitest";
import { REFERENCE_YEAR } from "@/lib/place/reference";
import { ownTaxonRead } from "@/lib/plants/own-taxon";
import { ownTaxonLike } from "@/lib/season/own-like";
import { taxonSeason } from "@/lib/season/taxon-season";
import { gardenTaxa, gardenTaxon } from "@/tests/fixtures/garden-taxa";
import { draftInput, draftOf, draftSeason, draftSize } from "./own-draft";

const inputOf = (taxon = gardenTaxon("Hydrangea paniculata 'Jane'")) => ownTaxonLike(taxon, taxonSeason(taxon, REFERENCE_YEAR), null);

describe("the own plant's form", () => {
  it("stands for the input it was filled with while nothing is typed", () => {
    for (const taxon of gardenTaxa()) {
      const input = inputOf(taxon);
      const { input: out, faults } = draftInput(draftOf(input));
      expect(faults).toEqual([]);
      expect(ownTaxonRead(out)).toEqual({ kind: "input", input });
    }
  });
  it("reads lengths as the trade writes them, and says which cannot be read", () => {
    const draft = { ...draftOf(inputOf()), height: ["18 in", "2'6\""] as const };
    expect(draftInput(draft).input).toMatchObject({ height: [1.5, 2.5] });
    expect(draftInput({ ...draft, height: ["tall", "very"] }).faults.map((f) => f.field)).toEqual(["height"]);
  });
  it("takes the quotes off a cultivar, and names apart at their commas", () => {
    const { input } = draftInput({ ...draftOf(inputOf()), cultivar: " ‘Little Lantern’ ", common: "panicle hydrangea, , peegee" });
    expect(input).toMatchObject({ cultivar: "Little Lantern", common: ["panicle hydrangea", "peegee"] });
  });
  it("has no leaf dates for an evergreen, and brings them back when it is none after all", () => {
    const draft = draftOf(inputOf());
    expect(draftInput({ ...draft, foliage: "evergreen" }).input).toMatchObject({ leaves: null });
    expect(draftInput(draft).input).toMatchObject({ leaves: draft.leaves });
  });
  it("draws what is typed so far, and no size that cannot be read", () => {
    const draft = draftOf(inputOf());
    expect(draftSeason(draft).windows.map((w) => w.kind)).toEqual(["bloom", "seedhead"]);
    expect(draftSize(draft)).toEqual({ heightFt: 4, spreadFt: 4 });
    expect(draftSize({ ...draft, height: ["", "5 ft"] })).toBeNull();
  });
});
