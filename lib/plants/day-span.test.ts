import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type DaySpan, daysMeet, monthSpan } from "./day-span";

const day = fc.integer({ min: 1, max: 365 });
const span = fc.tuple(day, day);
/** Every day of a span, one by one. */
const daysOf = ([start, end]: DaySpan): Set<number> => {
  const days = new Set<number>();
  for (let d = start; ; d = (d % 365) + 1) {
    days.add(d);
    if (d === end) return days;
  }
};

describe("spans of days", () => {
  it("run over New Year: December to February meets 5 January and not 5 March", () => {
    const winter = monthSpan(12, 2);
    expect(winter).toEqual([335, 59]);
    expect(daysMeet([5, 5], winter)).toBe(true);
    expect(daysMeet([64, 64], winter)).toBe(false);
    expect(daysMeet([64, 64], winter, 5)).toBe(true);
  });

  it("meet when they share a day, counted one by one", () => {
    fc.assert(fc.property(span, span, (a, b) => daysMeet(a, b) === [...daysOf(a)].some((d) => daysOf(b).has(d))));
  });

  it("meet in either order", () => {
    fc.assert(fc.property(span, span, fc.integer({ min: 0, max: 40 }), (a, b, slack) => daysMeet(a, b, slack) === daysMeet(b, a, slack)));
  });
});
