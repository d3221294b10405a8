import { expect, it } from "vitest";
import { planArea, planFault } from "@/lib/ground/plan-outline";
import { cornerAdded, cornerBySide, planOfCorners } from "./corner-path";

it("makes an outline of three corners and more, whether or not the last closes it", () => {
  const path = [
    [0, 0],
    [20, 0],
    [20, 6],
    [0, 6],
  ] as const;
  expect(planOfCorners(path.slice(0, 2))).toBeNull();
  const plan = planOfCorners(path);
  expect(plan && planFault(plan)).toBeNull();
  expect(plan && planArea(plan)).toBe(120);
  expect(planOfCorners([...path, [0, 0]])).toEqual(plan);
});
it("takes no corner twice running, and sides as they are taped", () => {
  expect(cornerAdded([[1, 2]], [1, 2])).toEqual([[1, 2]]);
  expect(cornerAdded([[1, 2]], [1, 3])).toHaveLength(2);
  expect(cornerBySide([[1, 2]], 12.5, 90)).toEqual([1, 14.5]);
  expect(cornerBySide([], 10, 180)).toEqual([-10, 0]);
});
