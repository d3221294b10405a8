import { describe, expect, it } from "vitest";
import { readyDate } from "./ready-read";

describe("when plants will be ready", () => {
  it.each([
    ["Spring 26", "2026-04-01"],
    ["late fall 2026", "2026-10-15"],
    ["S27", "2027-04-01"],
    ["May 15", "2026-05-15"],
    ["ready 5/15/26", "2026-05-15"],
    ["2026-09-01", "2026-09-01"],
    ["wk 18", "2026-04-27"],
    ["Spring", "2026-04-01"],
    ["February", "2027-02-01"],
    ["now", null],
    ["", null],
    ["Feb 31 26", null],
  ])("%s, read on 3 March 2026, is %s", (text, date) => {
    expect(readyDate(text, "2026-03-03")).toBe(date);
  });
});
