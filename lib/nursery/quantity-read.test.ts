import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantityFromText, readyInText } from "./quantity-read";

describe("a quantity as lists write it", () => {
  it.each<[string, number | null]>([
    ["250", 250],
    ["250+", 250],
    ["1,200", 1200],
    ["1 200", 1200],
    ["25-50", 25],
    ["~100", 100],
    ["75 ea", 75],
    ["10 flats", 10],
    ["1.5k", 1500],
    ["call", null],
    ["limited", null],
    ["Spring 26", null],
    ["May 2026", null],
    ["100 S26", 100],
    ["sold out", 0],
    ["0", 0],
    ["-", 0],
    ["", null],
  ])("reads “%s” as %s", (text, count) => {
    expect(quantityFromText(text).count).toBe(count);
  });

  it("keeps what the number does not say", () => {
    expect(quantityFromText("250+")).toMatchObject({ orMore: true, note: "" });
    expect(quantityFromText("10 flats")).toMatchObject({ unit: "flat" });
    expect(quantityFromText("call")).toMatchObject({ note: "call" });
    expect(quantityFromText("Spring 26")).toMatchObject({ ready: "Spring 26", note: "" });
    expect(quantityFromText("200 late May")).toMatchObject({ count: 200 });
  });

  it("finds seasons and dates in remarks", () => {
    expect(readyInText("in bud, ready Fall '26")).toBe("ready Fall '26");
    expect(readyInText("avail 4/15/26")).toContain("4/15/26");
    expect(readyInText("nice and full")).toBeNull();
  });

  it("never throws and never gives a negative or broken number", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        const { count } = quantityFromText(text);
        expect(count === null || (Number.isInteger(count) && count >= 0)).toBe(true);
      }),
    );
  });
});

describe("a quantity in one word", () => {
  it("is none where the word is sold", () => {
    expect(quantityFromText("SOLD").count).toBe(0);
  });
});
