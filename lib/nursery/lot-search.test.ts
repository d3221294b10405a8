import { describe, expect, it } from "vitest";
import { type LotListed, lotsFiltered, lotsNamed, lotsSorted } from "./lot-search";

const lot = (taxonName: string, more: Partial<LotListed> = {}): LotListed => ({
  taxonName,
  names: [],
  size: "#3",
  place: "Yard, bay 1",
  block: "Yard",
  step: 5,
  quantity: 10,
  reserved: 0,
  grade: "",
  remarks: "",
  countedAt: null,
  ...more,
});
const LOTS = [
  lot("Thuja occidentalis 'Smaragd'", {
    names: ["Emerald Green arborvitae"],
    size: "5-6 ft",
    place: "South field, row 10",
    block: "South field",
    step: 2,
    countedAt: "2026-11-20T12:00:00Z",
  }),
  lot("Cornus sericea 'Cardinal'", { names: ["redtwig dogwood"], reserved: 10, countedAt: "2026-10-01T12:00:00Z" }),
  lot("Amelanchier × grandiflora", { names: ["serviceberry"], size: "2 in cal", place: "", block: "", step: null, remarks: "behind the shed" }),
  lot("Cornus sericea 'Cardinal'", { names: ["redtwig dogwood"], size: "#5", place: "South field, row 9", block: "South field", step: 1 }),
];
const brief = (lots: readonly LotListed[]) => lots.map((one) => `${one.taxonName.slice(0, 3)} ${one.size}`);
const dayOf = (at: string) => at.slice(0, 10);

describe("the lots of a nursery", () => {
  it.each([
    ["smaragd", ["Thu 5-6 ft"]],
    ["EMERALD arbor", ["Thu 5-6 ft"]],
    ["redtwig #5", ["Cor #5"]],
    ["grandiflora x", ["Ame 2 in cal"]],
    ["shed", ["Ame 2 in cal"]],
    ["south field row 9", ["Cor #5"]],
    ["mere", []],
    ["row 1", []],
    ["south row 10", ["Thu 5-6 ft"]],
    ["6 ft", ["Thu 5-6 ft"]],
    ["yard 3", []],
    ["", ["Thu 5-6 ft", "Cor #3", "Ame 2 in cal", "Cor #5"]],
  ])("are found by the beginnings of words: “%s”", (q, found) => expect(brief(lotsNamed(LOTS, q))).toEqual(found));
  it("are filtered by block, by what is free, and by the day of the last count", () => {
    const all = { block: null, free: false, since: null };
    expect(brief(lotsFiltered(LOTS, { ...all, block: "South field" }, dayOf))).toEqual(["Thu 5-6 ft", "Cor #5"]);
    expect(brief(lotsFiltered(LOTS, { ...all, block: "" }, dayOf))).toEqual(["Ame 2 in cal"]);
    expect(brief(lotsFiltered(LOTS, { ...all, free: true }, dayOf))).toEqual(["Thu 5-6 ft", "Ame 2 in cal", "Cor #5"]);
    expect(brief(lotsFiltered(LOTS, { ...all, since: "2026-11-20" }, dayOf))).toEqual(["Cor #3", "Ame 2 in cal", "Cor #5"]);
  });
  it("stand by name, in walking order, by size, and the longest uncounted first", () => {
    expect(brief(lotsSorted(LOTS, "name"))).toEqual(["Ame 2 in cal", "Cor #3", "Cor #5", "Thu 5-6 ft"]);
    expect(brief(lotsSorted(LOTS, "place"))).toEqual(["Cor #5", "Thu 5-6 ft", "Cor #3", "Ame 2 in cal"]);
    expect(brief(lotsSorted(LOTS, "size"))).toEqual(["Cor #3", "Cor #5", "Ame 2 in cal", "Thu 5-6 ft"]);
    expect(brief(lotsSorted(LOTS, "counted"))).toEqual(["Cor #5", "Ame 2 in cal", "Cor #3", "Thu 5-6 ft"]);
  });
});
