import { describe, expect, it } from "vitest";
import { PLANT_DOCS } from "../../tests/fixtures/plant-docs";
import { plantIndex, searchPlants } from "./search";

const index = plantIndex(PLANT_DOCS);
const names = (query: string, limit = 5) => searchPlants(index, query, limit).map((hit) => hit.taxon.name);
const first = (query: string) => names(query, 1)[0];

describe("search as one types", () => {
  it("finds nothing for nothing, and nothing for noise", () => {
    expect(names("")).toEqual([]);
    expect(names("   ")).toEqual([]);
    expect(names("'")).toEqual([]);
    expect(names("qqqq zzzz")).toEqual([]);
    expect(searchPlants(index, "acer", 0)).toEqual([]);
  });

  it("finds a plant by every kind of its names and says which one matched", () => {
    for (const [query, name, matched] of [
      ["Hydrangea paniculata 'Limelight'", "Hydrangea paniculata 'Limelight'", "botanical"],
      ["Little Lime", "Hydrangea paniculata 'Jane'", "trade"],
      ["Cornus stolonifera", "Cornus sericea", "former"],
      ["Aster novae-angliae Purple Dome", "Symphyotrichum novae-angliae 'Purple Dome'", "former"],
      ["paperbark maple", "Acer griseum", "common"],
      ["lily of the valley", "Convallaria majalis", "common"],
    ] as const) {
      const [hit] = searchPlants(index, query, 3);
      expect([query, hit?.taxon.name, hit?.matched]).toEqual([query, name, matched]);
    }
  });

  it("takes a cultivar with a common name", () => {
    expect(first("Limelight hydrangea")).toBe("Hydrangea paniculata 'Limelight'");
    expect(first("Karl Foerster grass")).toBe("Calamagrostis × acutiflora 'Karl Foerster'");
    expect(first("blue star juniper")).toBe("Juniperus squamata 'Blue Star'");
    expect(first("knock out rose")).toBe("Rosa 'Radrazz'");
  });

  it("forgives dropped, doubled, swapped and changed letters", () => {
    expect(first("hydrangea panculata limelght")).toBe("Hydrangea paniculata 'Limelight'");
    expect(first("oakleaf hydrangeaa")).toBe("Hydrangea quercifolia");
    expect(first("karl forester grass")).toBe("Calamagrostis × acutiflora 'Karl Foerster'");
    expect(first("smaradg")).toBe("Thuja occidentalis 'Smaragd'");
    expect(first("rudbekia goldstrum")).toBe("Rudbeckia fulgida var. sullivantii 'Goldsturm'");
  });

  it("understands short forms", () => {
    expect(first("Hydr. pan. Limelight type")).toBe("Hydrangea paniculata 'Limelight'");
    expect(first("Acer rub. 'October Glory'")).toBe("Acer rubrum 'October Glory'");
    expect(first("Thuja occ. Smaragd")).toBe("Thuja occidentalis 'Smaragd'");
    expect(first("hyd pan limel")).toBe("Hydrangea paniculata 'Limelight'");
    expect(first("A. griseum")).toBe("Acer griseum");
  });

  it("does not mind the order of words, nor words written as one or in two", () => {
    expect(first("glory october rubrum")).toBe("Acer rubrum 'October Glory'");
    expect(first("maple, sugar")).toBe("Acer saccharum");
    expect(first("bluestar juniper")).toBe("Juniperus squamata 'Blue Star'");
    expect(first("lime light")).toBe("Hydrangea paniculata 'Limelight'");
  });

  it("shows results while the last word is still being typed, a misspelt beginning included", () => {
    expect(first("acer rubrum oct")).toBe("Acer rubrum 'October Glory'");
    expect(first("calamag")).toBe("Calamagrostis × acutiflora 'Karl Foerster'");
    expect(first("calmagr")).toBe("Calamagrostis × acutiflora 'Karl Foerster'");
    expect(names("g")).toEqual(["Ginkgo biloba", "Ginkgo biloba 'Autumn Gold'"]);
  });

  it("puts the species before its cultivars when no cultivar is named", () => {
    expect(first("red maple")).toBe("Acer rubrum");
    expect(first("acer rubrum")).toBe("Acer rubrum");
    expect(first("hydrangea paniculata")).toBe("Hydrangea paniculata");
    expect(first("redtwig dogwood")).toBe("Cornus sericea");
  });

  it("prefers plants that answer every word", () => {
    const hits = searchPlants(index, "red sunset maple", 5);
    expect(hits[0]?.taxon.name).toBe("Acer rubrum 'Franksred'");
    expect(hits[0]?.score ?? 0).toBeGreaterThan(hits[1]?.score ?? 0);
  });

  it("gives scores from 1 down, never more hits than asked for, and the same answer every time", () => {
    const hits = searchPlants(index, "hydrangea", 3);
    expect(hits).toHaveLength(3);
    const scores = hits.map((hit) => hit.score);
    expect([...scores].sort((a, b) => b - a)).toEqual(scores);
    for (const score of scores) expect(score).toBeGreaterThan(0);
    for (const score of scores) expect(score).toBeLessThanOrEqual(1);
    expect(searchPlants(index, "hydrangea", 3)).toEqual(hits);
  });

  it("works on an empty index", () => {
    expect(searchPlants(plantIndex([]), "acer", 5)).toEqual([]);
  });
});
