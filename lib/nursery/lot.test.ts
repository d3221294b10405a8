import { describe, expect, it } from "vitest";
import { lotFree, lotPriceCents } from "./lot";
import { sizeFromText } from "./size-read";
import { sizeSteps } from "./size-step";

describe("a lot", () => {
  it("has free what nobody has been promised, never less than nothing", () => {
    expect(lotFree({ onHand: 10, reserved: 4 })).toBe(6);
    expect(lotFree({ onHand: 3, reserved: 4 })).toBe(0);
  });

  it("costs less a plant from each break on", () => {
    const prices = [
      { from: 1, cents: 1200 },
      { from: 10, cents: 1100 },
    ];
    expect([1, 9, 10, 99].map((quantity) => lotPriceCents({ prices }, quantity))).toEqual([1200, 1200, 1100, 1100]);
    expect(lotPriceCents({ prices: [] }, 5)).toBeNull();
  });
});

describe("size steps", () => {
  const between = (wanted: string, offered: string) => sizeSteps(sizeFromText(wanted), sizeFromText(offered));
  it("count along the trade's scales", () => {
    expect(between("#3", "#5")).toBe(1);
    expect(between("#3", "#3")).toBe(0);
    expect(between("#3", "#1")).toBe(-2);
    expect(between('2-2.5" cal B&B', '2.5-3" cal B&B')).toBe(1);
    expect(between("5-6 ft B&B", "4-5 ft B&B")).toBe(-1);
  });
  it("do not compare a ball with a container, nor words with figures", () => {
    expect(between("5-6 ft B&B", "#7")).toBeNull();
    expect(between("#3", "as sample")).toBeNull();
  });
});
