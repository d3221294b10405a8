import { describe, expect, it } from "vitest";
import { sizeFromText } from "../nursery/size-read";
import { digCautions, digHazards, digPlan, isoDayOfYear, movingTool } from "./dig-method";
import { rootBall } from "./root-ball";

const planOf = (text: string) => digPlan(rootBall(sizeFromText(text, "tree"), "tree"));
const maple = { flags: ["fall-dig-hazard"] as const, leaves: { onDay: 130, offDay: 290 } };
const spruce = { flags: [], leaves: null };

describe("how a plant is dug", () => {
  it("is by hand for small balls, by spade above, by a tree mover beyond every spade", () => {
    expect(planOf("1 in cal B&B")).toMatchObject({ method: "by hand", byMachine: false });
    expect(planOf("3 in cal B&B")).toMatchObject({ method: "44 in tree spade", byMachine: true, minutes: [10, 20] });
    expect(planOf("10 in cal B&B")).toMatchObject({ method: "tree mover", minutes: null });
    expect(digPlan(null)).toMatchObject({ method: "by hand, bare root", byMachine: false });
  });

  it("takes by hand longer for wider balls", () => {
    const small = digPlan({ diameterIn: 12, weightLb: 50 }).minutes ?? [0, 0];
    const large = digPlan({ diameterIn: 20, weightLb: 200 }).minutes ?? [0, 0];
    expect(small).toEqual([15, 23]);
    expect(large[0]).toBeGreaterThan(small[1]);
  });

  it("is moved with more machine the heavier it is", () => {
    expect([40, 90, 700, 3000, 9000].map(movingTool)).toEqual([
      "carried by one",
      "two people, or a ball cart",
      "skid steer with forks or ball tongs",
      "wheel loader or telehandler",
      "crane or boom truck",
    ]);
  });
});

describe("hazards of digging", () => {
  it("name a fall-dig hazard for a day in fall, and not for one in spring before the leaves", () => {
    expect(digHazards(maple, "ball", "2026-11-10", 120)).toEqual([expect.stringMatching(/^Fall-dig hazard: not to be dug for Nov 10\./)]);
    expect(digHazards(maple, "ball", "2026-04-05", 120)).toEqual([]);
    expect(digHazards(maple, "ball", null, 120)).toEqual(["Fall-dig hazard: dig in spring before bud break."]);
  });

  it("name plants in leaf and evergreens in soft growth", () => {
    expect(digHazards({ ...maple, flags: [] }, "bare root", "2026-06-20", 120)[0]).toContain("dig bare root only while it is dormant");
    expect(digHazards(spruce, "ball", "2026-05-20", 120)[0]).toContain("New growth is soft");
    expect(digHazards(spruce, "ball", "2026-10-10", 120)).toEqual([]);
  });

  it("count days of the year, 29 February within 28", () => {
    expect(["2026-01-01", "2028-02-29", "2026-03-01", "2026-12-31"].map(isoDayOfYear)).toEqual([1, 59, 60, 365]);
  });

  it("always say 811, and overhead lines only where a machine works", () => {
    expect(digCautions([])).toEqual([]);
    expect(digCautions([digPlan({ diameterIn: 12, weightLb: 45 })]).join(" ")).toMatch(/811/);
    expect(digCautions([digPlan({ diameterIn: 12, weightLb: 45 })]).join(" ")).not.toMatch(/Overhead/);
    expect(digCautions([digPlan({ diameterIn: 32, weightLb: 700 })]).join(" ")).toMatch(/Overhead lines/);
  });
});
