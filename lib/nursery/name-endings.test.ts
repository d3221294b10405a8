import { describe, expect, it } from "vitest";
import { nameEndings } from "./name-endings";

const plant = (id: string, botanical: string, cultivar: string | null, commonNames: string[], synonyms: string[] = []) => ({
  id,
  name: cultivar ? `${botanical} '${cultivar}'` : botanical,
  botanical,
  genus: botanical.split(" ")[0] ?? "",
  cultivar,
  group: null,
  tradeDesignation: null,
  commonNames,
  synonyms,
});
const { alike, underPresentGenus } = nameEndings([
  plant("alatus", "Euonymus alatus", null, ["burning bush"]),
  plant("compactus", "Euonymus alatus", "Compactus", ["burning bush"]),
  plant("rosy", "Rhododendron", "Rosy Lights", ["azalea"], ["Azalea 'Rosy Lights'"]),
  plant("strobus", "Pinus strobus", null, ["white pine"]),
  plant("parviflora", "Pinus parviflora", null, ["white pine"]),
]);

describe("names that differ in an ending only", () => {
  it.each([
    ["Euonymus alata", "alatus"],
    ["Euonymus alata 'Compacta'", "compactus"],
    ["Bush, Burning", "alatus"],
    ["Pine, White", null],
    ["Euonymus alata type", null],
    ["Euonymus", null],
  ])("%s is %s", (text, id) => {
    expect(alike(text)).toBe(id);
  });
  it("are read under the genus that the former one is part of", () => {
    expect(underPresentGenus("Azalea schlippenbachii")).toEqual(["Rhododendron schlippenbachii"]);
    expect(underPresentGenus("Acer rubrum")).toEqual([]);
  });
});

describe("common names turned round or put together", () => {
  const { alike: called } = nameEndings([
    plant("redcedar", "Juniperus virginiana", null, ["eastern redcedar"]),
    plant("pungens", "Picea pungens", null, ["Colorado spruce", "blue spruce"]),
    plant("hoopsii", "Picea pungens", "Hoopsii", ["Colorado spruce", "blue spruce"]),
    plant("glauca", "Picea glauca", null, ["white spruce"]),
  ]);

  it("are read as spoken, and from all words of one species", () => {
    expect(called("Cedar, Eastern Red")).toBe("redcedar");
    expect(called("Spruce, Colorado Blue")).toBe("pungens");
    expect(called("Spruce, Serbian Blue")).toBeNull();
  });
});
