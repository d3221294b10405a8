import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { KINDS, type Kind } from "../plants/vocabulary";
import { type LineSize, rootAdded, sizeFromText, sizeOtherText } from "./size-read";
import { sizeSplit } from "./size-split";

/** Only what the text says. */
function said(text: string, kind?: Kind): Partial<LineSize> {
  const all = Object.entries(sizeFromText(text, kind));
  return Object.fromEntries(all.filter(([key, value]) => value !== null && value !== "" && value !== "unknown" && key !== "containerGal"));
}

describe("a size inside a name", () => {
  it.each<[string, string, string]>([
    ["HYDR PAN LIMELT TM #3", "HYDR PAN LIMELT TM", "#3"],
    ["Thuja occ. Smaragd 5-6' BB", "Thuja occ. Smaragd", "5-6' BB"],
    [`Acer rub. 'October Glory' 2-2.5"`, "Acer rub. 'October Glory'", `2-2.5"`],
    ["Nepeta 'Walker's Low' qt", "Nepeta 'Walker's Low'", "qt"],
    ["Betula nigra clump 10-12' B/B", "Betula nigra", "clump 10-12' B/B"],
    ["Panicum 'Heavy Metal' #1", "Panicum 'Heavy Metal'", "#1"],
    ["Allium 'Globemaster' 20+", "Allium 'Globemaster'", "20+"],
    ["Carex pensylvanica 50 plug", "Carex pensylvanica", "50 plug"],
    ["FAGUS SYLV RIVERSII 2.5 BB", "FAGUS SYLV RIVERSII", "2.5 BB"],
    ["ACER PALM EMPEROR 1 #7", "ACER PALM EMPEROR 1", "#7"],
    ["Acer rubrum", "Acer rubrum", ""],
    ["Carex", "Carex", ""],
    ["Buxus 'Green Velvet' – 15–18” B&B", "Buxus 'Green Velvet'", `15-18" B&B`],
  ])("is taken out of “%s”", (text, name, sizeText) => {
    expect(sizeSplit(text)).toEqual({ name, sizeText });
  });

  it("is not looked for inside quotes", () => {
    expect(sizeSplit("Acer 'JFS-KW78' #15").name).toBe("Acer 'JFS-KW78'");
    expect(sizeSplit("Hosta 'Five Gallon' #1").name).toBe("Hosta 'Five Gallon'");
  });
});

describe("a size as suppliers write it", () => {
  it.each<[string, Kind | undefined, Partial<LineSize>]>([
    ["5-6' BB", "conifer", { root: "ball", heightIn: [60, 72] }],
    ["2.5-3 BB", "tree", { root: "ball", caliperIn: [2.5, 3] }],
    ["6-8 BB", "tree", { root: "ball", heightIn: [72, 96] }],
    ["18/24 BB", "conifer", { root: "ball", heightIn: [18, 24] }],
    ["12-14 BB", "tree", { root: "ball", heightIn: [144, 168] }],
    [`1 3/4" B/B`, "shrub", { root: "ball", caliperIn: [1.75, 1.75] }],
    [`6-7' 28" ball`, "conifer", { root: "ball", heightIn: [72, 84], ballIn: 28 }],
    ["C3", undefined, { root: "container", containerClass: "#3" }],
    ["#3 squat", undefined, { root: "container", containerClass: "#3", other: "squat" }],
    [`24" x 18" #7`, "conifer", { root: "container", containerClass: "#7", heightIn: [24, 24], spreadIn: [18, 18] }],
    [`18-24" spd #3`, "conifer", { root: "container", containerClass: "#3", spreadIn: [18, 24] }],
    ["72 cell plug", "perennial", { root: "plug", plugCount: 72 }],
    ["flat of 32", "groundcover", { root: "container", containerClass: "flat", flatCount: 32 }],
    ["32/flat", "groundcover", { root: "container", containerClass: "flat", flatCount: 32 }],
    ["14/16", "bulb", { root: "bulb", bulbCm: [14, 16] }],
    ["BR 4-5'", "shrub", { root: "bare root", heightIn: [48, 60] }],
    ["60 mm cal WB", "tree", { root: "ball", caliperIn: [2.36, 2.36] }],
    ['2 yr 2-0 12-18"', "tree", { heightIn: [12, 18], other: "2-0, 2 yr", root: "bare root" }],
    [`2" cal 10-12'`, "tree", { caliperIn: [2, 2], heightIn: [120, 144] }],
    [`10-12' 2" B&B`, "tree", { root: "ball", caliperIn: [2, 2], heightIn: [120, 144] }],
    [`1.75" cal 6' br ht`, "tree", { caliperIn: [1.75, 1.75], other: "branched at 6 ft" }],
    [`P+1 12-18"`, "tree", { root: "bare root", heightIn: [12, 18], other: "P+1" }],
    ["1-2 ft", "shrub", { heightIn: [12, 24] }],
    ["LP50", "perennial", { root: "plug", plugCount: 50 }],
    ["128's", "perennial", { root: "plug", plugCount: 128 }],
    ["2-3 eye BR", "perennial", { root: "bare root", other: "2-3 eye" }],
    ["1Q", "perennial", { root: "container", containerClass: "qt" }],
    ["24in bx", "tree", { root: "container", containerClass: "24 in box" }],
    ["", undefined, {}],
  ])("reads “%s” of a %s", (text, kind, size) => {
    expect(said(text, kind)).toEqual(size);
  });

  it("says the rest in words", () => {
    expect(sizeOtherText(sizeFromText(`18-24" spd #3`))).toBe("spread 18-24 in");
    expect(sizeOtherText(sizeFromText("72 cell plug"))).toBe("72 a plug tray");
  });

  it("never throws, whatever stands in the cell", () => {
    const pieces = fc.constantFrom("#", "3", " ", "gal", '"', "-", "/", "2.5", "in", "cal", "BB", "B&B", "ft", "½", "flat", "plug", "x", "'", "ball", "Acer", "+");
    const text = fc.oneof(
      fc.string({ unit: "binary" }),
      fc.array(pieces, { maxLength: 12 }).map((list) => list.join("")),
    );
    fc.assert(
      fc.property(text, fc.option(fc.constantFrom(...KINDS), { nil: undefined }), (typed, kind) => {
        const { sizeText } = sizeSplit(typed);
        for (const span of [sizeFromText(sizeText, kind).caliperIn, sizeFromText(typed, kind).heightIn]) if (span) expect(span[0] <= span[1]).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});

describe("the root that a heading gives", () => {
  it.each<[string, string, string]>([
    ['2-2.5"', "B&B", '2-2.5" B&B'],
    ["#3", "B&B", "#3"],
    ["5-6' BR", "B&B", "5-6' BR"],
    ["2 yr #1", "bare root", "2 yr #1 bare root"],
    ["#1 gal", "bare root", "#1 gal"],
    ["32 ct", "plug", "32 ct plug"],
    ["flat of 32", "plug", "flat of 32"],
  ])("%s under %s", (text, root, whole) => {
    expect(rootAdded(text, root, "tree")).toBe(whole);
  });
});
