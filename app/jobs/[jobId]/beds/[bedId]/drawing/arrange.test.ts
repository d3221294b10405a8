import { describe, expect, it } from "vitest";
import type { PlacedPlant } from "@/lib/ground/bed-drawing";
import { groundPlan } from "@/lib/ground/ground-plan";
import { rectangleOutline } from "@/lib/ground/outline";
import { planFromOutline } from "@/lib/ground/plan-outline";
import { placesAligned, placesSpaced, plantsCopied } from "./arrange";
import { groupOf, plantBeside, plantsInOrder, plantsWithin } from "./plan-choice";

const plan = groundPlan(planFromOutline(rectangleOutline(20, 10)));
const plant = (id: string, x: number, y: number, group = 1): PlacedPlant => ({ id, rowId: "r1", at: [x, y], group });
const three = [plant("a", 2, 3), plant("b", 5, 1), plant("c", 10, 4)];

describe("plants brought into line", () => {
  it("stand on the outermost or the middle", () => {
    expect([...placesAligned(three, "left", plan).values()]).toEqual([
      [2, 3],
      [2, 1],
      [2, 4],
    ]);
    expect([...placesAligned(three, "top", plan).values()].map(([, y]) => y)).toEqual([4, 4, 4]);
    expect([...placesAligned(three, "middle across", plan).values()].map(([, y]) => y)).toEqual([8 / 3, 8 / 3, 8 / 3]);
  });
  it("stand as far inside their edge as the nearest of them", () => {
    expect([...placesAligned(three, "along the edge", plan).values()]).toEqual([
      [2, 1],
      [5, 1],
      [10, 1],
    ]);
  });
  it("are spaced evenly between the outermost, and keep their place across", () => {
    expect([...placesSpaced(three)]).toEqual([
      ["a", [2, 3]],
      ["b", [6, 1]],
      ["c", [10, 4]],
    ]);
  });
});

describe("copies", () => {
  it("are grouped among themselves as their originals were, in groups of their own", () => {
    let n = 0;
    const copies = plantsCopied([plant("a", 0, 0, 4), plant("b", 1, 0, 4), plant("c", 2, 0, 7)], [1, -1], () => `n${n++}`, 20);
    expect(copies.map(({ id, at, group }) => [id, ...at, group])).toEqual([
      ["n0", 1, -1, 20],
      ["n1", 2, -1, 20],
      ["n2", 3, -1, 21],
    ]);
  });
});

describe("which plants are meant", () => {
  const plants = [plant("front", 1, 1, 1), plant("back left", 2, 8, 2), plant("back right", 9, 7, 2)];
  it("goes from the back to the front, left to right, and round", () => {
    const inOrder = plantsInOrder(plants);
    expect(inOrder.map(({ id }) => id)).toEqual(["back left", "back right", "front"]);
    expect(plantBeside(inOrder, null, 1)?.id).toBe("back left");
    expect(plantBeside(inOrder, "front", 1)?.id).toBe("back left");
    expect(plantBeside(inOrder, "back left", -1)?.id).toBe("front");
    expect(plantBeside([], null, 1)).toBeNull();
  });
  it("is a whole group, or what lies in a band whichever way it was drawn", () => {
    expect([...groupOf(plants, "back right")]).toEqual(["back left", "back right"]);
    expect([...plantsWithin(plants, [10, 9], [0, 6])]).toEqual(["back left", "back right"]);
  });
});
