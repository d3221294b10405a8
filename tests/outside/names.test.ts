import { describe, expect, it } from "vitest";
import { nameSegments, nameText } from "../../lib/plants/botanical-name";
import { epithetFault } from "../../lib/plants/cultivar-epithet";
import { matchName } from "../../lib/plants/name-match";
import { nameWords } from "../../lib/plants/name-parse";
import { plantIndex, searchPlants } from "../../lib/plants/search";
import { paddedPlants } from "../benchmarks/padded-plants";
import { searchCases } from "../benchmarks/search-cases";
import { datasetTaxa } from "./dataset";
import { EPITHETS, NAMING_SOURCES, OLD_NAMES, TRADE_EXAMPLES } from "./naming-rules";

const taxa = datasetTaxa();
const index = plantIndex(taxa);

describe("the rules of the code for cultivated plants", () => {
  it.each(EPITHETS)("judge the epithet %s as published (%s)", (epithet, source, fault) => {
    expect(NAMING_SOURCES[source]).toBeTruthy();
    if (fault === null) expect(epithetFault(epithet)).toBeNull();
    else expect(epithetFault(epithet)).toContain(fault);
  });

  it("count the characters only from 1996 on", () => {
    expect(epithetFault("Abcdefghij Abcdefghij Abcdefghijk", 1950)).toBeNull();
    expect(epithetFault("Abcdefghij Abcdefghij Abcdefghijk", 1996)).toContain("at most 30");
  });

  it.each(TRADE_EXAMPLES)("set a trade designation apart and without quotes: $text", (example) => {
    expect(nameText(example)).toBe(example.text);
    const segments = nameSegments(example);
    expect(segments.at(-1)).toEqual({ text: example.tradeDesignation, style: "trade", role: "trade" });
    expect(segments.filter((segment) => /[‘’"]/.test(segment.text)).map((segment) => segment.role)).toEqual(["cultivar"]);
  });

  it("hold for every cultivar of the dataset", () => {
    expect(taxa.flatMap((taxon) => (taxon.cultivar && epithetFault(taxon.cultivar) ? [`${taxon.name}: ${epithetFault(taxon.cultivar)}`] : []))).toEqual([]);
  });
});

describe("names of old books", () => {
  const known = new Map(taxa.map((taxon) => [nameWords(taxon.name).join(" "), taxon]));
  const pairs = OLD_NAMES.flatMap(([printed, today]) => {
    const taxon = known.get(nameWords(today).join(" "));
    return taxon ? [{ printed, taxon }] : [];
  });

  it("are known for most of the plants that the dataset has", () => {
    expect(pairs.length).toBeGreaterThanOrEqual(20);
  });

  it("lead to the plant", () => {
    for (const { printed, taxon } of pairs) {
      expect([printed, matchName(index, printed)?.taxonId]).toEqual([printed, taxon.id]);
      expect([printed, searchPlants(index, printed, 5).map((hit) => hit.taxon.id)]).toEqual([printed, expect.arrayContaining([taxon.id])]);
    }
  });
});

describe("the dataset's own names", () => {
  it("are matched, and sure, as accepted name, by trade designation and by former name", () => {
    const wrong = taxa.flatMap((taxon) =>
      [
        taxon.name,
        taxon.name.toUpperCase(),
        taxon.name.replace(/×/g, "x"),
        ...(taxon.tradeDesignation ? [`${taxon.botanical} ${taxon.tradeDesignation}`] : []),
        ...taxon.synonyms,
      ].flatMap((text) => {
        const match = matchName(index, text);
        return match?.taxonId === taxon.id && match.sure ? [] : [`${text} → ${match?.taxonId ?? "nothing"}${match?.sure ? "" : ", not sure"}`];
      }),
    );
    expect(wrong).toEqual([]);
  });

  it("are found when misspelt, abbreviated, turned around or half typed: nearly always first", () => {
    const all = paddedPlants(taxa, 5000, 20261125);
    const padded = plantIndex(all);
    const { cases } = searchCases(taxa, all, 112, 20261125);
    const places = cases.map((one) => searchPlants(padded, one.query, 5).findIndex((hit) => one.right.includes(hit.taxon.id)));
    expect(places.filter((place) => place === 0).length / cases.length).toBeGreaterThanOrEqual(0.98);
    expect(places.filter((place) => place >= 0).length / cases.length).toBeGreaterThanOrEqual(0.99);
  });
});
