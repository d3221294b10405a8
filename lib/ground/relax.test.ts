import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { groundPlan } from "./ground-plan";
import { type Point, pointInOutline, rectangleOutline } from "./outline";
import { planFromOutline } from "./plan-outline";
import { pairNeedFt, plantsRelaxed, type RelaxPlant } from "./relax";

const plan = groundPlan(planFromOutline(rectangleOutline(20, 10)));
const plant = (at: Point, halfFt: number, more: Partial<RelaxPlant> = {}): RelaxPlant => ({
  at,
  home: at,
  halfFt,
  trunkFt: null,
  fixed: false,
  rooms: [0.5, 0.5, 0.5, 0.5],
  ...more,
});
/** Different places half a foot apart, in and round the bed, also right on its edges. */
const starts = fc
  .uniqueArray(fc.integer({ min: 0, max: 52 * 32 - 1 }), { minLength: 2, maxLength: 12 })
  .map((list) => list.map((k): Point => [(k % 52) / 2 - 3, Math.floor(k / 52) / 2 - 3]));

describe("plants pushed apart", () => {
  it("have their spacing where there is plenty of room, and come into the bed", () => {
    fc.assert(
      fc.property(starts, (places) => {
        const plants = places.map((place) => plant(place, 1));
        const after = plantsRelaxed(plants, plan);
        for (const [i, a] of after.entries()) {
          expect(pointInOutline(a, plan.outline)).toBe(true);
          for (const b of after.slice(i + 1)) expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeGreaterThan(0.97 * 2);
        }
      }),
      { numRuns: 60 },
    );
  });

  it("come apart also from one pile in a corner, outside or on the edge, to nine tenths", () => {
    for (const pile of [[0, 0] as Point, [-2, -2] as Point, [20, 5] as Point]) {
      const after = plantsRelaxed(
        Array.from({ length: 9 }, () => plant(pile, 1)),
        plan,
      );
      for (const [i, a] of after.entries()) {
        expect(pointInOutline(a, plan.outline)).toBe(true);
        for (const b of after.slice(i + 1)) expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeGreaterThan(1.8);
      }
    }
  });

  it("stay where they are when they have room, and fixed ones always", () => {
    const apart = [plant([4, 5], 1), plant([10, 5], 1)];
    expect(plantsRelaxed(apart, plan)).toEqual([
      [4, 5],
      [10, 5],
    ]);
    const [fixed, moved] = plantsRelaxed([plant([10, 5], 2, { fixed: true }), plant([10.5, 5], 1)], plan);
    expect(fixed).toEqual([10, 5]);
    expect((moved?.[0] ?? 0) - 10).toBeGreaterThanOrEqual(3);
  });

  it("need only the trunk's room under a tree, and a tree's spacing from another tree", () => {
    const tree = { halfFt: 15, trunkFt: 1 };
    const low = { halfFt: 2, trunkFt: null };
    expect(pairNeedFt(tree, low)).toBe(3);
    expect(pairNeedFt(low, tree)).toBe(3);
    expect(pairNeedFt(tree, tree)).toBe(30);
    expect(pairNeedFt(low, low)).toBe(4);
  });
});
