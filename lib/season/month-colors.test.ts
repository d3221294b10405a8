import { describe, expect, it } from "vitest";
import { gardenTaxon } from "../../tests/fixtures/garden-taxa";
import { REFERENCE_YEAR } from "../place/reference";
import { monthColors } from "./month-colors";
import { taxonSeason } from "./taxon-season";
import type { SeasonWindow } from "./window";

const months = (bits: number): number[] => Array.from({ length: 12 }, (_, i) => i).filter((m) => bits & (1 << m));
const feature = { ...gardenTaxon("Hydrangea paniculata").features[0] };
const window = (startDay: number, endDay: number, more: object = {}): SeasonWindow =>
  ({
    kind: "bloom",
    feature: { ...feature, color: "red", fade: null, winter: null, ...more },
    drive: "heat",
    startDay,
    endDay,
    peakDay: startDay,
    spreadDays: 0,
    degreeDays: null,
    sources: [],
  }) as SeasonWindow;

describe("colors by month", () => {
  it("count a month in which a week or more of the window falls", () => {
    expect(monthColors([window(152, 180)]).map((c) => months(c.months))).toEqual([[5]]);
    expect(monthColors([window(146, 190)]).map((c) => months(c.months))).toEqual([[5, 6]]);
  });
  it("count the month of a window that is shorter than a week", () => {
    expect(monthColors([window(155, 158)]).map((c) => months(c.months))).toEqual([[5]]);
  });
  it("go over New Year", () => {
    expect(monthColors([window(335, 45)]).map((c) => months(c.months))).toEqual([[0, 1, 11]]);
  });
  it("show a color that turns in the first half and what it turns to in the second", () => {
    const [before, after] = monthColors([window(182, 243, { color: "white", fade: "pink" })]);
    expect([before?.family, months(before?.months ?? 0)]).toEqual(["white", [6]]);
    expect([after?.family, months(after?.months ?? 0)]).toEqual(["pink", [7]]);
  });
  it("show an evergreen's winter color from December to February and its own in the rest of the year", () => {
    const colors = monthColors(taxonSeason(gardenTaxon("Thuja"), REFERENCE_YEAR).windows);
    expect(colors.map((c) => [c.family, months(c.months)])).toEqual([
      ["green", [2, 3, 4, 5, 6, 7, 8, 9, 10]],
      ["bronze", [0, 1, 11]],
    ]);
  });
});
