import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { OUTLINE_MAX_CORNERS, type Outline, outlineArea, outlineCrossing, outlineFault, outlinePerimeter, type Point, pointInOutline, rectangleOutline } from "./outline";

const kidney: Outline = [
  [0, 0],
  [10, 0],
  [10, 8],
  [5, 3],
  [0, 8],
];
const bowTie: Outline = [
  [0, 0],
  [10, 10],
  [10, 0],
  [0, 10],
];

/** Corners at rising angles round a center: never crosses itself. */
const star = fc
  .array(fc.record({ step: fc.double({ min: 0.4, max: 1, noNaN: true }), radius: fc.double({ min: 1, max: 40, noNaN: true }) }), { minLength: 5, maxLength: 24 })
  .map((spokes): Outline => {
    const whole = spokes.reduce((sum, { step }) => sum + step, 0);
    let angle = 0;
    return spokes.map(({ step, radius }): Point => {
      angle += (step / whole) * 2 * Math.PI;
      return [radius * Math.cos(angle), radius * Math.sin(angle)];
    });
  });

describe("area and perimeter", () => {
  it("takes length times width for a rectangle", () => {
    expect(outlineArea(rectangleOutline(26, 12))).toBe(312);
    expect(outlinePerimeter(rectangleOutline(26, 12))).toBe(76);
  });

  it("takes the notch out of a hollow outline", () => {
    expect(outlineArea(kidney)).toBeCloseTo(80 - 25, 12);
  });

  it("comes to the area of the circle for an outline of many corners", () => {
    const corners = Array.from({ length: 500 }, (_, i): Point => [5 * Math.cos((i * Math.PI) / 250), 5 * Math.sin((i * Math.PI) / 250)]);
    expect(outlineArea(corners)).toBeCloseTo(25 * Math.PI, 2);
  });

  it("is nothing for no corners", () => {
    expect(outlineArea([])).toBe(0);
    expect(outlinePerimeter([])).toBe(0);
  });

  it("stays the same when the outline is moved, turned, mirrored, reversed or begun at another corner", () => {
    fc.assert(
      fc.property(star, fc.double({ min: -500, max: 500, noNaN: true }), fc.double({ min: 0, max: 7, noNaN: true }), fc.nat(20), (outline, shift, angle, start) => {
        const area = outlineArea(outline);
        const turned = outline.map(([x, y]): Point => [x * Math.cos(angle) - y * Math.sin(angle) + shift, x * Math.sin(angle) + y * Math.cos(angle) - shift]);
        const begun = [...outline.slice(start % outline.length), ...outline.slice(0, start % outline.length)];
        for (const same of [turned, [...outline].reverse(), begun, outline.map(([x, y]): Point => [-x, y])]) {
          expect(outlineArea(same)).toBeCloseTo(area, 6);
          expect(outlinePerimeter(same)).toBeCloseTo(outlinePerimeter(outline), 6);
        }
      }),
    );
  });
});

describe("faults of an outline", () => {
  it("finds none in a sound outline, hollow or closed by a repeated first corner", () => {
    expect(outlineFault(kidney)).toBeNull();
    expect(outlineFault([...kidney, [0, 0]])).toBeNull();
    expect(outlineFault(rectangleOutline(3, 4))).toBeNull();
    expect(
      outlineFault([
        [0, 0],
        [4, 0],
        [2, 3],
      ]),
    ).toBeNull();
  });

  it("allows a corner in the middle of a straight side", () => {
    expect(
      outlineFault([
        [0, 0],
        [5, 0],
        [10, 0],
        [10, 4],
        [0, 4],
      ]),
    ).toBeNull();
  });

  it("names the place where sides cross", () => {
    const fault = outlineFault(bowTie);
    expect(fault?.kind).toBe("crossing");
    expect(fault?.place?.[0]).toBeCloseTo(5, 9);
    expect(fault?.place?.[1]).toBeCloseTo(5, 9);
    expect(fault?.words).toContain("5 ft, 5 ft (sides 1 and 3)");
  });

  it("finds a corner that lies on another side, a shared corner and a side run over twice", () => {
    expect(
      outlineFault([
        [0, 0],
        [10, 0],
        [10, 10],
        [5, 0],
        [0, 10],
      ])?.kind,
    ).toBe("touching");
    expect(
      outlineFault([
        [0, 0],
        [4, 4],
        [8, 0],
        [8, 8],
        [4, 4],
        [0, 8],
      ])?.kind,
    ).toBe("touching");
    expect(
      outlineFault([
        [0, 0],
        [10, 0],
        [10, 5],
        [4, 5],
        [4, 0],
        [6, 0],
        [6, 9],
        [0, 9],
      ]),
    ).not.toBeNull();
  });

  it("finds a side that folds straight back", () => {
    expect(
      outlineFault([
        [0, 0],
        [10, 0],
        [4, 0],
        [4, 6],
      ])?.kind,
    ).toBe("folding back");
    expect(
      outlineFault([
        [4, 0],
        [4, 6],
        [0, 0],
        [10, 0],
      ])?.kind,
    ).toBe("folding back");
  });

  it("finds corners repeated, missing, in one line, without number or too many", () => {
    expect(
      outlineFault([
        [0, 0],
        [5, 0],
        [5, 0],
        [5, 5],
      ])?.kind,
    ).toBe("repeated corner");
    expect(
      outlineFault([
        [0, 0],
        [5, 0],
      ])?.kind,
    ).toBe("too few corners");
    expect(
      outlineFault([
        [0, 0],
        [5, 0],
        [0, 0],
      ])?.kind,
    ).toBe("too few corners");
    expect(outlineFault([])?.kind).toBe("too few corners");
    expect(
      outlineFault([
        [0, 0],
        [5, 5],
        [10, 10],
      ])?.kind,
    ).toBe("folding back");
    expect(
      outlineFault([
        [0, 0],
        [Number.NaN, 0],
        [5, 5],
      ])?.kind,
    ).toBe("not a number");
    expect(outlineFault(Array.from({ length: OUTLINE_MAX_CORNERS + 1 }, (_, i): Point => [i, i * i]))?.kind).toBe("too many corners");
  });

  it("finds none in any star-shaped outline", () => {
    fc.assert(
      fc.property(star, (outline) => outlineFault(outline) === null),
      { numRuns: 200 },
    );
  });

  it("finds the same kind of crossing wherever the outline starts and whichever way it runs", () => {
    for (let start = 0; start < 4; start++) {
      const begun = [...bowTie.slice(start), ...bowTie.slice(0, start)];
      expect(outlineCrossing(begun)?.kind).toBe("crossing");
      expect(outlineCrossing([...begun].reverse())?.kind).toBe("crossing");
    }
  });
});

describe("a point in an outline", () => {
  it("is in, on the edge, or out", () => {
    expect(pointInOutline([5, 1], kidney)).toBe(true);
    expect(pointInOutline([5, 5], kidney)).toBe(false);
    expect(pointInOutline([5, 3], kidney)).toBe(true);
    expect(pointInOutline([10, 4], kidney)).toBe(true);
    expect(pointInOutline([10.01, 4], kidney)).toBe(false);
  });

  it("is in or out by the same corner heights (rays through corners)", () => {
    const diamond: Outline = [
      [0, 5],
      [5, 0],
      [10, 5],
      [5, 10],
    ];
    expect(pointInOutline([5, 5], diamond)).toBe(true);
    expect(pointInOutline([-1, 5], diamond)).toBe(false);
    expect(pointInOutline([11, 5], diamond)).toBe(false);
    expect(pointInOutline([1, 0], diamond)).toBe(false);
  });

  it("agrees with the area when counted on a fine grid", () => {
    const step = 0.1;
    let cells = 0;
    for (let x = step / 2; x < 10; x += step) for (let y = step / 2; y < 8; y += step) if (pointInOutline([x, y], kidney)) cells++;
    expect(Math.abs(cells * step * step - outlineArea(kidney))).toBeLessThan(1);
  });
});
