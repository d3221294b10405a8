import { describe, expect, it } from "vitest";
import { bedSizeArea, bedSizeFault, bedSizeOutline } from "./bed-size";
import { outlineArea } from "./outline";

describe("the size of a bed", () => {
  it("has the same area by length and width as by the outline drawn from them", () => {
    const size = { by: "rectangle", lengthFt: 26, widthFt: 12 } as const;
    expect(bedSizeArea(size)).toBe(312);
    expect(outlineArea(bedSizeOutline(size))).toBe(312);
    expect(bedSizeArea({ by: "outline", points: bedSizeOutline(size) })).toBe(312);
  });

  it("names the measure that is not more than zero, and the fault of an outline", () => {
    expect(bedSizeFault({ by: "rectangle", lengthFt: 26, widthFt: -1 })?.words).toMatch(/width/);
    expect(bedSizeFault({ by: "rectangle", lengthFt: Number.NaN, widthFt: 1 })?.words).toMatch(/length/);
    expect(
      bedSizeFault({
        by: "outline",
        points: [
          [0, 0],
          [1, 1],
        ],
      })?.kind,
    ).toBe("too few corners");
    expect(bedSizeFault({ by: "rectangle", lengthFt: 26, widthFt: 12 })).toBeNull();
  });
});
