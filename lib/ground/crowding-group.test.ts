import { describe, expect, it } from "vitest";
import { GROUND_TAXA } from "../../tests/fixtures/ground-taxa";
import { planCrowding } from "./crowding";
import { crowdingGroups } from "./crowding-group";
import { groundPlan } from "./ground-plan";
import { rectangleOutline } from "./outline";
import { planFromOutline } from "./plan-outline";
import { type PlanPlant, plantsGrown } from "./plan-plant";

const plan = groundPlan(
  planFromOutline(rectangleOutline(30, 12)).map((edge, i) => (i === 2 ? { ...edge, border: { what: "house wall" as const, windows: [{ fromFt: 4, toFt: 8, sillFt: 2 }] } } : edge)),
);
const plant = (id: string, key: string, x: number, y: number): PlanPlant => ({ id, key, at: [x, y], taxon: GROUND_TAXA.shrub, sizeText: "#3", existing: false });

describe("crowding told by rows", () => {
  it("is one group for all pairs of the same two rows, with every plant named once", () => {
    const plants = plantsGrown([plant("1", "b", 4, 4), plant("2", "a", 6, 4), plant("3", "b", 8, 4)]);
    const groups = crowdingGroups(planCrowding(plants, plan), plants, plan, ["a", "b"]);
    expect(groups).toHaveLength(1);
    expect(groups[0]).toMatchObject({ rows: ["a", "b"], against: null, safety: false });
    expect(groups[0]?.members).toHaveLength(2);
    expect([...(groups[0]?.plantIds ?? [])].sort()).toEqual(["1", "2", "3"]);
    // Grown 4 ft wide, 2 ft apart: 3 ft would be tolerated.
    expect(groups[0]?.overFt).toBeCloseTo(1, 1);
  });
  it("names what is crowded, and holds a window to be a matter of safety but not the wall", () => {
    const plants = plantsGrown([plant("1", "a", 24, 11)]);
    const groups = crowdingGroups(planCrowding(plants, plan), plants, plan, ["a"]);
    expect(groups.map(({ against, safety }) => [against, safety])).toEqual([
      ["the window with its sill at 2 ft", true],
      ["the house wall", false],
    ]);
  });
  it("goes by year, and is nothing where nothing crowds", () => {
    expect(crowdingGroups([], [], plan, [])).toEqual([]);
    const plants = plantsGrown([plant("1", "a", 4, 4), plant("2", "a", 4.5, 4), plant("3", "b", 20, 4), plant("4", "b", 22.8, 4)]);
    const years = crowdingGroups(planCrowding(plants, plan), plants, plan, ["a", "b"]).map(({ year }) => year);
    expect(years).toHaveLength(2);
    expect(years).toEqual([...years].sort((a, b) => a - b));
  });
});
