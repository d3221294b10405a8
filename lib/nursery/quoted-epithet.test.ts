import { describe, expect, it } from "vitest";
import { quotedEpithets } from "./quoted-epithet";

const plant = (id: string, botanical: string, cultivar: string | null, commonNames: string[], tradeDesignation: string | null = null) => ({
  id,
  name: cultivar ? `${botanical} '${cultivar}'` : botanical,
  botanical,
  genus: botanical.split(" ")[0] ?? "",
  cultivar,
  group: null,
  tradeDesignation,
  commonNames,
  synonyms: [],
});
const { plant: read, plantBehind } = quotedEpithets([
  plant("chinensis", "Juniperus chinensis", null, ["Chinese juniper"]),
  plant("sea", "Juniperus × pfitzeriana", "Sea Green", ["Pfitzer juniper"]),
  plant("gold", "Spiraea japonica", "Goldmound", ["Japanese spirea"]),
  plant("hornbeam", "Carpinus betulus", "Fastigiata", ["European hornbeam"]),
  plant("dissected", "Acer palmatum", "Tamukeyama", ["laceleaf maple"]),
  plant("redtwig", "Cornus sericea", "Farrow", ["red-osier dogwood"], "Arctic Fire"),
  plant("one", "Viburnum opulus", "Compactum", ["European cranberrybush viburnum"]),
  plant("two", "Viburnum carlesii", "Compactum", ["Koreanspice viburnum"]),
  plant("luna", "Hibiscus", "Luna Red", ["rose mallow"]),
]);

describe("a cultivar in quotes", () => {
  it.each([
    ["Juniper, Chinese 'Sea Green'", "sea"],
    ["Juniperus chinensis 'Sea Green'", "sea"],
    ["Spirea, 'Gold Mound'", "gold"],
    ["Dogwood, Redtwig 'Arctic Fire'", "redtwig"],
    ["Acer palmatum dissectum 'Tamukeyama'", "dissected"],
  ])("decides the plant: %s", (text, id) => {
    expect(read(text)).toBe(id);
  });

  it.each(["Carpinus caroliniana 'Fastigiata'", "Hornbeam, American 'Fastigiata'", "Viburnum 'Compactum'", "Lilac 'Sea Green'", "Juniperus chinensis"])(
    "does not where it means a form, or two plants, or another genus: %s",
    (text) => {
      expect(read(text)).toBeNull();
    },
  );
});

describe("a cultivar without quotes", () => {
  it.each([
    ["Hibiscus moscheutos Luna Red", "luna"],
    ["Juniper, Sea Green", "sea"],
    ["JUN CHIN SEA GREEN", "sea"],
  ])("decides at the end of the name: %s", (text, id) => {
    expect(plantBehind(text)).toBe(id);
  });

  it.each(["Juniperus chinensis Sea", "Acer palmatum Luna Red", "JUN CHIN SEA"])("does not cut short or under another genus: %s", (text) => {
    expect(plantBehind(text)).toBeNull();
  });
});
