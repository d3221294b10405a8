import { describe, expect, it } from "vitest";
import { lotEventText, lotStateDiffers } from "./lot-event";

describe("a lot's history in words", () => {
  it("keeps of two states only what differs", () => {
    expect(lotStateDiffers({ quantity: 12, size: "#3", grade: "1" }, { quantity: 9, size: "#3", grade: "1" })).toEqual({ before: { quantity: 12 }, after: { quantity: 9 } });
    expect(lotStateDiffers({}, { quantity: 9, readyFrom: null })).toEqual({ before: {}, after: { quantity: 9, readyFrom: null } });
  });
  it.each([
    ["count", { quantity: 12 }, { quantity: 9 }, "Counted: on hand 12 → 9"],
    ["count", { quantity: 12 }, { quantity: 12 }, "Counted: 12 on hand, as was known"],
    ["write off", { quantity: 12 }, { quantity: 11 }, "Written off 1 plant: on hand 12 → 11"],
    ["reserve", { reserved: 0 }, { reserved: 5 }, "Promised 5 plants: promised 0 → 5"],
    ["release", { reserved: 5 }, { reserved: 2 }, "Promise released 3 plants: promised 5 → 2"],
    ["pull", { quantity: 10, reserved: 5 }, { quantity: 5, reserved: 0 }, "Pulled 5 plants: on hand 10 → 5; promised 5 → 0"],
    ["pull", { quantity: 5, reserved: 0 }, { quantity: 7, reserved: 2 }, "Pulled 2 plants back: on hand 5 → 7; promised 0 → 2"],
    [
      "move",
      { place: "North field, row 4", priceCents: 9000 },
      { place: "Yard, bay 3", priceCents: 14_500 },
      "Moved: place “North field, row 4” → “Yard, bay 3”; price $90.00 → $145.00",
    ],
    ["add", {}, { quantity: 0, size: "#3", place: "", readyFrom: null }, "Added: size “#3”"],
    ["delete", {}, {}, "Deleted"],
  ] as const)("says a %s from %o to %o", (kind, before, after, words) => expect(lotEventText({ kind, before, after })).toBe(words));
});
