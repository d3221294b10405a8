import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { breakFrom, priceFromText, priceSplit, pricesJoined, pricesParted } from "./price-read";

describe("a price as lists write it", () => {
  it.each<[string, number | null]>([
    ["$12.50", 1250],
    ["12.50 ea", 1250],
    ["US$ 1,062.50", 106250],
    ["12,50 €", 1250],
    ["1.250,00 €", 125000],
    ["£3.5", 350],
    [".85", 85],
    ["18", 1800],
    ["2.155", 216],
    ["call", null],
    ["", null],
  ])("reads “%s” as %s cents", (text, cents) => {
    expect(priceFromText(text).cents).toBe(cents);
  });

  it("tells currencies by their marks", () => {
    expect(["$1", "C$ 45", "€9", "£3", "7.00"].map((text) => priceFromText(text).currency)).toEqual(["USD", "CAD", "EUR", "GBP", null]);
  });

  it("reads breaks in one cell", () => {
    const wanted = [
      { from: 1, cents: 1200 },
      { from: 10, cents: 1100 },
    ];
    expect(priceFromText("1-9 $12.00 10+ $11.00").breaks).toEqual(wanted);
    expect(priceFromText("$12.00 (10+ $11.00)").breaks).toEqual(wanted);
    expect(priceFromText("1-24: 9.95; 25-99: 9.25; 100+: 8.75").breaks).toEqual([
      { from: 1, cents: 995 },
      { from: 25, cents: 925 },
      { from: 100, cents: 875 },
    ]);
  });

  it("joins the columns of breaks, whatever their order", () => {
    const cells = [
      { from: 10, text: "$11.00" },
      { from: 1, text: "$12.00" },
      { from: 50, text: "call" },
    ];
    expect(pricesJoined(cells)).toMatchObject({ cents: 1200, currency: "USD", breaks: [{ from: 1 }, { from: 10 }] });
    expect(pricesJoined([{ from: null, text: "call" }])).toMatchObject({ cents: null, note: "call" });
  });

  it("reads from which quantity a heading's price holds", () => {
    expect(["1-9", "10+", "25 & up", "price 50-99", "size"].map(breakFrom)).toEqual([1, 10, 25, 50, null]);
  });

  it("reads back any amount it is given", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9_999_999 }), (cents) => priceFromText(`$${(cents / 100).toLocaleString("en-US", { minimumFractionDigits: 2 })}`).cents === cents),
    );
  });
});

describe("prices under one heading and in a description", () => {
  it("pair with the quantities that the heading names", () => {
    expect(pricesParted("Price (1-9 / 10+)", "$24.50 / 22.75")).toEqual([
      { from: 1, text: "$24.50" },
      { from: 10, text: "22.75" },
    ]);
    expect(pricesParted("Price (1-9 / 10+)", "24.50")).toBeNull();
    expect(pricesParted("Price", "$24.50 / 22.75")).toBeNull();
  });

  it.each([
    ["Hosta Patriot 1 gal $7.95", "Hosta Patriot 1 gal", "$7.95"],
    ["Picea abies 6-7' B&B @ $95.00 ea", "Picea abies 6-7' B&B", "$95.00 ea"],
    ["Hosta 'Patriot' #1", "Hosta 'Patriot' #1", ""],
  ])("%s is parted", (text, rest, priceText) => {
    expect(priceSplit(text)).toEqual({ rest, priceText });
  });
});
