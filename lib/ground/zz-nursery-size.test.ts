import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { KINDS, type Kind } from "../plants/vocabulary";
import { type NurserySize, nurserySizeFromText, nurserySizeKey, nurserySizeRank } from "./nursery-size";

fc.configureGlobal({ numRuns: 1000 });
/** Only what the text says. */
function said(text: string, kind?: Kind): Partial<NurserySize> {
  const size = nurserySizeFromText(text, kind);
  return Object.fromEntries(Object.entries(size).filter(([key, value]) => value !== null && value !== "" && value !== false && key !== "containerGal"));
}

describe("a size as the trade writes it", () => {
  it.each<[string, Partial<NurserySize>]>([
    ["#3", { root: "container", containerClass: "#3" }],
    ["# 3 cont.", { root: "container", containerClass: "#3" }],
    ["No. 2", { root: "container", containerClass: "#2" }],
    ["3 gal", { root: "container", containerClass: "#3" }],
    ["3-gallon", { root: "container", containerClass: "#3" }],
    ["gallon", { root: "container", containerClass: "#1" }],
    ["qt", { root: "container", containerClass: "qt" }],
    ["4 in pot", { root: "container", containerClass: "4 in pot" }],
    ['4.5" pot', { root: "container", containerClass: "4.5 in pot" }],
    ["24 in box", { root: "container", containerClass: "24 in box" }],
    ["flat", { root: "container", containerClass: "flat" }],
    ["flat of 32", { root: "container", containerClass: "flat", rest: "of 32" }],
    ["plug", { root: "plug" }],
    ["72 plug", { root: "plug", rest: "72" }],
    ["2 in cal", { root: "unknown", caliperIn: [2, 2] }],
    ['2" cal. B&B', { root: "ball", caliperIn: [2, 2] }],
    ['2-2.5" B&B', { root: "ball", caliperIn: [2, 2.5] }],
    ["2½ in cal b & b", { root: "ball", caliperIn: [2.5, 2.5] }],
    ['2-1/2" cal', { root: "unknown", caliperIn: [2.5, 2.5] }],
    ["1-1/2 - 2 in cal", { root: "unknown", caliperIn: [1.5, 2] }],
    ["#15, 1.5 in cal", { root: "container", containerClass: "#15", caliperIn: [1.5, 1.5] }],
    ["5-6 ft", { root: "unknown", heightIn: [60, 72] }],
    ["5'-6' B&B", { root: "ball", heightIn: [60, 72] }],
    ["2/3'", { root: "unknown", heightIn: [24, 36] }],
    ["18-24 in", { root: "unknown", heightIn: [18, 24] }],
    ['18–24"', { root: "unknown", heightIn: [18, 24] }],
    ["18/24", { root: "unknown", heightIn: [18, 24] }],
    ["2 ft 6 in", { root: "unknown", heightIn: [30, 30] }],
    ["bare root 18-24 in", { root: "bare root", heightIn: [18, 24] }],
    ["BR 6-8 ft", { root: "bare root", heightIn: [72, 96] }],
    ["#1 bare root", { root: "bare root", rest: "#1" }],
    ["6 ft ht x 4 ft spd", { root: "unknown", heightIn: [72, 72], heightSaid: true, spreadIn: [48, 48] }],
    ["10-12 ft clump B&B", { root: "ball", heightIn: [120, 144], rest: "clump" }],
    ["bulb 14-16 cm", { root: "bulb", bulbCm: [14, 16] }],
    ["", { root: "unknown" }],
    ["by the owner", { root: "unknown", rest: "by the owner" }],
    ["#SP4", { root: "unknown", rest: "#sp4" }],
  ])("reads “%s”", (text, size) => {
    expect(said(text)).toEqual(size);
  });

  it("takes metric sizes", () => {
    expect(nurserySizeFromText("50 mm cal").caliperIn?.[0]).toBeCloseTo(1.97, 2);
    expect(nurserySizeFromText("60-80 cm").heightIn?.[1]).toBeCloseTo(31.5, 1);
    expect(nurserySizeFromText("1.2 m").heightIn?.[0]).toBeCloseTo(47.2, 1);
  });

  it("lets the kind of plant settle a bare figure", () => {
    expect(said('2"', "tree")).toEqual({ root: "unknown", caliperIn: [2, 2] });
    expect(said("4 in", "perennial")).toEqual({ root: "container", containerClass: "4 in pot" });
    expect(said("12 in", "shrub")).toEqual({ root: "unknown", heightIn: [12, 12] });
    expect(said("14/16 cm", "bulb")).toEqual({ root: "bulb", bulbCm: [14, 16] });
    expect(said("14/+", "bulb")).toEqual({ root: "bulb", bulbCm: [14, 14] });
    expect(said("4 in pot", "bulb")).toEqual({ root: "container", containerClass: "4 in pot" });
    expect(said("#1", "bulb")).toEqual({ root: "container", containerClass: "#1" });
  });

  it("never throws, whatever is typed", () => {
    const pieces = fc.constantFrom("#", "3", " ", "gal", '"', "-", "/", "2.5", "in", "cal", "B&B", "ft", "½", "cm", "bulb", "+", "x", ".", "0", "'", "é");
    const text = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.array(pieces, { maxLength: 14 }).map((list) => list.join("")),
    );
    fc.assert(
      fc.property(text, fc.option(fc.constantFrom(...KINDS), { nil: undefined }), (typed, kind) => {
        const size = nurserySizeFromText(typed, kind);
        for (const span of [size.caliperIn, size.heightIn, size.spreadIn, size.bulbCm]) if (span) expect(span[0] <= span[1] && span[1] > 0).toBe(true);
        expect(Number.isFinite(nurserySizeRank(typed, kind))).toBe(true);
      }),
      {},
    );
  });
});

describe("sizes on a list", () => {
  it("have one key for all their spellings", () => {
    for (const text of ["3 gal", "3 Gallon", "#3 cont.", " # 3 "]) expect(nurserySizeKey(text)).toBe(nurserySizeKey("#3"));
    expect(nurserySizeKey('2 1/2" cal B&B')).toBe(nurserySizeKey("2.5 in cal b&b"));
    expect(nurserySizeKey("5-6'")).toBe(nurserySizeKey("5–6 ft"));
    expect(nurserySizeKey("5-6 ft B&B")).not.toBe(nurserySizeKey("5-6 ft"));
    expect(nurserySizeKey("#3 clump")).not.toBe(nurserySizeKey("#3"));
    expect(nurserySizeKey("as  Sample")).toBe(nurserySizeKey("as sample"));
  });

  it("sort small to large with unknown text last", () => {
    const sizes = ["as sample", "3 in cal", "#5", "plug", "#1", "2 in cal", "qt", "6-8 ft", "5-6 ft"];
    expect(sizes.sort((a, b) => nurserySizeRank(a) - nurserySizeRank(b))).toEqual(["plug", "qt", "#1", "#5", "5-6 ft", "6-8 ft", "2 in cal", "3 in cal", "as sample"]);
  });
});
