import { expect, it } from "vitest";
import { mulchCuYd } from "./mulch";

it("covers 324 square feet an inch deep with a cubic yard", () => {
  expect(mulchCuYd(324, 1)).toBe(1);
  expect(mulchCuYd(1200, 3)).toBeCloseTo(11.11, 2);
  expect(mulchCuYd(500, 3)).toBeCloseTo(4.63, 2);
});
