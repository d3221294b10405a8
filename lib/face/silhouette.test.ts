import { describe, expect, it } from "vitest";
import { HABITS, KINDS } from "../plants/vocabulary";
import type { FaceMark } from "./face-mark";
import type { PlantLook } from "./plant-look";
import type { SilhouettePlant } from "./plant-shape";
import { silhouette } from "./silhouette";
import { silhouetteScene } from "./silhouette-scene";

const LEAF = "#5f8a4a";
const BLOOM = "#cf4f78";
const STEM = "#857768";
const summer: PlantLook = { leafHex: LEAF, flower: { hex: BLOOM, show: 3 }, fruit: null, seedhead: null, stemHex: STEM };
const bare: PlantLook = { leafHex: null, flower: null, fruit: null, seedhead: null, stemHex: STEM };
const plant = (kind: SilhouettePlant["kind"], habit: SilhouettePlant["habit"], heightFt = 6, spreadFt = 5): SilhouettePlant => ({
  kind,
  habit,
  foliage: kind === "conifer" ? "evergreen" : kind === "tree" || kind === "shrub" || kind === "vine" ? "deciduous" : "dies back",
  family: "Asteraceae",
  genus: "Aster",
  heightFt,
  spreadFt,
});
const ALL = KINDS.flatMap((kind) => HABITS.map((habit) => [kind, habit] as const));

/** All end points of absolute commands; the rest (relative strokes of needles) is short. */
function points(marks: readonly FaceMark[]): [number, number][] {
  return marks.flatMap((mark) =>
    [...mark.d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map((m): [number, number] => {
      const [x, y] = [Number(m[1]), Number(m[2])];
      return [x, y];
    }),
  );
}
const paths = (marks: readonly FaceMark[]) => marks.map((m) => m.d).join("");

describe("silhouettes", () => {
  it.each(ALL)("of %s, %s are drawn in leaf: within the size, on the ground, with figures only", (kind, habit) => {
    for (const [h, w] of [
      [40, 30],
      [6, 5],
      [0.5, 2],
    ] as const) {
      const marks = silhouette(plant(kind, habit, h, w), summer, "seed");
      expect(marks.length).toBeGreaterThan(0);
      expect(paths(marks)).not.toMatch(/NaN|Infinity|undefined/);
      const all = points(marks);
      const [highest, lowest] = [Math.min(...all.map(([, y]) => y)), Math.max(...all.map(([, y]) => y))];
      const widest = Math.max(...all.map(([x]) => Math.abs(x)));
      expect(-highest, "as high as it grows").toBeGreaterThan(h * 0.7);
      expect(-highest, "no higher").toBeLessThan(h * 1.25);
      expect(widest, "as wide as it grows").toBeGreaterThan(w * 0.3);
      expect(widest, "no wider").toBeLessThan(w * 0.72);
      expect(lowest, "nothing under the ground").toBeLessThanOrEqual(h * 0.02);
    }
  });
  it("are the same for the same plant and differ for another of its kind", () => {
    const tree = plant("tree", "rounded");
    expect(silhouette(tree, summer, "a")).toEqual(silhouette(tree, summer, "a"));
    expect(silhouette(tree, summer, "a")).not.toEqual(silhouette(tree, summer, "b"));
  });
  it("wear the plant's own colors", () => {
    const parts = (marks: readonly FaceMark[], part: string) => marks.filter((m) => m.part === part);
    const marks = silhouette(plant("shrub", "rounded"), summer, "a");
    expect(parts(marks, "leaf").some((m) => m.fill === LEAF)).toBe(true);
    expect(parts(marks, "flower").some((m) => m.fill === BLOOM)).toBe(true);
    expect(parts(marks, "stem").some((m) => m.fill === STEM)).toBe(true);
    expect(parts(silhouette(plant("tree", "oval"), { ...bare, fruit: { hex: "#b9232a", show: 2 } }, "a"), "fruit").length).toBeGreaterThan(0);
  });
  it("show bare branches of trees and shrubs, and nothing of a herb that has died back", () => {
    for (const habit of HABITS) {
      expect(silhouette(plant("tree", habit), bare, "a").every((m) => m.part !== "leaf")).toBe(true);
      if (habit !== "mat") expect(silhouette(plant("shrub", habit), bare, "a").some((m) => m.part === "stem" || m.part === "support")).toBe(true);
      if (habit !== "climbing") expect(silhouette(plant("perennial", habit), bare, "a")).toEqual([]);
    }
  });
  it("show more flowers for more show", () => {
    const flowers = (show: number) =>
      silhouette(plant("shrub", "mounded"), { ...summer, flower: { hex: BLOOM, show } }, "a")
        .filter((m) => m.part === "flower")
        .reduce((sum, m) => sum + m.d.length, 0);
    expect(flowers(1)).toBeLessThan(flowers(2));
    expect(flowers(2)).toBeLessThan(flowers(3));
  });
});

describe("the scene beside a person", () => {
  it("has person and plant on one scale, apart from each other", () => {
    const scene = silhouetteScene(plant("tree", "rounded", 50, 40), summer, "a");
    expect(scene.plantCount).toBe(1);
    expect(scene.person.atFt).toBeGreaterThan(20.5);
    expect(scene.heightFt).toBeGreaterThan(50);
    expect(scene.rules).toEqual([0, 10, 20, 30, 40, 50]);
    expect(-Math.min(...points(scene.person.marks).map(([, y]) => y))).toBeLessThanOrEqual(6.05);
  });
  it("sets small plants in an odd row at mature spread", () => {
    const scene = silhouetteScene(plant("perennial", "mounded", 1, 1.5), summer, "a");
    expect(scene.plantCount % 2).toBe(1);
    expect(scene.plantCount).toBeGreaterThan(1);
    expect(scene.plants.map((p) => p.atFt)).toEqual(scene.plants.map((_, i) => i * 1.5));
    expect(scene.heightFt).toBeGreaterThan(6);
  });
});
