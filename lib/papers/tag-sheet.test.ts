import { describe, expect, it } from "vitest";
import { sizeFromText } from "../nursery/size-read";
import type { PullSheetLine } from "../pulls/pull-sheet";
import { lineAddress, TAGS_MAX, tagSet } from "./tag-sheet";

const line = (over: Partial<PullSheetLine>): PullSheetLine => ({
  lineId: "p1",
  reservationId: "p1",
  bedId: "b1",
  bedName: "Door",
  rowId: "r1",
  letter: "C",
  taxon: {
    id: "h",
    name: "Hydrangea paniculata 'Jane'",
    genus: "Hydrangea",
    botanical: "Hydrangea paniculata",
    cultivar: "Jane",
    group: null,
    tradeDesignation: "Little Lime",
    commonNames: ["panicle hydrangea"],
    kind: "shrub",
  },
  sizeText: "#3",
  size: sizeFromText("#3", "shrub"),
  wanted: 3,
  pulled: 0,
  short: 0,
  damaged: 0,
  swapped: 0,
  open: 3,
  notes: [],
  photos: [],
  placeText: "Yard, bay 1",
  ownerText: "Own stock",
  method: "carry",
  ball: null,
  weightLb: 21.5,
  lift: "one person",
  dig: null,
  digPlan: null,
  hazards: [],
  remarks: "",
  ...over,
});
const sheet = (...lines: PullSheetLine[]) => ({ stops: [{ place: "Yard", lines }], plants: 0 });
const codeOf = (lineId: string) => lineAddress("http://nursery:3000", "j1", lineId);

describe("tags", () => {
  it("number the plants of a row through, also from two places, or count a group", () => {
    const two = sheet(line({}), line({ lineId: "p2", wanted: 2, open: 2 }));
    expect(tagSet(two, "Clinic", "plant", codeOf).tags.map(({ count }) => count)).toEqual(["1 of 5", "2 of 5", "3 of 5", "4 of 5", "5 of 5"]);
    expect(tagSet(two, "Clinic", "group", codeOf).tags.map(({ count }) => count)).toEqual(["3 plants", "2 plants"]);
  });

  it("are made for plants pulled and to be pulled, not for those that were short, damaged or swapped", () => {
    const worked = line({ wanted: 6, pulled: 1, short: 1, damaged: 1, swapped: 1, open: 2 });
    expect(tagSet(sheet(worked), "Clinic", "plant", codeOf).tags.map(({ count }) => count)).toEqual(["1 of 3", "2 of 3", "3 of 3"]);
  });

  it("carry the name in its parts and the address of the line", () => {
    const [tag] = tagSet(sheet(line({ lineId: "b1:r1" })), "Clinic", "group", codeOf).tags;
    expect(tag).toMatchObject({ job: "Clinic", bed: "Door", letter: "C", size: "#3", code: "http://nursery:3000/jobs/j1/pull/field#b1:r1" });
    expect(tag?.plant.segments.map(({ style }) => style)).toEqual(["italic", "italic", "roman", "trade"]);
  });

  it("are no more than one file takes, and say how many are left", () => {
    const { tags, left } = tagSet(sheet(line({ wanted: TAGS_MAX + 7, open: TAGS_MAX + 7 })), "Clinic", "plant", codeOf);
    expect([tags.length, left]).toEqual([TAGS_MAX, 7]);
  });
});
