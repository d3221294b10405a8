import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Border, Window } from "./border";
import { type CurveShape, curveArc, curveLength, curvePointAt, STRAIGHT } from "./curve";
import { curveStretch, windowRoom } from "./edge-window";
import type { Point } from "./outline";
import {
  arcThrough,
  cubicOver,
  edgeEnd,
  ordinateOfRadius,
  ordinateToward,
  outwardSign,
  planBounds,
  planCornerAdded,
  planCornerMoved,
  planCornerRemoved,
  planEdgeBordered,
  planEdgeLengthSet,
  planEdgeShaped,
  planShifted,
  planTurnsLeft,
  planWindowsSet,
} from "./plan-edit";
import { type PlanEdge, type PlanOutline, planArea, planCurves, planFault, planFromOutline, planPerimeter } from "./plan-outline";
import { PLAN_STARTS, planStarted } from "./plan-start";

const square = planFromOutline([
  [0, 0],
  [20, 0],
  [20, 10],
  [0, 10],
]);
const arc = (ordinateFt: number): CurveShape => ({ kind: "arc", ordinateFt });
const wall = (...windows: Window[]): Border => ({ what: "house wall", windows });
const lengthOf = (plan: PlanOutline, edge: number) => {
  const curve = planCurves(plan)[edge];
  return curve ? curveLength(curve) : Number.NaN;
};
const windowsOf = (plan: PlanOutline, edge: number) => {
  const border = plan[edge]?.border;
  return border?.what === "house wall" ? border.windows : [];
};

/** To a hundredth of a foot, an eighth of an inch: what a drawing holds. */
const coordinate = fc.integer({ min: -6000, max: 6000 }).map((hundredths) => hundredths / 100);
const point = fc.tuple(coordinate, coordinate);
const windows = fc.array(fc.tuple(fc.double({ min: 0, max: 40, noNaN: true }), fc.double({ min: 0.5, max: 8, noNaN: true })), { maxLength: 3 });
const border = fc.oneof(
  fc.constant<Border>({ what: "walk" }),
  windows.map((list) => wall(...list.map(([fromFt, width]) => ({ fromFt, toFt: fromFt + width, sillFt: 3 })))),
);
const shape = fc.oneof(
  fc.constant<CurveShape>(STRAIGHT),
  fc.double({ min: -12, max: 12, noNaN: true }).map(arc),
  fc.tuple(point, point).map(([control1, control2]): CurveShape => ({ kind: "cubic", control1, control2 })),
);
/** Any plan, sound or not, whose windows lie on their edges. */
const plan = fc.array(fc.record({ from: point, shape, border }), { minLength: 3, maxLength: 7 }).map((edges): PlanOutline => {
  const wild: readonly PlanEdge[] = edges;
  return wild.reduce<PlanOutline>((held, edge, i) => planEdgeBordered(held, i, edge.border), wild);
});
const planAndEdge = plan.chain((edges) => fc.tuple(fc.constant(edges), fc.nat({ max: edges.length - 1 })));
const allWindowsLieOnTheirEdges = (edges: PlanOutline) =>
  edges.every((_, i) => windowsOf(edges, i).every(({ fromFt, toFt }) => fromFt >= 0 && toFt <= lengthOf(edges, i) + 1e-9 && toFt >= fromFt));

describe("moving a corner", () => {
  it("keeps every other corner, and windows stay on their edges", () => {
    fc.assert(
      fc.property(planAndEdge, point, ([edges, corner], to) => {
        const moved = planCornerMoved(edges, corner, to);
        expect(moved[corner]?.from).toEqual(to);
        for (const [i, edge] of edges.entries()) if (i !== corner) expect(moved[i]?.from).toEqual(edge.from);
        expect(allWindowsLieOnTheirEdges(moved)).toBe(true);
      }),
    );
  });
  it("leaves edges that do not touch it as they were", () => {
    const moved = planCornerMoved(square, 1, [22, -1]);
    expect(moved[2]).toBe(square[2]);
    expect(moved[3]).toBe(square[3]);
  });
  it("takes the Bézier handles at the corner with it and leaves the far ones", () => {
    const curved = planEdgeShaped(planEdgeShaped(square, 0, { kind: "cubic", control1: [5, -3], control2: [15, -3] }), 1, { kind: "cubic", control1: [24, 3], control2: [24, 7] });
    const moved = planCornerMoved(curved, 1, [21, 2]);
    expect(moved[0]?.shape).toEqual({ kind: "cubic", control1: [5, -3], control2: [16, -1] });
    expect(moved[1]?.shape).toEqual({ kind: "cubic", control1: [25, 5], control2: [24, 7] });
  });
  it("keeps the likeness of an arc: its ordinate grows with its chord", () => {
    const moved = planCornerMoved(planEdgeShaped(square, 0, arc(2)), 1, [40, 0]);
    expect(moved[0]?.shape).toEqual(arc(4));
  });
  it("slides a window back when its wall gets shorter, and cuts one that is wider than the wall", () => {
    const walled = planEdgeBordered(square, 0, wall({ fromFt: 15, toFt: 19, sillFt: 3 }));
    expect(windowsOf(planCornerMoved(walled, 1, [12, 0]), 0)).toEqual([{ fromFt: 8, toFt: 12, sillFt: 3 }]);
    expect(windowsOf(planCornerMoved(walled, 1, [3, 0]), 0)).toEqual([{ fromFt: 0, toFt: 3, sillFt: 3 }]);
  });
});

describe("a typed length", () => {
  it("is exactly the edge's length afterwards, for every shape, and moves only the end", () => {
    fc.assert(
      fc.property(planAndEdge, fc.double({ min: 0.5, max: 200, noNaN: true }), ([edges, edge], lengthFt) => {
        fc.pre(lengthOf(edges, edge) > 0.1);
        const set = planEdgeLengthSet(edges, edge, lengthFt);
        expect(Math.abs(lengthOf(set, edge) / lengthFt - 1)).toBeLessThan(1e-9);
        // Of a rectangle two corners go along; it is tested below.
        const moving = edges.length === 4 ? [edgeEnd(edges, edge), edgeEnd(edges, edgeEnd(edges, edge))] : [edgeEnd(edges, edge)];
        for (const [i, { from }] of edges.entries()) if (!moving.includes(i)) expect(set[i]?.from).toEqual(from);
        expect(allWindowsLieOnTheirEdges(set)).toBe(true);
      }),
    );
  });
  it("moves the end along the edge's own direction", () => {
    const set = planEdgeLengthSet(square, 0, 12.5);
    expect(set[1]?.from).toEqual([12.5, 0]);
    expect(planEdgeLengthSet(set, 3, 8)[0]?.from).toEqual([0, 2]);
  });
  it("leaves a rectangle a rectangle, whichever side was typed, and other fours as they are", () => {
    const long = planEdgeLengthSet(square, 0, 300);
    expect(long.map(({ from }) => from)).toEqual([
      [0, 0],
      [300, 0],
      [300, 10],
      [0, 10],
    ]);
    expect(planArea(planEdgeLengthSet(long, 3, 4))).toBeCloseTo(1200, 9);
    const skew = planCornerMoved(square, 2, [25, 12]);
    expect(planEdgeLengthSet(skew, 0, 30)[2]?.from).toEqual([25, 12]);
  });
  it("of nothing, or of an edge that has no length, changes nothing", () => {
    expect(planEdgeLengthSet(square, 0, 0)).toBe(square);
    expect(planEdgeLengthSet(square, 9, 5)).toBe(square);
    const point0 = planFromOutline([
      [0, 0],
      [0, 0],
      [5, 5],
    ]);
    expect(planEdgeLengthSet(point0, 0, 4)).toBe(point0);
  });
});

describe("a corner added", () => {
  it("changes neither area nor perimeter, whatever the edge", () => {
    fc.assert(
      fc.property(planAndEdge, ([edges, edge]) => {
        const added = planCornerAdded(edges, edge);
        expect(added).toHaveLength(edges.length + 1);
        expect(Math.abs(planArea(added) - planArea(edges))).toBeLessThan(1e-6 * Math.max(1, planArea(edges)));
        expect(Math.abs(planPerimeter(added) / planPerimeter(edges) - 1)).toBeLessThan(1e-3);
        expect(allWindowsLieOnTheirEdges(added)).toBe(true);
      }),
    );
  });
  it("and taken out again leaves straight edges, arcs and Béziers as they were", () => {
    for (const shape of [STRAIGHT, arc(3), arc(-3), arc(14), { kind: "cubic", control1: [4, -6], control2: [19, 4] } as const]) {
      const edges = planEdgeShaped(square, 0, shape);
      const back = planCornerRemoved(planCornerAdded(edges, 0), 1);
      expect(back).toHaveLength(4);
      expect(planArea(back)).toBeCloseTo(planArea(edges), 8);
      expect(back[0]?.shape.kind).toBe(edges[0]?.shape.kind);
    }
  });
  it("divides the windows of its wall, and a window under the corner in two", () => {
    const walled = planEdgeBordered(square, 0, wall({ fromFt: 2, toFt: 5, sillFt: 3 }, { fromFt: 8, toFt: 12, sillFt: 2 }, { fromFt: 15, toFt: 18, sillFt: 3 }));
    const added = planCornerAdded(walled, 0);
    expect(windowsOf(added, 0)).toEqual([
      { fromFt: 2, toFt: 5, sillFt: 3 },
      { fromFt: 8, toFt: 10, sillFt: 2 },
    ]);
    expect(windowsOf(added, 1)).toEqual([
      { fromFt: 0, toFt: 2, sillFt: 2 },
      { fromFt: 5, toFt: 8, sillFt: 3 },
    ]);
  });
});

describe("a corner taken out", () => {
  it("leaves one edge that borders what the edge before did", () => {
    const left = planCornerRemoved(planEdgeBordered(square, 0, { what: "walk" }), 1);
    expect(left.map(({ from }) => from)).toEqual([
      [0, 0],
      [20, 10],
      [0, 10],
    ]);
    expect(left[0]?.border).toEqual({ what: "walk" });
  });
  it("works at the first corner too, where the edge before is the last", () => {
    const left = planCornerRemoved(planEdgeBordered(square, 3, { what: "lawn" }), 0);
    expect(left).toHaveLength(3);
    expect(left[2]).toEqual({ from: [0, 10], shape: STRAIGHT, border: { what: "lawn" } });
  });
  it("is refused where fewer than three would be left, unless a curve holds the ground", () => {
    const triangle = square.slice(0, 3);
    expect(planCornerRemoved(triangle, 1)).toBe(triangle);
    const segment = planCornerRemoved(planEdgeShaped(triangle, 2, arc(4)), 1);
    expect(segment).toHaveLength(2);
    expect(planFault(segment)).toBeNull();
  });
  it("between a curve and a straight edge leaves the likeness of the longer, not a wild bow", () => {
    const bowed = planEdgeShaped(planCornerMoved(square, 2, [21, 4]), 0, arc(3));
    expect(planCornerRemoved(bowed, 1)[0]?.shape).toEqual(arc((3 * Math.hypot(21, 4)) / 20));
    expect(planCornerRemoved(planEdgeShaped(bowed, 1, arc(-0.5)), 1)[0]?.shape.kind).toBe("arc");
    expect(planCornerRemoved(planEdgeShaped(square, 1, arc(1)), 1)[0]?.shape).toEqual(STRAIGHT);
  });
  it("joins the windows of both walls at their places", () => {
    const walls = planEdgeBordered(planEdgeBordered(planCornerAdded(square, 0), 0, wall({ fromFt: 2, toFt: 4, sillFt: 3 })), 1, wall({ fromFt: 1, toFt: 3, sillFt: 3 }));
    expect(windowsOf(planCornerRemoved(walls, 1), 0)).toEqual([
      { fromFt: 2, toFt: 4, sillFt: 3 },
      { fromFt: 11, toFt: 13, sillFt: 3 },
    ]);
  });
});

describe("curved edges", () => {
  it("have the radius that was typed", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 50, noNaN: true }), fc.double({ min: 1, max: 20, noNaN: true }), (chord, times) => {
        const radius = (chord / 2) * times;
        const ordinate = ordinateOfRadius(chord, radius);
        const made = ordinate === null ? null : curveArc({ from: [0, 0], to: [chord, 0], shape: arc(ordinate) });
        expect(made?.radiusFt).toBeCloseTo(radius, 4);
      }),
    );
    expect(ordinateOfRadius(10, 4)).toBeNull();
    expect(ordinateOfRadius(10, 5)).toBeCloseTo(5);
  });
  it("run through the place that their middle is drawn to", () => {
    const curve = { from: [0, 0], to: [10, 0] } as const;
    expect(ordinateToward(curve, [5, -3])).toBe(3);
    expect(ordinateToward(curve, [7, 2])).toBe(-2);
    expect(curvePointAt({ ...curve, shape: arc(3) }, 0.5)[1]).toBeCloseTo(-3);
  });
  it("through three places run through all three", () => {
    fc.assert(
      fc.property(fc.double({ min: -15, max: 15, noNaN: true }), fc.double({ min: 0.1, max: 0.9, noNaN: true }), (ordinate, share) => {
        fc.pre(Math.abs(ordinate) > 0.05);
        const [from, to]: [Point, Point] = [
          [2, 1],
          [14, 7],
        ];
        const through = arcThrough(from, to, curvePointAt({ from, to, shape: arc(ordinate) }, share));
        expect(through.kind === "arc" ? through.ordinateFt : 0).toBeCloseTo(ordinate, 5);
      }),
    );
    expect(arcThrough([0, 0], [10, 0], [5, 0])).toEqual(STRAIGHT);
  });
  it("become Béziers that follow the arc within a fiftieth of a foot", () => {
    const curve = { from: [0, 0] as Point, to: [10, 0] as Point, shape: arc(3) };
    const cubic = { ...curve, shape: cubicOver(curve, 1) };
    const made = curveArc(curve);
    for (const share of [0.1, 0.25, 0.5, 0.8]) {
      const [x, y] = curvePointAt(cubic, share);
      expect(Math.abs(Math.hypot(x - (made?.center[0] ?? 0), y - (made?.center[1] ?? 0)) - (made?.radiusFt ?? 0))).toBeLessThan(0.02);
    }
  });
  it("stand outward whichever way round the bed is drawn", () => {
    const clockwise = [...square].reverse();
    expect([planTurnsLeft(square), planTurnsLeft(clockwise)]).toEqual([true, false]);
    for (const edges of [square, clockwise]) {
      const [curve] = planCurves(edges);
      if (curve) expect(planArea(planEdgeShaped(edges, 0, cubicOver(curve, outwardSign(edges))))).toBeGreaterThan(planArea(edges));
      expect(planArea(planEdgeShaped(edges, 0, arc(2 * outwardSign(edges))))).toBeGreaterThan(planArea(edges));
    }
  });
});

describe("windows and places along an edge", () => {
  it("are kept in order, and only on a house wall", () => {
    const walled = planEdgeBordered(square, 0, wall());
    const two = [
      { fromFt: 9, toFt: 12, sillFt: 3 },
      { fromFt: 2, toFt: 5, sillFt: 3 },
    ];
    expect(windowsOf(planWindowsSet(walled, 0, two), 0).map(({ fromFt }) => fromFt)).toEqual([2, 9]);
    expect(planWindowsSet(square, 0, two)).toBe(square);
  });
  it("find room for one more window in the widest free stretch", () => {
    expect(windowRoom([], 20, 4)).toEqual([8, 12]);
    expect(windowRoom([{ fromFt: 8, toFt: 12, sillFt: 3 }], 21, 4)).toEqual([14.5, 18.5]);
    expect(windowRoom([{ fromFt: 0, toFt: 20, sillFt: 3 }], 20, 4)).toBeNull();
  });
  it("a stretch of a curve is as long as asked, on any shape", () => {
    for (const shape of [STRAIGHT, arc(3), arc(-8), { kind: "cubic", control1: [0, -9], control2: [3, 6] } as const]) {
      const curve = { from: [0, 0] as Point, to: [10, 0] as Point, shape };
      const points = curveStretch(curve, 2, 6.5);
      const length = points.slice(1).reduce((sum, p, i) => sum + Math.hypot(p[0] - (points[i]?.[0] ?? 0), p[1] - (points[i]?.[1] ?? 0)), 0);
      expect(length).toBeCloseTo(4.5, 1);
      const whole = curveStretch(curve, 0, curveLength(curve) + 5);
      expect(whole.at(-1)?.[0]).toBeCloseTo(10, 6);
      expect(Math.hypot(...(whole[0] ?? [1]))).toBeCloseTo(0, 9);
    }
  });
});

describe("outlines to begin with", () => {
  it("are sound beds that fill their length and width from 0, 0", () => {
    fc.assert(
      fc.property(fc.constantFrom(...PLAN_STARTS), fc.double({ min: 2, max: 200, noNaN: true }), fc.double({ min: 2, max: 80, noNaN: true }), (start, lengthFt, widthFt) => {
        const edges = planStarted(start, lengthFt, widthFt);
        expect(planFault(edges)).toBeNull();
        expect(planTurnsLeft(edges)).toBe(true);
        const points = planCurves(edges).flatMap((curve) => curveStretch(curve, 0, curveLength(curve)));
        const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
        expect(Math.min(...xs) / lengthFt).toBeCloseTo(0, 2);
        expect(Math.max(...xs) / lengthFt).toBeCloseTo(1, 2);
        expect(Math.min(...ys) / widthFt).toBeCloseTo(0, 1);
        expect(Math.max(...ys) / widthFt).toBeCloseTo(1, 1);
      }),
      { numRuns: 40 },
    );
  });
  it("have bounds that take in their curves", () => {
    const bounds = planBounds(planEdgeShaped(square, 1, arc(2.5)));
    expect(bounds?.low).toEqual([0, 0]);
    expect(Math.abs((bounds?.high[0] ?? 0) - 22.5)).toBeLessThanOrEqual(0.004);
    expect(planBounds([])).toBeNull();
  });
  it("move as a whole without changing", () => {
    const kidney = planStarted("kidney", 24, 10);
    expect(planArea(planShifted(kidney, [100, -40]))).toBeCloseTo(planArea(kidney), 6);
  });
});
