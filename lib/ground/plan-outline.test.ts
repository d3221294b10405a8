import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { OPEN, STREET_CORNER } from "./border";
import { STRAIGHT } from "./curve";
import { outlineArea, outlinePerimeter, type Point, rectangleOutline } from "./outline";
import { type PlanOutline, planArea, planFault, planFromOutline, planPerimeter, planSampled, pointAtLength, pointSnapped } from "./plan-outline";

/** A full circle as two arcs. */
const circle = (r: number, x = 0, y = 0): PlanOutline => [
  { from: [x - r, y], shape: { kind: "arc", ordinateFt: r }, border: OPEN },
  { from: [x + r, y], shape: { kind: "arc", ordinateFt: r }, border: OPEN },
];
/** A kidney of four Béziers, always simple. */
const kidney: PlanOutline = [
  { from: [0, 0], shape: { kind: "cubic", control1: [6, -4], control2: [14, -4] }, border: { what: "walk" } },
  { from: [20, 0], shape: { kind: "cubic", control1: [26, 4], control2: [24, 12] }, border: OPEN },
  { from: [18, 12], shape: { kind: "cubic", control1: [12, 12], control2: [12, 6] }, border: { what: "lawn" } },
  { from: [6, 8], shape: { kind: "cubic", control1: [0, 10], control2: [-4, 4] }, border: OPEN },
];

describe("a drawn bed", () => {
  it("of straight edges has exactly the polygon's area and perimeter, and its corners", () => {
    const outline = rectangleOutline(24, 8);
    const plan = planFromOutline(outline);
    expect(planArea(plan)).toBe(192);
    expect(planPerimeter(plan)).toBe(64);
    expect(planSampled(plan)).toEqual({ outline, sideEdges: [0, 1, 2, 3] });
  });

  it("that is a circle has the circle's area and perimeter, also far from the origin", () => {
    for (const plan of [circle(3), circle(7, 4000, -3000)]) {
      const r = plan === undefined ? 0 : ((plan[1]?.from[0] ?? 0) - (plan[0]?.from[0] ?? 0)) / 2;
      expect(planArea(plan)).toBeCloseTo(Math.PI * r * r, 8);
      expect(planPerimeter(plan)).toBeCloseTo(2 * Math.PI * r, 8);
      expect(planFault(plan)).toBeNull();
    }
  });

  it("is sampled so that area and perimeter agree with the curves within 0.1 %", () => {
    for (const plan of [circle(1.5), circle(3), circle(20), kidney]) {
      const { outline, sideEdges } = planSampled(plan);
      expect(outline.length).toBe(sideEdges.length);
      expect(Math.abs(outlineArea(outline) / planArea(plan) - 1)).toBeLessThan(0.001);
      expect(Math.abs(outlinePerimeter(outline) / planPerimeter(plan) - 1)).toBeLessThan(0.001);
    }
  });

  it("knows which drawn edge each sampled side belongs to", () => {
    const { sideEdges } = planSampled(kidney);
    expect([...new Set(sideEdges)]).toEqual([0, 1, 2, 3]);
    expect([...sideEdges]).toEqual([...sideEdges].sort((a, b) => a - b));
  });

  it("that crosses itself is refused with the place and the edges", () => {
    const bow = planFromOutline([
      [0, 0],
      [10, 10],
      [10, 0],
      [0, 10],
    ]);
    const fault = planFault(bow);
    expect(fault?.place?.[0]).toBeCloseTo(5, 9);
    expect(fault?.words).toContain("edges 1 and 3");
    const loop: PlanOutline = [
      { from: [0, 0], shape: { kind: "cubic", control1: [30, 20], control2: [-10, 20] }, border: OPEN },
      { from: [10, 0], shape: STRAIGHT, border: OPEN },
      { from: [5, -10], shape: STRAIGHT, border: OPEN },
    ];
    expect(planFault(loop)?.words).toContain("edge 1 meets itself");
  });

  it("whose curve swings through another edge is refused though its corners are sound", () => {
    const plan: PlanOutline = [
      { from: [0, 0], shape: { kind: "arc", ordinateFt: -7 }, border: STREET_CORNER },
      { from: [20, 0], shape: STRAIGHT, border: OPEN },
      { from: [20, 5], shape: STRAIGHT, border: OPEN },
      { from: [0, 5], shape: STRAIGHT, border: OPEN },
    ];
    expect(planFault(planFromOutline(plan.map(({ from }) => from)))).toBeNull();
    expect(planFault(plan)?.kind).toBe("crossing");
  });

  it("says in plain words what is missing", () => {
    expect(planFault([])?.kind).toBe("too few corners");
    expect(planFault(planFromOutline([[0, 0] as Point, [1, 0] as Point]))?.words).toContain("two with a curve");
    expect(planFault([...circle(3), { from: [Number.NaN, 0], shape: STRAIGHT, border: OPEN }])?.words).toContain("Corner 3");
  });

  it("keeps its area when it is moved or drawn the other way round", () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 500, noNaN: true }), fc.double({ min: -500, max: 500, noNaN: true }), (dx, dy) => {
        const moved = ([x, y]: Point): Point => [x + dx, y + dy];
        const shifted = kidney.map(({ from, shape, border }) => ({
          from: moved(from),
          border,
          shape: shape.kind === "cubic" ? { ...shape, control1: moved(shape.control1), control2: moved(shape.control2) } : shape,
        }));
        expect(planArea(shifted)).toBeCloseTo(planArea(kidney), 8);
      }),
    );
  });

  it("snaps to whole and half feet and takes typed lengths", () => {
    expect(pointSnapped([3.26, -0.2], 0.5)).toEqual([3.5, 0]);
    expect(pointSnapped([3.26, 7.8], 1)).toEqual([3, 8]);
    expect(pointAtLength([1, 1], [4, 5], 10)).toEqual([7, 9]);
    expect(pointAtLength([1, 1], [1, 1], 10)).toBeNull();
  });
});
