import { describe, expect, it } from "vitest";
import { gardenTaxa } from "../../tests/fixtures/garden-taxa";
import { isToxicFree, plantListDecode, plantListEncode } from "./plant-list";

const taxa = gardenTaxa();
const encoded = plantListEncode(taxa, { originOf: (t) => (t.kind === "conifer" ? "own" : "dataset"), symbolOf: (t) => t.usda });
const decoded = plantListDecode(JSON.parse(JSON.stringify(encoded)));

describe("the compact plant list", () => {
  it("gives every plant back in its order, with the names and values that search, filters and strips need", () => {
    expect(decoded).toHaveLength(taxa.length);
    taxa.forEach((taxon, i) => {
      const {
        id,
        name,
        genus,
        botanical,
        cultivar,
        group,
        tradeDesignation,
        synonyms,
        commonNames,
        kind,
        heightFt,
        spreadFt,
        zoneLow,
        zoneHigh,
        foliage,
        deer,
        salt,
        wetFeet,
        usda,
        leaves,
      } = taxon;
      expect(decoded[i]).toMatchObject({
        id,
        name,
        genus,
        botanical,
        cultivar,
        group,
        tradeDesignation,
        synonyms,
        commonNames,
        kind,
        heightFt,
        spreadFt,
        zoneLow,
        zoneHigh,
        foliage,
        deer,
        salt,
        wetFeet,
        usda,
        leaves,
      });
      expect(new Set(decoded[i]?.light)).toEqual(new Set(taxon.light));
    });
  });
  it("keeps all that dates a feature and colors it; notes and sources stay behind", () => {
    taxa.forEach((taxon, i) => {
      const wanted = taxon.features.map((f) => ({ ...f, note: null, source: "" }));
      expect(decoded[i]?.features).toEqual(wanted);
    });
  });
  it("says where a plant comes from and whether no part of it is poisonous", () => {
    expect(decoded.map((p) => p.origin)).toEqual(taxa.map((t) => (t.kind === "conifer" ? "own" : "dataset")));
    expect(decoded.map((p) => p.toxicFree)).toEqual(taxa.map(isToxicFree));
    expect(decoded.filter((p) => p.toxicFree).map((p) => p.genus)).toEqual(["× Heucherella", "Thuja"]);
  });
  it("packs and unpacks a list of nothing", () => {
    expect(plantListDecode(plantListEncode([], { originOf: () => "dataset", symbolOf: () => null }))).toEqual([]);
  });
});
