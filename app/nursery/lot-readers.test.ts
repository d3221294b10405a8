import { describe, expect, it } from "vitest";
import { onHandRead, priceRead, priceText } from "./lot-readers";

describe("the fields of a lot", () => {
  it("take a whole count and say why they refuse another", () => {
    expect(onHandRead("1,200")).toEqual({ ok: true, value: 1200 });
    expect(onHandRead("0")).toEqual({ ok: true, value: 0 });
    expect(onHandRead("-3")).toEqual({ ok: false, fault: "There cannot be fewer than 0 plants on hand." });
    expect(onHandRead("2.5")).toMatchObject({ ok: false });
    expect(onHandRead("")).toMatchObject({ ok: false });
  });
  it.each([
    ["24.5", 2450],
    ["$ 1,024.50", 102_450],
    [".75", 75],
    ["0.29", 29],
    ["", null],
  ])("read a price of “%s” in cents", (typed, cents) => expect(priceRead(typed)).toEqual({ ok: true, value: cents }));
  it.each(["-5", "call", "12.345", "2000000"])("refuse a price of “%s”", (typed) => expect(priceRead(typed)).toMatchObject({ ok: false }));
  it("show a price as it can be read again", () => {
    expect(priceText(102_450)).toBe("$1,024.50");
    expect(priceRead(priceText(102_450))).toEqual({ ok: true, value: 102_450 });
    expect(priceText(null)).toBe("");
  });
});
