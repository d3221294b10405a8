import { describe, expect, it } from "vitest";
import { TEST_ENTRY } from "../../tests/fixtures/test-taxon";
import { datasetFaults, faultText, genusTaxa, taxonId } from "./taxon-load";

const species = {
  ...TEST_ENTRY,
  name: "Cornus sericea",
  synonyms: ["Cornus stolonifera"],
  note: "spreads by layers",
  src: { usda: ["height"] },
  features: {
    bloom: { color: "white", from: "late May", to: "mid Jun", show: 1 },
    bark: { color: "twig red", show: 3 },
    fruit: { color: "white", from: "early Aug", to: "mid Sep", show: 1 },
  },
};
const genus = (...taxa: object[]) => ({ genus: "Cornus", family: "Cornaceae", taxa });
const load = (...taxa: object[]) => genusTaxa("cornus.yaml", genus(...taxa));

describe("a genus file", () => {
  it("leaves a table's symbol and rows to the species: a variety takes them over, another species built on it does not", () => {
    const { taxa, faults } = load(
      { ...species, usda: "COSE16" },
      { name: "Cornus sericea var. coloradensis", parent: "Cornus sericea" },
      { name: "Cornus alba", parent: "Cornus sericea", synonyms: [] },
    );
    expect(faults).toEqual([]);
    expect(taxa.map((t) => [t.name, t.usda, t.sources.heightFt])).toEqual([
      ["Cornus sericea", "COSE16", "usda"],
      ["Cornus sericea var. coloradensis", "COSE16", "usda"],
      ["Cornus alba", null, "practice"],
    ]);
  });

  it("gives a cultivar what its species has, except what it overrides", () => {
    const { taxa, faults } = load({
      ...species,
      cultivars: [
        { cultivar: "Flaviramea", features: { bark: { color: "twig yellow", show: 3 }, fruit: null } },
        { cultivar: "Farrow", trade: "Arctic Fire", height: [3, 4] },
      ],
    });
    expect(faults).toEqual([]);
    const [own, yellow, dwarf] = taxa;
    expect(yellow?.name).toBe("Cornus sericea 'Flaviramea'");
    expect(yellow?.features.map((f) => [f.kind, f.color])).toEqual([
      ["bloom", "white"],
      ["bark", "twig yellow"],
    ]);
    expect(yellow?.heightFt).toEqual(own?.heightFt);
    expect(yellow?.note).toBeNull();
    expect(dwarf?.heightFt).toEqual([3, 4]);
    expect(dwarf?.tradeDesignation).toBe("Arctic Fire");
    expect(dwarf?.name).toBe("Cornus sericea 'Farrow'");
  });
  it("keeps the source of each value: a table's where it was taken, practice where the cultivar overrides", () => {
    const { taxa } = load({ ...species, cultivars: [{ cultivar: "Farrow", height: [3, 4] }] });
    expect(taxa[0]?.sources.heightFt).toBe("usda");
    expect(taxa[0]?.sources["features.bloom"]).toBe("practice");
    expect(taxa[1]?.sources.heightFt).toBe("practice");
    expect(taxa[1]?.sources.spreadFt).toBe("practice");
  });
  it("lets the species' former name serve its cultivars", () => {
    const { taxa } = load({ ...species, cultivars: [{ cultivar: "Cardinal" }] });
    expect(taxa[1]?.synonyms).toContain("Cornus stolonifera 'Cardinal'");
  });
  it("shows twigs from leaf-drop to leaf-out when no window is written", () => {
    const bark = load(species).taxa[0]?.features.find((f) => f.kind === "bark");
    expect([bark?.startDay, bark?.endDay, bark?.drive]).toEqual([294, 120, "dormancy"]);
  });
  it("names file, taxon and field of every fault", () => {
    const wrong = load({ ...species, height: [9, 6], cultivars: [{ cultivar: "Odd", features: { bloom: { color: "octarine", from: "sometime", show: 3 } } }] });
    const texts = wrong.faults.map(faultText);
    expect(texts.some((t) => t.startsWith("cornus.yaml: Cornus sericea: height:"))).toBe(true);
    expect(texts.some((t) => t.startsWith("cornus.yaml: Cornus sericea 'Odd': features.bloom"))).toBe(true);
  });
  it("says what is missing after inheritance", () => {
    const { wood: _wood, leaves: _leaves, ph: _ph, ...rest } = species;
    expect(load(rest).faults.map((f) => f.field)).toEqual(expect.arrayContaining(["ph"]));
    expect(load({ ...rest, ph: [5, 7] }).faults.map((f) => f.field)).toEqual(expect.arrayContaining(["wood", "leaves"]));
  });
  it("refuses an unknown field rather than dropping it", () => {
    expect(
      load({ ...species, colour: "red" })
        .faults.map((f) => f.message)
        .join(),
    ).toMatch(/colour/);
  });
});

describe("between taxa", () => {
  const all = (...taxa: object[]) => load(...taxa).taxa.map((taxon) => ({ file: "cornus.yaml", taxon }));
  const sources = { practice: { title: "x", by: "y", licence: "z" }, usda: { title: "x", by: "y", licence: "z" } };
  it("finds a name given twice, and a synonym that is another's accepted name", () => {
    expect(
      datasetFaults(all(species, species), sources)
        .map((f) => f.message)
        .join(),
    ).toMatch(/stands already/);
    expect(
      datasetFaults(all(species, { ...species, name: "Cornus stolonifera", synonyms: [] }), sources)
        .map((f) => f.message)
        .join(),
    ).toMatch(/itself an accepted name/);
  });
  it("finds a source that is not listed", () => {
    expect(
      datasetFaults(all({ ...species, src: { nowhere: ["height"] } }), sources)
        .map((f) => f.message)
        .join(),
    ).toMatch(/"nowhere" is not a key/);
  });
  it("makes ids of plain letters", () => {
    expect(taxonId("Acer × freemanii 'Jeffersred'")).toBe("acer-x-freemanii-jeffersred");
  });
});
