import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { gardenTaxa } from "../../tests/fixtures/garden-taxa";
import { REFERENCE_YEAR } from "../place/reference";
import { COLOR_FAMILIES } from "../plants/color-family";
import { plantListDecode, plantListEncode } from "../plants/plant-list";
import { FEATURE_KINDS, KINDS, LIGHTS } from "../plants/vocabulary";
import { monthColors } from "../season/month-colors";
import { taxonSeason } from "../season/taxon-season";
import { type FilterContext, filterParts, filterRead, filterWrite, NO_FILTER, type PlantFilter, plantFits, plantsByUse } from "./plant-filter";

const plants = plantListDecode(plantListEncode(gardenTaxa(), { originOf: (t) => (t.kind === "conifer" ? "own" : "dataset"), symbolOf: (t) => t.usda }));
const onHand = Object.fromEntries(plants.flatMap((p) => (p.kind === "conifer" ? [[p.id, 12]] : [])));
const context: FilterContext = { native: new Set(["THOC2"]), colorsAt: (plant) => monthColors(taxonSeason(plant, REFERENCE_YEAR).windows), onHand };
const found = (filter: Partial<PlantFilter>): string[] => plants.filter((p) => plantFits(p, { ...NO_FILTER, ...filter }, context)).map((p) => p.tradeDesignation ?? p.genus);
const ALL = ["Hydrangea", "Little Lime", "Pale Lantern", "× Heucherella", "Thuja"];

const optional = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });
const feet = optional(fc.integer({ min: 1, max: 400 }).map((n) => n / 4));
const subset = <T extends string>(words: readonly T[]) => fc.subarray([...words]);
const filters: fc.Arbitrary<PlantFilter> = fc.record({
  q: fc.constantFrom("", "lime light", "Cornus 'Ivory Halo' & more", "50% ?=#"),
  kinds: subset(KINDS),
  zone: optional(fc.integer({ min: 2, max: 26 }).map((n) => n / 2)),
  light: optional(fc.constantFrom(...LIGHTS)),
  height: fc.tuple(feet, feet),
  spread: fc.tuple(feet, feet),
  month: optional(fc.integer({ min: 0, max: 11 })),
  colors: subset(COLOR_FAMILIES),
  feature: optional(fc.constantFrom(...FEATURE_KINDS)),
  evergreen: fc.boolean(),
  native: fc.boolean(),
  deer: optional(fc.constantFrom("sometimes" as const, "rarely" as const)),
  salt: optional(fc.constantFrom("medium" as const, "high" as const)),
  wet: optional(fc.constantFrom("brief" as const, "yes" as const)),
  toxicFree: fc.boolean(),
  own: fc.boolean(),
  onHand: fc.boolean(),
});

describe("the filter in the address", () => {
  it("comes back from its address as it was", () => {
    fc.assert(
      fc.property(filters, (filter) => {
        expect(filterRead(new URLSearchParams(filterWrite(filter)))).toEqual(filter);
      }),
    );
  });
  it("leaves out of an address what it cannot read", () => {
    const text = "kind=shrub,bush&zone=99&light=moon&height=a~b&month=13&color=white,shiny&show=smell&deer=x";
    expect(filterRead(new URLSearchParams(text))).toEqual({ ...NO_FILTER, kinds: ["shrub"], colors: ["white"] });
  });
  it("is an empty address when nothing is asked", () => {
    expect(filterWrite(NO_FILTER)).toBe("");
  });
});

describe("what fits", () => {
  it("is everything when nothing is asked", () => expect(found({})).toEqual(ALL));
  it.each<[string, Partial<PlantFilter>, string[]]>([
    ["a kind", { kinds: ["conifer", "perennial"] }, ["× Heucherella", "Thuja"]],
    ["a zone within the plant's", { zone: 8.5 }, ALL],
    ["no zone warmer than its warmest", { zone: 9 }, []],
    ["no zone colder than its coldest", { zone: 3.5 }, []],
    ["light it takes", { light: "shade" }, ["× Heucherella"]],
    ["a height it grows to, by the high end of its range", { height: [4, 5] }, ["Little Lime"]],
    ["a height with one open end", { height: [null, 1] }, ["× Heucherella"]],
    ["a spread", { spread: [6, 6] }, ["Thuja"]],
    ["evergreen leaves", { evergreen: true }, ["Thuja"]],
    ["nativity to the state", { native: true }, ["Thuja"]],
    ["deer", { deer: "rarely" }, ["Little Lime"]],
    ["salt", { salt: "medium" }, ["Little Lime"]],
    ["wet feet", { wet: "brief" }, ["Pale Lantern"]],
    ["no toxic parts", { toxicFree: true }, ["× Heucherella", "Thuja"]],
    ["one's own", { own: true }, ["Thuja"]],
    ["what is on hand", { onHand: true }, ["Thuja"]],
    ["a feature", { feature: "summer foliage" }, ["× Heucherella"]],
    ["a color, also one that it turns to", { colors: ["pink"] }, ALL.slice(0, 4)],
    ["a color of that feature", { colors: ["pink"], feature: "summer foliage" }, []],
    ["a month in color", { month: 7, feature: "bloom" }, ["Hydrangea", "Little Lime", "Pale Lantern"]],
    ["a color in that month and no other", { month: 6, colors: ["pink"] }, []],
    ["the winter color of an evergreen in winter", { month: 0, colors: ["bronze"] }, ["Thuja"]],
  ])("goes by %s", (_, filter, names) => expect(found(filter)).toEqual(names));
  it("is never more for asking more", () => {
    fc.assert(
      fc.property(filters, filters, (a, b) => {
        const both = {
          ...a,
          ...Object.fromEntries(
            Object.entries(b).filter(([key]) => !["kinds", "colors", "height", "spread", "zone", "light", "month", "feature", "deer", "salt", "wet"].includes(key)),
          ),
        };
        const stricter = {
          ...both,
          evergreen: a.evergreen || b.evergreen,
          native: a.native || b.native,
          toxicFree: a.toxicFree || b.toxicFree,
          own: a.own || b.own,
          onHand: a.onHand || b.onHand,
        };
        for (const plant of plants)
          if (plantFits(plant, stricter, context))
            expect(plantFits(plant, { ...stricter, evergreen: a.evergreen, native: a.native, toxicFree: a.toxicFree, own: a.own, onHand: a.onHand }, context)).toBe(true);
      }),
    );
  });
});

describe("the order without a query", () => {
  it("is most used first, then by name as they came", () => {
    const [a, b, c] = plants;
    const uses = { [b?.id ?? ""]: 1, [c?.id ?? ""]: 4 };
    expect(plantsByUse(plants, uses).map((p) => p.id)).toEqual([c, b, a, ...plants.slice(3)].map((p) => p?.id));
    expect(plantsByUse(plants, {})).toBe(plants);
  });
});

describe("the parts of a filter", () => {
  it("are each a step back, and without all of them nothing is asked but the words", () => {
    fc.assert(
      fc.property(filters, (filter) => {
        let rest = filter;
        for (let guard = 0; guard < 60; guard++) {
          const [part] = filterParts(rest, "VT");
          if (!part) break;
          rest = part.without;
        }
        expect(rest).toEqual({ ...NO_FILTER, q: filter.q });
      }),
    );
  });
});
