import { describe, expect, it } from "vitest";
import { PLAN_SYMBOL_FORMS, type PlanMark, type PlanSymbolPlant, planSymbol } from "./plan-symbol";
import type { PlantLook } from "./plant-look";

const SHRUB: PlanSymbolPlant = { kind: "shrub", habit: "rounded", foliage: "deciduous" };
const HERB: PlanSymbolPlant = { kind: "perennial", habit: "clump", foliage: "dies back" };
const BARE: PlantLook = { leafHex: null, flower: null, fruit: null, seedhead: null, stemHex: "#a32b2b" };
const GREEN: PlantLook = { ...BARE, leafHex: "#5f8a4a" };

const parts = (marks: readonly PlanMark[]) => new Set(marks.map(({ part }) => part));

type Pair = readonly [number, number];

/** Places along one path: its corners, and its curves at eighths. */
function placesOf(d: string): Pair[] {
  const places: Pair[] = [];
  let pen: Pair = [0, 0];
  for (const [, letter, rest = ""] of d.matchAll(/([MLQCAaZ])([^MLQCAaZ]*)/g)) {
    const n = rest.trim() === "" ? [] : rest.trim().split(/[ ,]+/).map(Number);
    const pairs = Array.from({ length: n.length / 2 }, (_, i): Pair => [n[2 * i] ?? 0, n[2 * i + 1] ?? 0]);
    if (letter === "Q" || letter === "C") {
      const curve = [pen, ...pairs];
      for (let step = 1; step <= 8; step++) {
        let points = curve;
        while (points.length > 1)
          points = points.slice(1).map(([x, y], i): Pair => [(points[i]?.[0] ?? 0) * (1 - step / 8) + x * (step / 8), (points[i]?.[1] ?? 0) * (1 - step / 8) + y * (step / 8)]);
        places.push(...points);
      }
    } else if (letter === "M" || letter === "L") places.push(...pairs);
    pen = (letter === "A" ? ([n[5] ?? 0, n[6] ?? 0] as const) : pairs.at(-1)) ?? pen;
  }
  return places;
}

/** The farthest that a symbol reaches from its middle. */
const reach = (marks: readonly PlanMark[]): number => Math.max(...marks.filter(({ part }) => part !== "shadow").flatMap(({ d }) => placesOf(d).map(([x, y]) => Math.hypot(x, y))));

describe("plan symbols", () => {
  it("wear the leaf color of the day", () => {
    expect(planSymbol(SHRUB, GREEN, 3).some(({ fill }) => fill === "#5f8a4a")).toBe(true);
    expect(planSymbol(SHRUB, { ...GREEN, leafHex: "#b9232a" }, 3).some(({ fill }) => fill === "#b9232a")).toBe(true);
  });
  it("show a bare woody plant as branches in the color of its bark, without a crown", () => {
    const marks = planSymbol(SHRUB, BARE, 3);
    expect(parts(marks)).toEqual(new Set(["stem"]));
    expect(marks.filter(({ fill }) => fill === "none").every(({ stroke }) => stroke === "#a32b2b")).toBe(true);
  });
  it("show a plant that has died back as a dashed circle, with the seedheads that stand", () => {
    const gone = planSymbol(HERB, BARE, 1);
    expect(gone).toHaveLength(1);
    expect(gone[0]?.d.match(/A/g)?.length).toBe(20);
    expect(parts(planSymbol(HERB, { ...BARE, seedhead: { hex: "#6f5440", show: 2 } }, 1))).toEqual(new Set(["stem", "seedhead"]));
  });
  it("have more flowers the more they show", () => {
    const flowers = (show: number) =>
      planSymbol(SHRUB, { ...GREEN, flower: { hex: "#fbfaf5", show } }, 4)
        .filter(({ part, fill }) => part === "flower" && fill !== "none")
        .reduce((sum, { d }) => sum + (d.match(/M/g)?.length ?? 0), 0);
    expect(flowers(3)).toBeGreaterThan(flowers(1) * 2);
  });
  it("are the same each time, and of a few forms", () => {
    expect(planSymbol(SHRUB, GREEN, 3, 1)).toEqual(planSymbol(SHRUB, GREEN, 3, 1));
    const forms = Array.from({ length: PLAN_SYMBOL_FORMS }, (_, form) => JSON.stringify(planSymbol(SHRUB, GREEN, 3, form)));
    expect(new Set(forms).size).toBe(PLAN_SYMBOL_FORMS);
  });
  it("keep to the crown's radius within 8 %, every kind and habit", () => {
    for (const kind of ["tree", "shrub", "conifer", "perennial", "grass", "fern", "bulb", "vine", "groundcover", "annual"] as const)
      for (const habit of ["rounded", "mat", "fountain", "rosette", "clump", "irregular"] as const)
        for (const radiusFt of [0.2, 1, 6]) {
          const marks = planSymbol({ kind, habit, foliage: "deciduous" }, { ...GREEN, flower: { hex: "#7b4397", show: 3 } }, radiusFt);
          expect(marks.length).toBeGreaterThan(0);
          expect(marks.every(({ d }) => !d.includes("NaN"))).toBe(true);
          expect(reach(marks), `${kind} ${habit} ${radiusFt}`).toBeLessThanOrEqual(radiusFt * 1.08);
        }
  });
  it("of no size are nothing", () => {
    expect(planSymbol(SHRUB, GREEN, 0)).toEqual([]);
  });
});
