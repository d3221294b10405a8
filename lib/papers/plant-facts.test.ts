import { describe, expect, it } from "vitest";
import { gardenTaxon } from "../../tests/fixtures/garden-taxa";
import { REFERENCE_YEAR } from "../place/reference";
import { taxonCorrected } from "../season/corrected";
import { taxonSeason } from "../season/taxon-season";
import { plantCautions } from "./plant-cautions";
import { plantFacts, sourceWords } from "./plant-facts";
import { plantWindows } from "./plant-windows";

const taxon = gardenTaxon("Hydrangea paniculata");
const correction = { id: "c1", field: "height" as const, value: [6, 8], note: "street trees here", savedAt: "" };
const { taxon: corrected, applied } = taxonCorrected(taxon, [correction], () => REFERENCE_YEAR);
const facts = plantFacts(corrected, applied, false).flatMap((g) => g.facts);
const fact = (field: string) => facts.find((f) => f.field === field);

describe("what a taxon's page says", () => {
  it("gives each value in words with its source, and the reason where it departs from a table", () => {
    expect(fact("spreadFt")).toMatchObject({ label: "Spread", words: "8–12 ft", source: "practice", correctable: "spread" });
    expect(fact("ph")).toMatchObject({ words: "5.5–7.5", source: "usda" });
    expect(fact("heightFt")?.why).toBe("garden plants stay lower");
    expect(fact("zoneLow")).toMatchObject({ label: "Hardy in zones", words: "4–8", correctable: "zones" });
  });
  it("shows beside a corrected value what the dataset says, and the note", () => {
    expect(fact("heightFt")).toMatchObject({ words: "6–8 ft", source: "own", correction: { original: "8–15 ft", note: "street trees here" } });
    expect(facts.filter((f) => f.correction)).toHaveLength(1);
  });
  it("offers no correction of one's own plant: that is edited", () => {
    expect(plantFacts(taxon, [], true).flatMap((g) => g.facts.filter((f) => f.correctable))).toEqual([]);
  });
  it("leaves out what has nothing to say", () => {
    expect(fact("sex")).toBeUndefined();
    expect(fact("partner")).toBeUndefined();
    expect(fact("flags")?.words).toBe("fragrant");
  });
  it("says honestly where a value comes from", () => {
    expect(sourceWords("practice", {})).toBe("Common practice, from memory, no source.");
    expect(sourceWords("own", {})).toBe("Your own entry.");
    expect(sourceWords("usda", { usda: { title: "PLANTS characteristics data", by: "USDA", year: 2020, licence: "public domain" } })).toBe(
      "PLANTS characteristics data, 2020. USDA.",
    );
  });
});

describe("windows in words and dates", () => {
  it("name time, dates with their spread, show and what dates them", () => {
    const [bloom, seedhead] = plantWindows(taxon, taxonSeason(taxon, REFERENCE_YEAR), [], false);
    expect(bloom).toMatchObject({ kind: "bloom", show: "outstanding", drive: "at 1700 degree days", field: "window.bloom.0" });
    expect(bloom?.swatches.map((s) => s.name)).toEqual(["white", "dusty pink"]);
    expect(bloom?.dates).toMatch(/^[A-Z][a-z]{2} \d+ – [A-Z][a-z]{2} \d+, ± \d+ days$/);
    expect(seedhead).toMatchObject({ words: "early October to mid March", source: "practice" });
    const [evergreen] = plantWindows(gardenTaxon("Thuja"), taxonSeason(gardenTaxon("Thuja"), REFERENCE_YEAR), [], false);
    expect(evergreen).toMatchObject({ words: "all year", dates: "", field: null });
  });
});

describe("cautions", () => {
  it("put the law of the state first, with list, date, exemption, and the advice to check the present list", () => {
    const [first] = plantCautions(taxon, "MA");
    expect(first).toMatchObject({ weight: "grave", title: "Regulated here, in MA" });
    expect(first?.words).toBe("Sale barred in MA (an invented list, 2009-01-01). Exempt: sterile cultivars. Check the state's present list.");
    expect(plantCautions(taxon, "VT")[0]?.title).toBe("Regulated");
  });
  it("tell poison by whom it harms, thorns, and the fall-dig hazard", () => {
    const said = plantCautions(taxon, null).map((c) => `${c.title}: ${c.words}`);
    expect(said).toContain("Poisonous: To horses. Parts: leaves and buds. Keep it out of reach and tell the client.");
    expect(said).toContain("Mildly poisonous: To people, dogs and cats.");
    expect(said.some((s) => s.startsWith("Thorny"))).toBe(true);
    expect(said.some((s) => s.startsWith("Fall-dig hazard"))).toBe(true);
  });
  it("are none where none is on record", () => expect(plantCautions(gardenTaxon("Thuja"), "VT")).toEqual([]));
});
