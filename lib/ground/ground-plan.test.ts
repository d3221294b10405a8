import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { curveLength } from "./curve";
import { barrierNearest, groundPlan, type Segment } from "./ground-plan";
import { outlineDistance, rectangleOutline } from "./outline";
import { type PlanOutline, planCurves, planFromOutline } from "./plan-outline";

const wall = { what: "house wall", windows: [{ fromFt: 4, toFt: 9, sillFt: 3 }] } as const;
const curved: PlanOutline = [
  { from: [0, 0], shape: { kind: "arc", ordinateFt: 4 }, border: wall },
  { from: [20, 0], shape: { kind: "straight" }, border: { what: "open" } },
  { from: [10, 14], shape: { kind: "straight" }, border: { what: "lawn" } },
];
const length = (segments: readonly Segment[]) => segments.reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0);

describe("the ground of a bed", () => {
  it("has a barrier for each edge, each window and each thing, in this order", () => {
    const plan = groundPlan(curved, [
      { what: "boulder", at: [9, 4], radiusFt: 1, clearFt: 0.5 },
      {
        what: "buried line",
        path: [
          [0, 2],
          [10, 3],
          [20, 2],
        ],
        clearFt: 5,
      },
    ]);
    expect(plan.barriers.map(({ kind }) => kind)).toEqual(["edge", "edge", "edge", "window", "thing", "thing"]);
    expect(plan.barriers[5]?.segments.length).toBe(2);
  });

  it("has each edge's length in its pieces, and a window's along a curved wall", () => {
    const plan = groundPlan(curved);
    for (const [i, curve] of planCurves(curved).entries()) expect(Math.abs(length(plan.barriers[i]?.segments ?? []) / curveLength(curve) - 1)).toBeLessThan(0.001);
    expect(length(plan.barriers[3]?.segments ?? [])).toBeCloseTo(5, 6);
  });

  it("is as far from the nearest edge as its outline is", () => {
    const plan = groundPlan(planFromOutline(rectangleOutline(9, 5)));
    fc.assert(
      fc.property(fc.double({ min: -5, max: 15, noNaN: true }), fc.double({ min: -5, max: 10, noNaN: true }), (x, y) => {
        const near = plan.barriers.map((barrier) => barrierNearest([x, y], barrier));
        expect(Math.min(...near.map(({ awayFt }) => awayFt))).toBeCloseTo(outlineDistance([x, y], plan.outline), 9);
        for (const { awayFt, at } of near) expect(Math.hypot(at[0] - x, at[1] - y)).toBeCloseTo(awayFt, 9);
      }),
    );
  });
});
