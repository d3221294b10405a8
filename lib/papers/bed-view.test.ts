import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantityForArea } from "../ground/spacing";
import { bedInterest, DEFAULT_TARGETS } from "../season/interest";
import type { SeasonWindow } from "../season/window";
import { rowLetter, rowQuantityOf } from "./bed-view";
import { interestBars } from "./interest-bars";
import { yearStrip } from "./year-strip";

describe("rows of a planting list", () => {
  it("carry letters without I and O, then two letters, none twice", () => {
    expect(rowLetter(0)).toBe("A");
    expect(rowLetter(8)).toBe("J");
    expect(rowLetter(23)).toBe("Z");
    expect(rowLetter(24)).toBe("AA");
    expect(new Set(Array.from({ length: 500 }, (_, i) => rowLetter(i))).size).toBe(500);
  });
  it("find their count from the area at their spacing, else at mature spread", () => {
    const row = { id: "a", taxonId: "t", taxonName: "T", quantity: { by: "area", areaSqFt: 50 } as const, spacingFt: 2, size: "", remarks: "", existing: false };
    expect(rowQuantityOf(row, { spreadFt: [2, 4] }, 0)).toBe(quantityForArea(50, 2, "triangular"));
    expect(rowQuantityOf({ ...row, spacingFt: null }, { spreadFt: [2, 4] }, 0)).toBe(quantityForArea(50, 3, "triangular"));
    expect(rowQuantityOf({ ...row, quantity: { by: "count", count: 7 } }, null, 0)).toBe(7);
  });
});

const window = (startDay: number, endDay: number): SeasonWindow => ({
  kind: "bloom",
  feature: {
    kind: "bloom",
    color: "white",
    hex: "#fbfaf5",
    fade: "pink",
    winter: null,
    from: "",
    to: "",
    startDay,
    endDay,
    show: 2,
    drive: "heat",
    degreeDays: null,
    note: null,
    source: "practice",
  },
  drive: "heat",
  startDay,
  endDay,
  peakDay: startDay,
  spreadDays: 6,
  sources: ["practice"],
  degreeDays: null,
});

describe("the year strip", () => {
  it("covers exactly the days of each window, in one piece or, over New Year, in two", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 365 }), fc.integer({ min: 0, max: 361 }), (startDay, length) => {
        const endDay = ((startDay - 1 + length) % 365) + 1;
        const marks = yearStrip({ windows: [window(startDay, endDay)], leaves: null, basis: "computed", basisNote: null }, { firstFreezeDay: 280, lastFreezeDay: 125 });
        expect(marks.length).toBe(startDay <= endDay ? 1 : 2);
        expect(marks.reduce((sum, m) => sum + m.toDay - m.fromDay, 0)).toBe(length + 1);
        for (const m of marks) expect(m.fromDay >= 0 && m.toDay <= 365 && m.fromDay < m.toDay).toBe(true);
      }),
    );
  });
  it("tells every kind by a shape of its own", () => {
    const kinds = ["bloom", "fall color", "fruit", "bark", "evergreen", "seedhead", "structure"] as const;
    const shapes = kinds.map(
      (kind) => yearStrip({ windows: [{ ...window(100, 120), kind }], leaves: null, basis: "computed", basisNote: null }, { firstFreezeDay: null, lastFreezeDay: null })[0]?.shape,
    );
    expect(new Set(shapes).size).toBe(kinds.length);
  });
});

describe("the interest bars", () => {
  it("stack to the interest, hatch what lacks to the target, and stay inside the scale", () => {
    const halves = bedInterest(
      [{ key: "a", areaSqFt: 40, season: { windows: [window(150, 200)], leaves: null, basis: "computed", basisNote: null } }],
      100,
      DEFAULT_TARGETS,
      { lastFreezeDay: 125, firstFreezeDay: 280 },
      () => "#888888",
    );
    const bars = interestBars(halves);
    expect(bars.bare.map((b) => b.index)).toEqual(halves.filter((h) => h.bare).map((h) => h.index));
    for (const mark of bars.marks) expect(mark.bottom + mark.height).toBeLessThanOrEqual(1 + 1e-9);
    for (const gap of bars.bare) expect(gap.top).toBeGreaterThan(gap.bottom);
  });
});
