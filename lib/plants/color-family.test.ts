import { describe, expect, it } from "vitest";
import { COLOR_FAMILIES, colorFamily, FAMILY_COLORS } from "./color-family";
import { COLOR_NAMES } from "./colors";

describe("families of color", () => {
  it("stand for themselves: the color on a swatch belongs to its family", () => {
    for (const family of COLOR_FAMILIES) expect(colorFamily(FAMILY_COLORS[family])).toBe(family);
  });
  it("take in every named color, and none is empty", () => {
    expect(new Set(COLOR_NAMES.map(colorFamily))).toEqual(new Set(COLOR_FAMILIES));
  });
});
