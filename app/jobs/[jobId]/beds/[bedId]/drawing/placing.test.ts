import { describe, expect, it } from "vitest";
import { rectangleOutline } from "@/lib/ground/outline";
import { planFromOutline } from "@/lib/ground/plan-outline";
import { type Placing, type PlacingGround, placingAngle, placingByArea, placingGroups, placingLengthFt, placingMoved, placingShape, placingStart, placingTurned } from "./placing";
import type { Figure, PlanStand } from "./plan-figure";

const outline = rectangleOutline(20, 10);
const ground: PlacingGround = { outline, edges: planFromOutline(outline), stands: [] };
const tool = (kind: Placing["kind"], change: Partial<Placing> = {}): Placing => ({ ...placingStart(kind, "r1", 2, [10, 5]), ...change });
const count = (placing: Placing, on = ground) => placingGroups(placing, on).reduce((sum, group) => sum + group.length, 0);

describe("a tool in hand", () => {
  it("stands at the middle of what is shown, so that it can be used without a mouse", () => {
    expect(placingGroups(tool("single"), ground)).toEqual([[[10, 5]]]);
    expect(count(tool("row"))).toBe(3);
  });
  it("moves, turns about its middle and grows", () => {
    const moved = placingMoved(tool("row"), [1, -2]);
    expect([moved.from[1], moved.to[1]]).toEqual([3, 3]);
    const turned = placingTurned(moved, 8, 90);
    expect(placingLengthFt(turned)).toBeCloseTo(8);
    expect(placingAngle(turned)).toBeCloseTo(90);
    expect((turned.from[0] + turned.to[0]) / 2).toBeCloseTo(11);
  });
});

describe("what a tool would set", () => {
  it("is an odd group at its spacing", () => {
    const [group = []] = placingGroups(tool("group", { quantity: 5 }), ground);
    expect(group).toHaveLength(5);
    const [a, b] = group;
    expect(a && b).toBeTruthy();
  });
  it("is a row along a line, and along an edge so far inside it", () => {
    expect(count(tool("row", { from: [1, 5], to: [19, 5] }))).toBe(9);
    const [row = []] = placingGroups(tool("row", { edge: 0, insetFt: 1 }), ground);
    expect(row).toHaveLength(10);
    expect(row.every(([, y]) => Math.abs(y - 1) < 1e-9)).toBe(true);
  });
  it("is groups of its own on either side of a line", () => {
    const groups = placingGroups(tool("repeat", { from: [2, 5], to: [18, 5], groups: 3, quantity: 3, asideFt: 2 }), ground);
    expect(groups.map((group) => group.length)).toEqual([3, 3, 3]);
    expect(groups.map((group) => Math.sign(group.reduce((sum, [, y]) => sum + y - 5, 0)))).toEqual([1, -1, 1]);
  });
  it("is a drift clipped to the bed", () => {
    const drift = tool("drift", { from: [4, 0], to: [16, 0], widthFt: 6 });
    expect(placingShape(drift)).not.toBeNull();
    const points = placingGroups(drift, ground).flat();
    expect(points.length).toBeGreaterThan(3);
    expect(points.every(([, y]) => y > 0)).toBe(true);
  });
  it("is a fill that the area foretells within the edge's effect", () => {
    const fill = tool("fill", { grid: "square" });
    const byArea = placingByArea(fill, ground);
    expect(count(fill)).toBe(50);
    expect(byArea?.expected).toBeCloseTo(50);
    expect(byArea?.differ).toBeGreaterThan(1);
  });
  it("leaves the ground of standing plants free, but not that under a tree", () => {
    const stand = (kind: "shrub" | "tree"): PlanStand => ({
      plant: { id: "a", rowId: "r2", at: [10, 5], group: 1 },
      figure: { taxon: { kind }, matureFt: 4 } as unknown as Figure,
      form: 0,
    });
    const left = tool("fill", { ground: "left" });
    const [shrub, tree] = [count(left, { ...ground, stands: [stand("shrub")] }), count(left, { ...ground, stands: [stand("tree")] })];
    expect(shrub).toBeLessThan(tree);
    expect(tree).toBeLessThan(count(tool("fill")));
  });
  it("is nothing where the figures make no sense", () => {
    expect(placingGroups(tool("row", { from: [1, 1], to: [1, 1] }), ground).flat()).toHaveLength(0);
    expect(placingGroups(tool("fill", { spacingFt: 0 }), ground)).toEqual([]);
    expect(placingGroups(tool("fill", { spacingFt: 0.1 }), ground)).toEqual([]);
  });
});
