import { describe, expect, it } from "vitest";
import { PLANT_DOCS, plantDoc } from "../../tests/fixtures/plant-docs";
import { matchName } from "./name-match";
import { plantIndex } from "./search";

const index = plantIndex(PLANT_DOCS);
const match = (text: string) => matchName(index, text);
const id = (text: string) => match(text)?.taxonId ?? null;

describe("a written name that is a plant's name", () => {
  it("is sure in any capitals, quotes and hybrid sign, with authors and trade marks", () => {
    for (const [text, taxonId] of [
      ["Hydrangea paniculata 'Limelight'", "hydrangea-paniculata-limelight"],
      ["HYDRANGEA PANICULATA LIMELIGHT", "hydrangea-paniculata-limelight"],
      ['hydrangea paniculata "limelight"', "hydrangea-paniculata-limelight"],
      ["Hydrangea paniculata Little Lime®", "hydrangea-paniculata-jane"],
      ["Hydrangea paniculata 'Jane' LITTLE LIME", "hydrangea-paniculata-jane"],
      ["Hydrangea paniculata Little Lime ('Jane')", "hydrangea-paniculata-jane"],
      ["Acer x freemanii 'Jeffersred'", "acer-x-freemanii-jeffersred"],
      ["Acer freemanii Autumn Blaze", "acer-x-freemanii-jeffersred"],
      ["Acer rubrum L.", "acer-rubrum"],
      ["Acer rubrum (Red Maple)", "acer-rubrum"],
      ["Acer rubrum - Red Maple", "acer-rubrum"],
      ["Viburnum plicatum 'Shasta'", "viburnum-plicatum-f-tomentosum-shasta"],
      ["Rudbeckia fulgida Goldsturm", "rudbeckia-fulgida-var-sullivantii-goldsturm"],
      ["Symphyotrichum novae angliae", "symphyotrichum-novae-angliae"],
    ] as const)
      expect({ text, ...match(text) }).toMatchObject({ text, taxonId, sure: true });
  });

  it("is sure for former names, the cultivar's too", () => {
    expect(match("Cornus stolonifera")).toMatchObject({ taxonId: "cornus-sericea", sure: true });
    expect(match("Aster novae-angliae 'Purple Dome'")).toMatchObject({ taxonId: "symphyotrichum-novae-angliae-purple-dome", sure: true });
    expect(match("Cornus stolonifera Arctic Fire")).toMatchObject({ taxonId: "cornus-sericea-farrow", sure: true });
    expect(match("Hosta sieboldiana 'Frances Williams'")).toMatchObject({ taxonId: "hosta-frances-williams", sure: true });
  });

  it("is sure for genus and cultivar, and for a common name that one species bears", () => {
    expect(match("Hydrangea 'Limelight'")).toMatchObject({ taxonId: "hydrangea-paniculata-limelight", sure: true });
    expect(match("red maple")).toMatchObject({ taxonId: "acer-rubrum", sure: true });
    expect(match("Maple, Red")).toMatchObject({ taxonId: "acer-rubrum", sure: true });
    expect(match("Limelight hydrangea")).toMatchObject({ taxonId: "hydrangea-paniculata-limelight", sure: true });
  });
});

describe("a written name that is nearly a plant's name", () => {
  it("matches with less confidence and is not sure", () => {
    for (const [text, taxonId] of [
      ["Hydrangea panicluata 'Limelight'", "hydrangea-paniculata-limelight"],
      ["Hydrangia paniculata", "hydrangea-paniculata"],
      ["Acer rubrum 'October Glroy'", "acer-rubrum-october-glory"],
      ["Hydr. pan. Limelight type", "hydrangea-paniculata-limelight"],
      ["Thuja occ. Smaragd", "thuja-occidentalis-smaragd"],
      ["Quercus rubrum", "quercus-rubra"],
      ["paperbrak maple", "acer-griseum"],
    ] as const) {
      const found = match(text);
      expect({ text, ...found }).toMatchObject({ text, taxonId, sure: false });
      expect(found?.confidence).toBeLessThan(1);
    }
  });

  it("finds a cultivar under a sibling's name", () => {
    expect(match("Acer rubrum 'Autumn Blaze'")).toMatchObject({ taxonId: "acer-x-freemanii-jeffersred", sure: false });
  });

  it("lets a cultivar that is not in the index fall back to its species, said so", () => {
    expect(match("Acer rubrum 'Bowhall'")).toMatchObject({ taxonId: "acer-rubrum", sure: false, fallback: "species" });
    expect(match("Cornus stolonifera 'Isanti'")).toMatchObject({ taxonId: "cornus-sericea", fallback: "species" });
    expect(match("Hydrangea paniculata Little Lamb")).toMatchObject({ taxonId: "hydrangea-paniculata", fallback: "species" });
  });
});

describe("a written name that is no plant of the index", () => {
  it("is never read as another species of the genus", () => {
    for (const text of [
      "Quercus alba",
      "QUERCUS ALBA",
      "Quercus alba 'Nobody'",
      "Acer saccharinum",
      "Viburnum dilatatum",
      "Cornus kousa",
      "Hydrangea quercina",
      "Acer platanoides 'Crimson King'",
      "Juniperus chinensis",
      "Thuja plicata (arborvitae)",
      "Arborvitae (Thuja plicata)",
    ])
      expect([text, id(text)]).toEqual([text, null]);
  });

  it("is never read as another cultivar where the species has no entry", () => {
    expect(id("Hosta 'Francee'")).toBeNull();
    expect(id("Hydrangea arborescens 'Grandiflora'")).toBeNull();
    expect(id("Rosa 'Nearly Wild'")).toBeNull();
  });

  it("is nothing for a bare genus that several entries share, and the species where the genus has but one", () => {
    expect(id("Acer")).toBeNull();
    expect(id("Hosta")).toBeNull();
    expect(id("hosta")).toBeNull();
    expect(id("Ginkgo")).toBe("ginkgo-biloba");
    expect(id("Convallaria")).toBe("convallaria-majalis");
  });

  it("is not a hybrid's parent, and nothing for noise", () => {
    expect(id("Acer rubrum × saccharinum")).toBeNull();
    expect(id("")).toBeNull();
    expect(id("mulch, 3 in")).toBeNull();
    expect(id("white oak")).toBeNull();
  });
});

describe("matching as a whole", () => {
  it("finds every plant of the index by its own names, and sure", () => {
    for (const plant of PLANT_DOCS)
      for (const text of [plant.name, plant.name.toUpperCase(), plant.name.replace(/×/g, "x").replace(/'/g, ""), ...plant.synonyms])
        expect([text, match(text)]).toEqual([text, expect.objectContaining({ taxonId: plant.id, sure: true })]);
  });

  it("finds each plant left out of the index nowhere but at its species", () => {
    for (const plant of PLANT_DOCS) {
      const without = plantIndex(PLANT_DOCS.filter((other) => other.id !== plant.id));
      const found = matchName(without, plant.name);
      if (found) expect([plant.name, found]).toEqual([plant.name, expect.objectContaining({ taxonId: plantDoc(plant.botanical, { common: [] }).id, fallback: "species" })]);
    }
  });
});
