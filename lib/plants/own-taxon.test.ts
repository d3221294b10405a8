import { describe, expect, it } from "vitest";
import { gardenTaxa, gardenTaxon } from "../../tests/fixtures/garden-taxa";
import { placeYear } from "../place/place-year";
import { REFERENCE_CLIMATE, REFERENCE_YEAR } from "../place/reference";
import { ownTaxonDated } from "../season/own-dated";
import { ownTaxonBlank, ownTaxonLike } from "../season/own-like";
import { taxonSeason } from "../season/taxon-season";
import { type OwnTaxonInput, ownTaxon, ownTaxonRead } from "./own-taxon";

const like = (beginning: string, change: Partial<OwnTaxonInput> = {}): OwnTaxonInput => {
  const taxon = gardenTaxon(beginning);
  return { ...ownTaxonLike(taxon, taxonSeason(taxon, REFERENCE_YEAR), null), ...change };
};
const made = (input: OwnTaxonInput) => {
  const answer = ownTaxon("own-1", input);
  if (answer.kind === "faults") throw new Error(JSON.stringify(answer.faults));
  return answer;
};
const fields = (input: unknown): string[] => {
  const read = ownTaxonRead(input);
  const faults = read.kind === "faults" ? read.faults : ((answer) => (answer.kind === "faults" ? answer.faults : []))(ownTaxon("own-1", read.input));
  return faults.map((f) => f.field);
};

describe("a plant of one's own", () => {
  it("made like another, with nothing changed but its name, has the other's values and year", () => {
    for (const taxon of gardenTaxa()) {
      const input = { ...ownTaxonLike(taxon, taxonSeason(taxon, REFERENCE_YEAR), null), cultivar: "Mine" };
      expect(ownTaxonRead(input).kind).toBe("input");
      const { taxon: own, seen } = made(input);
      const dated = ownTaxonDated(own, seen, REFERENCE_YEAR);
      const { kind, habit, heightFt, spreadFt, zoneLow, zoneHigh, light, foliage, deer, salt, toxic, flags } = taxon;
      expect(dated).toMatchObject({ kind, habit, heightFt, spreadFt, zoneLow, zoneHigh, light, foliage, deer, salt, toxic, flags });
      const days = (t: typeof taxon) => taxonSeason(t, REFERENCE_YEAR).windows.map((w) => [w.kind, w.startDay, w.endDay]);
      expect(days(dated)).toEqual(days(taxon));
    }
  });
  it("has the year that was seen at its place, there", () => {
    const place = placeYear({ ...REFERENCE_CLIMATE, lat: 45, tminF: REFERENCE_CLIMATE.tminF.map((t) => t - 7), tmaxF: REFERENCE_CLIMATE.tmaxF.map((t) => t - 7) });
    const input = like("Hydrangea paniculata 'Jane'", { cultivar: "Mine" });
    const bloom = { ...(input.features[0] as OwnTaxonInput["features"][number]), window: { from: 205, to: 250 } };
    const { taxon, seen } = made({ ...input, features: [bloom] });
    const [window] = taxonSeason(ownTaxonDated(taxon, seen, place), place).windows;
    expect(Math.abs((window?.startDay ?? 0) - 205)).toBeLessThanOrEqual(1);
    expect(Math.abs((window?.endDay ?? 0) - 250)).toBeLessThanOrEqual(1);
  });
  it("keeps its id whatever it is called, and says of every value that it is one's own", () => {
    const { taxon } = made(like("Hydrangea paniculata", { cultivar: "Mine", trade: "Lamp" }));
    expect([taxon.id, taxon.name, taxon.tradeDesignation]).toEqual(["own-1", "Hydrangea paniculata 'Mine'", "Lamp"]);
    expect(new Set([...Object.values(taxon.sources), ...taxon.features.map((f) => f.source)])).toEqual(new Set(["own"]));
  });
  it("is a species when it has neither cultivar nor trade designation", () => {
    expect(made(like("Thuja", { botanical: "Thuja mea" })).taxon).toMatchObject({ name: "Thuja mea", cultivar: null, genus: "Thuja" });
  });
});

describe("faults of the form name the field", () => {
  const input = like("Hydrangea paniculata", { cultivar: "Mine" });
  it.each([
    ["botanical", { botanical: "hydrangea" }],
    ["common", { common: [] }],
    ["height.0", { height: [0, 3] }],
    ["height", { height: [5, 3] }],
    ["zones.0", { zones: [Number.NaN, 8] }],
    ["light", { light: [] }],
    ["kind", { kind: "bush" }],
    ["features", { features: [] }],
    ["wood", { wood: null }],
  ] as const)("%s", (field, change) => {
    expect(fields({ ...input, ...change })).toContain(field);
  });
  it("and the row of a feature", () => {
    const [bloom, seedhead] = input.features;
    expect(fields({ ...input, features: [bloom, { ...seedhead, color: "shiny" }] })).toContain("features.1.color");
    expect(fields({ ...input, features: [bloom, { ...seedhead, window: null }] })).toContain("features.1");
  });
  it("and an unknown field, so that nothing slips in", () => {
    expect(fields({ ...input, sources: {} })).toEqual(["(form)"]);
  });
  it("of an empty form are its names only", () => {
    expect(fields(ownTaxonBlank(null))).toEqual(["botanical", "botanical", "common"]);
  });
});
