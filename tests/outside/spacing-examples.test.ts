import { describe, expect, it } from "vitest";
import { mulchCuYd } from "../../lib/ground/mulch";
import { outlineArea, type Point } from "../../lib/ground/outline";
import { doubleRowQuantity, quantityForArea, rowQuantity, rowSetOut } from "../../lib/ground/spacing";

// Worked examples as published; the source of each in its title's comment. Where the print is wrong or short, the test says so.
describe("published worked examples", () => {
  // Groundcover Spacing (wenkegardencenter.com/groundcover-spacing)
  it("60 sq ft at 18 in: printed 60 × .44 = 26.4 -> 26, rounded down twice; the area needs 26.67, so 27", () => {
    expect(Math.floor(60 * 0.44)).toBe(26);
    expect(quantityForArea(60, 1.5, "square")).toBe(27);
  });

  // Groundcover Spacing Chart (gloverperennials.com/?p=2150)
  it("100 sq ft at 6 in: 400 plants", () => {
    expect(quantityForArea(100, 0.5, "square")).toBe(400);
  });

  // Plants per square foot (scgardenguru.com/plants-needed-per-square-foot.html)
  it("6 ft × 4 ft at 6 in: 4 × 24 = 96 plants", () => {
    expect(quantityForArea(6 * 4, 0.5, "square")).toBe(96);
  });

  // Same page; it takes π as 3.14.
  it("a circle of radius 5 ft: printed 78.5 sq ft, exact 78.54", () => {
    const circle = Array.from({ length: 500 }, (_, i): Point => [5 * Math.cos((i * Math.PI) / 250), 5 * Math.sin((i * Math.PI) / 250)]);
    expect(outlineArea(circle)).toBeCloseTo(78.54, 2);
    expect(Math.abs(outlineArea(circle) - 78.5)).toBeLessThan(0.05);
  });

  // Question and answer 39238, 2006 (garden.org/frogs/view/39238/)
  it("a 26 ft hedge: printed 8 plants at 3 ft (about 24 ft, short) or 10 at 2½ ft (25 ft, short); to fill the run 9 or 11, set a little closer", () => {
    expect(8 * 3).toBeLessThan(26);
    expect(10 * 2.5).toBeLessThan(26);
    expect(rowQuantity(26, 3)).toBe(9);
    expect(rowQuantity(26, 2.5)).toBe(11);
    expect(rowSetOut(26, 9).spacingFt).toBeCloseTo(2.89, 2);
    expect(rowQuantity(24, 3)).toBe(8);
    expect(rowQuantity(25, 2.5)).toBe(10);
  });

  // Spacing hedges (thetreecenter.com/spacing-hedges-lets-get-it-right/): n = L/s, ends half a spacing in; one more only if plants stand on both ends.
  it("ends of a hedge stand half a spacing in: n = L/s", () => {
    for (const [runFt, spacingFt, plants] of [
      [30, 3, 10],
      [100, 4, 25],
      [12, 1.5, 8],
    ] as const) {
      expect(rowQuantity(runFt, spacingFt)).toBe(plants);
      expect(rowSetOut(runFt, plants).endFt).toBe(spacingFt / 2);
    }
  });

  // Same page; gardencenterohio.com/spacing/
  it("two rows: both at the single-row spacing, the second offset by half", () => {
    expect(doubleRowQuantity(30, 3)).toMatchObject({ front: 10, back: 9, total: 19 });
  });

  // Contractor's sheet (sfjohnsonconsulting.com/l-plan-cheat-page)
  it("1,200 sq ft under 3 in of mulch: printed 1,200 × 0.25 / 324 = 0.9 cu yd, wrong twelvefold (feet where 324 wants inches); 11.11", () => {
    expect((1200 * 0.25) / 324).toBeCloseTo(0.93, 2);
    expect(mulchCuYd(1200, 3)).toBeCloseTo(11.11, 2);
    expect(mulchCuYd(1200, 3)).toBeCloseTo(12 * ((1200 * 0.25) / 324), 9);
  });

  // Mulch coverage (countrygardencenterofbelair.com/Mulch%20Coverage.htm)
  it("500 sq ft at 3 in: 500/4 = 125 cu ft, 4.63 cu yd", () => {
    expect(mulchCuYd(500, 3)).toBeCloseTo(4.63, 2);
  });

  // Mulch (jeperduelandscaping.com/shop/mulch/): a cubic yard covers 324 / 162 / 108 / 81 / 64.8 sq ft at 1 / 2 / 3 / 4 / 5 in.
  it("a cubic yard covers 324, 162, 108, 81 and 64.8 sq ft at 1 to 5 in", () => {
    for (const [i, sqFt] of [324, 162, 108, 81, 64.8].entries()) expect(mulchCuYd(sqFt, i + 1)).toBeCloseTo(1, 12);
  });
});
