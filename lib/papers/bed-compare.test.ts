import { describe, expect, it } from "vitest";
import { datasetTaxa, stationsRead } from "../../tests/outside/dataset";
import { type Bed, EMPTY_BED } from "../ground/bed";
import { climateAt } from "../place/climate-at";
import { placeYear } from "../place/place-year";
import { DEFAULT_TARGETS } from "../season/interest";
import { taxonSeason } from "../season/taxon-season";
import { bedComparison, type ComparedSide, comparedSide } from "./bed-compare";
import type { PlacedTaxon, ViewPlace } from "./bed-view";

const taxa = datasetTaxa();
const stations = stationsRead();
const LIST = [
  ["Cercis canadensis", 1],
  ["Syringa vulgaris", 3],
  ["Symphyotrichum oblongifolium", 9],
  ["Taxus × media", 3],
] as const;
const found = LIST.flatMap(([name, count]) => {
  const taxon = taxa.find((t) => t.name === name);
  return taxon ? [{ taxon, count }] : [];
});
const BED: Bed = {
  ...EMPTY_BED,
  size: { by: "rectangle", lengthFt: 30, widthFt: 10 },
  rows: found.map(({ taxon, count }, i) => ({
    id: `r${i}`,
    taxonId: taxon.id,
    taxonName: taxon.name,
    quantity: { by: "count", count },
    spacingFt: null,
    size: "#3",
    remarks: "",
    existing: false,
  })),
};

function sideAt(label: string, lat: number, lon: number, zone: number | null, bed: Bed = BED): ComparedSide {
  const answer = climateAt(stations, { lat, lon });
  if (answer.kind === "fault") throw new Error(answer.message);
  const year = placeYear(answer.climate);
  const placed: Record<string, PlacedTaxon> = Object.fromEntries(found.map(({ taxon }) => [taxon.id, { taxon, season: taxonSeason(taxon, year) }]));
  const place: ViewPlace = { zone, state: null, lastFreezeDay: answer.climate.lastFreezeDay, firstFreezeDay: answer.climate.firstFreezeDay };
  return comparedSide(label, bed, placed, place, DEFAULT_TARGETS);
}
const WOOSTER = sideAt("Wooster", 40.78, -81.92, 6.5);
const NORTH = sideAt("International Falls", 48.6, -93.4, 3.5);
const SOUTH = sideAt("Atlanta", 33.75, -84.39, 8);

describe("a bed at two places", () => {
  const north = bedComparison(WOOSTER, NORTH);
  const words = north.words.join("\n");

  it("has a row a plant, with how many days it moves", () => {
    expect(north.rows).toHaveLength(LIST.length);
    expect(north.rows[1]?.shiftWords).toMatch(/^bloom \d+ days later/);
    expect(bedComparison(WOOSTER, SOUTH).rows[1]?.shiftWords).toMatch(/^bloom \d+ days earlier/);
  });

  it("names what is too tender there, by letter and name", () => {
    expect(words).toMatch(/Too tender there: A Cercis canadensis/);
    expect(words).not.toMatch(/Too tender there:[^\n]*Syringa/);
  });

  it("tells how much shorter the season is, and from which ends", () => {
    expect(words).toMatch(/The growing season is \d+ days shorter: \d+ days there against \d+ here\. The last freeze comes \d+ days later, the first \d+ days earlier\./);
    expect(words).toMatch(/begins \d+ days later and fall color \d+ days earlier there: the year is squeezed from both ends/);
  });

  it("catches the fall bloom that the freeze there cuts short", () => {
    expect(words).toMatch(/C Symphyotrichum oblongifolium blooms mostly after the first freeze there/);
  });

  it("gives the reason of each half-month that falls bare there", () => {
    const opened = NORTH.view.season.gaps.filter((g) => !WOOSTER.view.season.gaps.some((h) => h.index === g.index));
    expect(opened.length).toBeGreaterThan(0);
    expect(words).toMatch(/falls? bare there: .+\./);
  });

  it("gives the score there also of what outlives the winters", () => {
    expect(NORTH.hardyScore).toBeLessThan(NORTH.view.season.score);
    expect(WOOSTER.hardyScore).toBe(WOOSTER.view.season.score);
    expect(words).toMatch(/The year reaches \d+ % of its targets (there, \d+ % here|at both); without what is lost there, \d+ %\./);
  });

  it("is the other way round when the places are swapped", () => {
    const back = bedComparison(NORTH, WOOSTER);
    expect(back.words.join("\n")).toMatch(/Hardy there, though too tender here: A Cercis canadensis/);
    expect(back.words.join("\n")).toMatch(/days longer/);
  });

  it("finds nothing different between a place and itself", () => {
    const same = bedComparison(WOOSTER, WOOSTER);
    for (const row of same.rows) expect(row.shiftWords).not.toMatch(/later|earlier/);
    expect(same.words.join("\n")).not.toMatch(/Too tender|bare there|shorter|longer/);
  });

  it("says so when the zone there is not known", () => {
    expect(bedComparison(WOOSTER, sideAt("somewhere", 48.6, -93.4, null)).words[0]).toMatch(/zone there is not known/);
  });

  it("has nothing to say of an empty bed", () => {
    const empty = sideAt("Wooster", 40.78, -81.92, 6.5, { ...BED, rows: [] });
    expect(bedComparison(empty, empty)).toEqual({ rows: [], words: [] });
  });
});
