import { describe, expect, it } from "vitest";
import { areaForQuantity } from "../../lib/ground/spacing";
import { AREA_COVERED } from "./area-covered";

/** Printed to the square foot, the half or the second decimal, most rounded down: within half a square foot or 2 % of a flat, within 0.01 of one plant. */
function tolerance(plants: number, exact: number): number {
  return plants === 1 ? 0.0100001 : Math.max(0.6, 0.02 * exact);
}

describe("area covered by a flat against published tables", () => {
  it("agrees within the rounding of each table, but for two misprints", () => {
    const wrong = AREA_COVERED.flatMap(({ grid, plants, rows }) =>
      rows
        .map(([spacingIn, printed]) => ({ label: `${plants} plants at ${spacingIn} in, ${grid}: ${printed}`, printed, exact: areaForQuantity(plants, spacingIn / 12, grid) }))
        .filter(({ printed, exact }) => Math.abs(printed - exact) > tolerance(plants, exact))
        .map(({ label }) => label),
    );
    expect(wrong).toEqual(["1 plants at 5 in, square: 0.25", "36 plants at 8 in, triangular: 10.5"]);
  });

  it("gives the exact figures where the print is wrong: 0.25 belongs to 6 in, and 36 plants at 8 in are three quarters of 48", () => {
    expect(areaForQuantity(1, 5 / 12, "square")).toBeCloseTo(0.1736, 4);
    expect(areaForQuantity(1, 0.5, "square")).toBe(0.25);
    expect(areaForQuantity(36, 8 / 12, "triangular")).toBeCloseTo(13.856, 3);
    expect(areaForQuantity(36, 8 / 12, "triangular")).toBeCloseTo(0.75 * areaForQuantity(48, 8 / 12, "triangular"), 12);
  });

  it("takes flats set in diamonds as triangular, not square: the square figure misses the print by a seventh", () => {
    const flats = AREA_COVERED.filter((table) => table.grid === "triangular");
    expect(flats.length).toBeGreaterThanOrEqual(4);
    for (const { plants, rows } of flats) for (const [spacingIn, printed] of rows) expect(printed / areaForQuantity(plants, spacingIn / 12, "square")).toBeLessThan(0.9);
  });
});
