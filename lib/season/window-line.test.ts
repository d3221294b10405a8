import { describe, expect, it } from "vitest";
import { datasetTaxa } from "../../tests/outside/dataset";
import { REFERENCE_YEAR } from "../place/reference";
import { taxonSeason } from "./taxon-season";
import { datedByWords, leavesLine, windowLine } from "./window-line";

const taxa = datasetTaxa();
const seasonOf = (name: string) => {
  const taxon = taxa.find((t) => t.name === name);
  if (!taxon) throw new Error(`${name} is not in the dataset`);
  return taxonSeason(taxon, REFERENCE_YEAR);
};

describe("a window in one line", () => {
  it("gives begin, best, end, spread and the published figure", () => {
    const bloom = seasonOf("Forsythia × intermedia").windows.find((w) => w.kind === "bloom");
    expect(bloom && windowLine(bloom)).toMatch(
      /^bloom yellow: Apr 4 to \w+ \d+, best about Apr \d+, ± \d+ days; by warmth: first bloom at 86 degree days base 50 °F, as published for Wooster, Ohio$/,
    );
  });

  it("says all year for what has no date", () => {
    const green = seasonOf("Taxus × media").windows.find((w) => w.kind === "evergreen");
    expect(green && windowLine(green)).toMatch(/: all year$/);
  });

  it("names what decides the date where nothing was published", () => {
    expect(datedByWords({ drive: "light", degreeDays: null })).toBe("by day length");
    expect(datedByWords({ drive: "heat", degreeDays: 34, degreeDaysFull: 42 })).toContain("first bloom at 34, full bloom at 42 degree days");
  });

  it("gives the leaves' dates with a spread for each, and none for evergreens", () => {
    expect(leavesLine(seasonOf("Forsythia × intermedia"))).toMatch(/^in leaf: \w+ \d+ to \w+ \d+, ± \d+ and ± \d+ days$/);
    expect(leavesLine(seasonOf("Taxus × media"))).toBeNull();
  });
});
