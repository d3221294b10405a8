import { describe, expect, it } from "vitest";
import { testTaxon } from "../../tests/fixtures/test-taxon";
import type { Bed } from "../ground/bed";
import { REFERENCE_YEAR } from "../place/reference";
import type { Taxon } from "../plants/taxon";
import { taxonSeason } from "../season/taxon-season";
import type { CheckContext, CheckedRow, Finding } from "./finding";
import { bedFindings, CHECKS } from "./findings";

function rowOf(taxon: Taxon, over: Partial<CheckedRow["row"]> & { quantity2?: number } = {}, id = "a"): CheckedRow {
  const row = { id, taxonId: taxon.id, taxonName: taxon.name, quantity: { by: "count", count: 3 } as const, spacingFt: 5, size: "#3", remarks: "", existing: false, ...over };
  return { row, letter: "A", taxon, season: taxonSeason(taxon, REFERENCE_YEAR), quantity: 3, spacingFt: row.spacingFt ?? 5, spreadFt: (taxon.spreadFt[0] + taxon.spreadFt[1]) / 2 };
}

const site: Bed["site"] = { light: "sun", moisture: "average", ph: 6.5, salt: "none", deer: "none", faces: "" };
const context = (rows: CheckedRow[], over: Partial<CheckContext> = {}): CheckContext => ({
  site,
  zone: 5.5,
  state: "VT",
  plantableSqFt: 200,
  rows,
  density: { raw: 5, label: 5, words: "set at mature spread." },
  drawn: null,
  borders: new Set(),
  halfMonths: [],
  resting: [],
  isGrowing: (day) => day > 120 && day < 280,
  ...over,
});
const found = (check: string, c: CheckContext): Finding[] => bedFindings(c).filter((f) => f.check === check);

describe("the checks", () => {
  it("have each an id of its own", () => {
    expect(new Set(CHECKS.map((c) => c.id)).size).toBe(CHECKS.length);
  });
  it("find nothing wrong with a plant that suits", () => {
    expect(bedFindings(context([rowOf(testTaxon())])).filter((f) => f.severity !== "note")).toEqual([]);
  });
  it("put what must be fixed before what should be considered", () => {
    const order = bedFindings(context([rowOf(testTaxon({ zones: [7, 9], ph: [4, 6.2] }))])).map((f) => f.severity);
    expect(order).toEqual([...order].sort((a, b) => ["fix", "consider", "note"].indexOf(a) - ["fix", "consider", "note"].indexOf(b)));
  });
});

describe("hardiness", () => {
  it("is to fix when the plant is too tender, with both zones named", () => {
    const [f] = found("hardiness", context([rowOf(testTaxon({ zones: [7, 9] }))]));
    expect(f).toMatchObject({ severity: "fix", plant: "Testa prima" });
    expect(f?.message).toMatch(/zone 7.*zone 5b.*-15 to -10 °F/);
  });
  it("holds a plant rated for the whole zone to be hardy in its colder half", () => {
    expect(found("hardiness", context([rowOf(testTaxon({ zones: [5, 8] }))], { zone: 5 }))).toEqual([]);
    expect(found("hardiness", context([rowOf(testTaxon({ zones: [5, 8] }))], { zone: 4.5 }))[0]?.severity).toBe("fix");
  });
  it("only notes a tender plant that stands there already", () => {
    expect(found("hardiness", context([rowOf(testTaxon({ zones: [7, 9] }), { existing: true })]))[0]?.severity).toBe("note");
  });
  it("minds heat as well as cold", () => {
    expect(found("hardiness", context([rowOf(testTaxon({ zones: [2, 4] }))]))[0]?.severity).toBe("consider");
  });
  it("says that it could not look when the zone is unknown", () => {
    expect(found("hardiness", context([rowOf(testTaxon())], { zone: null }))[0]?.message).toMatch(/not known/);
  });
});

describe("site", () => {
  it("weighs light by steps", () => {
    expect(found("light", context([rowOf(testTaxon())], { site: { ...site, light: "part" } }))[0]?.severity).toBe("consider");
    expect(found("light", context([rowOf(testTaxon())], { site: { ...site, light: "shade" } }))[0]?.severity).toBe("fix");
  });
  it("weighs moisture by steps and says which way", () => {
    expect(found("moisture", context([rowOf(testTaxon({ moisture: ["dry"] }))], { site: { ...site, moisture: "wet" } }))[0]).toMatchObject({
      severity: "fix",
      message: expect.stringContaining("drain"),
    });
    expect(found("moisture", context([rowOf(testTaxon({ moisture: ["moist"] }))]))[0]).toMatchObject({ severity: "consider", message: expect.stringContaining("Water it") });
  });
  it("weighs pH by half units and leaves an untested soil alone", () => {
    expect(found("soil-ph", context([rowOf(testTaxon({ ph: [4, 6.2] }))]))[0]?.severity).toBe("consider");
    expect(found("soil-ph", context([rowOf(testTaxon({ ph: [4, 5.5] }))]))[0]?.severity).toBe("fix");
    expect(found("soil-ph", context([rowOf(testTaxon({ ph: [4, 5.5] }))], { site: { ...site, ph: null } }))).toEqual([]);
  });
  it("weighs road salt and deer by the plant's standing", () => {
    expect(found("salt", context([rowOf(testTaxon({ salt: "low" }))], { site: { ...site, salt: "heavy" } }))[0]?.severity).toBe("fix");
    expect(found("deer", context([rowOf(testTaxon({ deer: "often" }))], { site: { ...site, deer: "heavy" } }))[0]?.severity).toBe("fix");
    expect(found("deer", context([rowOf(testTaxon({ deer: "sometimes" }))], { site: { ...site, deer: "some" } }))).toEqual([]);
  });
});

describe("room", () => {
  it("says when plants set too close will touch and offers a spacing", () => {
    const [f] = found("spacing", context([rowOf(testTaxon(), { spacingFt: 3 })]));
    expect(f).toMatchObject({ severity: "consider", remedy: { type: "spacing", spacingFt: 4 } });
    expect(f?.message).toMatch(/grows 5 ft wide, set 3 ft on center/);
    expect(found("spacing", context([rowOf(testTaxon(), { spacingFt: 2 })]))[0]?.severity).toBe("fix");
    expect(found("spacing", context([rowOf(testTaxon(), { spacingFt: 4 })]))).toEqual([]);
  });
  it("weighs the density of the bed", () => {
    const at = (raw: number) => found("density", context([rowOf(testTaxon())], { density: { raw, label: Math.round(raw), words: "x." } }))[0]?.severity;
    expect([at(2), at(5), at(8.2), at(9.5)]).toEqual(["consider", undefined, "consider", "fix"]);
  });
});

describe("the year", () => {
  it("names a plant that shows in one season only, and how much ground it takes for that", () => {
    const spring = testTaxon({ features: { bloom: { color: "white", from: "mid May", to: "late May", show: 3 } } });
    expect(found("one-season", context([rowOf(spring)]))[0]).toMatchObject({ severity: "consider", message: expect.stringMatching(/spring only/) });
    expect(found("one-season", context([rowOf(testTaxon())]))).toEqual([]);
  });
  it("tells each bare run in words and offers to fill it", () => {
    const halfMonths = Array.from({ length: 24 }, (_, index) => ({
      index,
      label: index === 9 ? "late May" : "x",
      interest: index === 9 ? 0.05 : 0.5,
      target: 0.27,
      byKind: {} as never,
      parts: [],
      bare: index === 9,
    }));
    expect(found("bare", context([rowOf(testTaxon())], { halfMonths }))).toMatchObject([
      { severity: "fix", message: expect.stringMatching(/^Late May is bare: .*5 %.*27 %/), remedy: { type: "fill", halfMonths: [9] } },
    ]);
    expect(found("bare", context([], { halfMonths }))).toEqual([]);
  });
});

describe("cautions", () => {
  it("bars a plant that the state regulates, and only there", () => {
    const barred = testTaxon({ regulated: [{ states: ["VT"], what: "sale barred", law: "Quarantine 3", date: "2012" }] });
    expect(found("legality", context([rowOf(barred)]))[0]).toMatchObject({ severity: "fix", message: expect.stringMatching(/Quarantine 3, 2012.*present list/) });
    expect(found("legality", context([rowOf(barred)], { state: "OH" }))).toEqual([]);
  });
  it("notes poison, thorns and fall-dig hazards", () => {
    const f = bedFindings(
      context([rowOf(testTaxon({ toxic: { people: "high", pets: "high", horses: "none", parts: "seeds" }, flags: ["thorns", "fall-dig-hazard"] }), { size: "2 in cal B&B" })]),
    );
    expect(f.find((x) => x.check === "hazards")?.message).toMatch(/poisonous to people, dogs and cats \(seeds\).*thorny/);
    expect(f.some((x) => x.check === "fall-dig")).toBe(true);
  });
  it("asks for a male where a female alone would not fruit", () => {
    const fruit = { fruit: { color: "red", from: "mid Sep", to: "late Jan", show: 3 }, bloom: { color: "white", from: "early Jun", to: "mid Jun", show: 1 } };
    const female = testTaxon({ sex: "female", partner: "a male such as 'Jim Dandy'", features: fruit });
    const male = testTaxon({ sex: "male" });
    expect(found("partner", context([rowOf(female)]))[0]?.severity).toBe("consider");
    expect(found("partner", context([rowOf(female), rowOf(male, {}, "b")]))).toEqual([]);
  });
});
