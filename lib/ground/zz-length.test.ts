import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { areaText, FEET_PER_UNIT, lengthFromText, lengthText, plantSizeRangeText, plantSizeText } from "./length";

fc.configureGlobal({ numRuns: 1000 });
function feetOf(text: string, bareUnit: "in" | "ft" = "in"): number {
  const result = lengthFromText(text, bareUnit);
  if (!result.ok) throw new Error(`${text}: ${result.fault}`);
  return result.feet;
}

describe("a length as typed", () => {
  it.each([
    ["18", 1.5],
    ["18 in", 1.5],
    ["18in.", 1.5],
    ['18"', 1.5],
    ["18”", 1.5],
    ["18''", 1.5],
    ["18 inches", 1.5],
    ["2 ft", 2],
    ["2 FT.", 2],
    ["2'", 2],
    ["2’", 2],
    ["2 feet", 2],
    ["2'6\"", 2.5],
    ["2' 6", 2.5],
    ["2′-6″", 2.5],
    ["2 ft 6 in", 2.5],
    ["2ft6in", 2.5],
    ["2 ft, 6 in", 2.5],
    ["2 ft 6½ in", 2 + 6.5 / 12],
    ["2.5 ft", 2.5],
    [".5 ft", 0.5],
    ["4½ ft", 4.5],
    ["4 1/2 ft", 4.5],
    ["4-1/2 ft", 4.5],
    ["½ ft", 0.5],
    ["¾ in", 0.0625],
    ["1,200 ft", 1200],
    ["30in oc", 2.5],
    ['30" o.c.', 2.5],
    ["2 ft on center", 2],
    ["18 in apart", 1.5],
    ["30.48 cm", 1],
    ["3.048 m", 10],
    ["1.2 m", 1.2 / 0.3048],
  ])("reads %s as %f ft", (text, feet) => {
    expect(feetOf(text)).toBeCloseTo(feet, 9);
  });

  it("takes a bare number in the unit of its field", () => {
    expect(feetOf("18", "ft")).toBe(18);
    expect(feetOf("18", "in")).toBe(1.5);
  });

  it.each([
    ["", /missing/],
    ["   ", /missing/],
    ["-3 ft", /negative/],
    ["0", /more than zero/],
    ["0 ft 0 in", /more than zero/],
    ["1/0 ft", /fraction/],
    ["2 ft 14 in", /less than 12/],
    ["1,5 m", /point/],
    ["99999 ft", /10,000/],
    ["wide", /not a length/],
    ["18 x 24 in", /not a length/],
    ["3 yd", /not a length/],
    ["1".repeat(500), /too long/],
  ])("says in words what is wrong with “%s”", (text, words) => {
    const result = lengthFromText(text, "in");
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.fault).toMatch(words);
  });

  it("never throws, whatever is typed", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        const result = lengthFromText(text, "in");
        return result.ok ? result.feet > 0 : result.fault.length > 0;
      }),
    );
  });
});

describe("a length as written", () => {
  it.each([
    [1.5, "18 in"],
    [1 / 3, "4 in"],
    [0.0625, "¾ in"],
    [2, "2 ft"],
    [4, "4 ft"],
    [2.5, "2 ft 6 in"],
    [1.99999, "2 ft"],
    [2.99999, "3 ft"],
    [2 + 6.5 / 12, "2 ft 6½ in"],
    [1200, "1,200 ft"],
  ])("writes %f ft as %s", (feet, text) => {
    expect(lengthText(feet)).toBe(text);
  });

  it("writes metric to the centimeter", () => {
    expect(lengthText(45 * FEET_PER_UNIT.cm, "metric")).toBe("45 cm");
    expect(lengthText(1.2 * FEET_PER_UNIT.m, "metric")).toBe("1.2 m");
    expect(lengthText(0.9999 * FEET_PER_UNIT.m, "metric")).toBe("1 m");
  });

  it("writes a plant's size in half feet", () => {
    expect(plantSizeText(4.5)).toBe("4½ ft");
    expect(plantSizeText(1.5)).toBe("18 in");
    expect(plantSizeText(12.4)).toBe("12 ft");
    expect(plantSizeText(9.9)).toBe("10 ft");
    expect(plantSizeText(1.98)).toBe("2 ft");
    expect(plantSizeText(4.5, "metric")).toBe("1.4 m");
  });

  it("writes a range with its unit once where it can", () => {
    expect(plantSizeRangeText([4, 6])).toBe("4–6 ft");
    expect(plantSizeRangeText([1.5, 2])).toBe("18–24 in");
    expect(plantSizeRangeText([1.5, 4])).toBe("1½–4 ft");
    expect(plantSizeRangeText([8 / 12, 4])).toBe("8 in–4 ft");
    expect(plantSizeRangeText([3, 3])).toBe("3 ft");
    expect(plantSizeRangeText([1, 1])).toBe("12 in");
  });

  it("writes an area", () => {
    expect(areaText(312)).toBe("312 sq ft");
    expect(areaText(7.25)).toBe("7.3 sq ft");
    expect(areaText(12_345)).toBe("12,345 sq ft");
    expect(areaText(312, "metric")).toBe("29 m²");
  });
});

describe("round trips", () => {
  it("reads back every quarter inch it writes", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 48_000 }), (quarters) => {
        expect(feetOf(lengthText(quarters / 48))).toBeCloseTo(quarters / 48, 9);
      }),
    );
  });

  it("reads back any length to within an eighth of an inch, and metric to within half a centimeter", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 9_000, noNaN: true }), (feet) => {
        expect(Math.abs(feetOf(lengthText(feet)) - feet)).toBeLessThanOrEqual(1 / 96 + 1e-9);
        expect(Math.abs(feetOf(lengthText(feet, "metric")) - feet)).toBeLessThanOrEqual(0.5 * FEET_PER_UNIT.cm + 1e-9);
      }),
    );
  });

  it("comes to the same length through every unit", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999 }), fc.constantFrom("in", "ft", "cm", "m"), (hundredths, unit) => {
        const typed = hundredths / 100;
        fc.pre(typed * FEET_PER_UNIT[unit] <= 10_000);
        expect(feetOf(`${typed} ${unit}`) / FEET_PER_UNIT[unit]).toBeCloseTo(typed, 9);
      }),
    );
  });
});
