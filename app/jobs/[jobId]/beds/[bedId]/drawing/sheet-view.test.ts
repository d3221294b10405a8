import { expect, it } from "vitest";
import { ANCHOR_REACH_PX, ftOfPx, outlineElsewhere, pxOfFt, viewAnchor, viewOfAll, viewZoomed } from "./sheet-view";

const view = { pxPerFt: 12, originPx: [100, 300] } as const;

it("goes from feet to pixels and back, with y up the drawing", () => {
  expect(pxOfFt(view, [1, 2])).toEqual([112, 276]);
  expect(ftOfPx(view, [112, 276])).toEqual([1, 2]);
});
it("shows all of a bed in the middle, within the margin", () => {
  const all = viewOfAll(
    [
      [0, 0],
      [40, 10],
    ],
    800,
    400,
    20,
  );
  expect(pxOfFt(all, [20, 5])).toEqual([400, 200]);
  expect(pxOfFt(all, [0, 0])[0]).toBeCloseTo(20);
});
it("zooms about the pixel pointed at", () => {
  const before = ftOfPx(view, [250, 90]);
  const after = ftOfPx(viewZoomed(view, [250, 90], 1.7), [250, 90]);
  expect(after[0]).toBeCloseTo(before[0]);
  expect(after[1]).toBeCloseTo(before[1]);
});
it("keeps its anchor while it is pushed about near it, and takes a new one when pushed far or zoomed", () => {
  const first = viewAnchor(view, null);
  expect(first).toEqual({ anchor: view, pushPx: [0, 0] });
  const near = viewAnchor({ pxPerFt: 12, originPx: [140.4, 280] }, first.anchor);
  expect(near.anchor).toBe(view);
  expect(near.pushPx).toEqual([40, -20]);
  const far = { pxPerFt: 12, originPx: [100 + ANCHOR_REACH_PX + 1, 300] } as const;
  expect(viewAnchor(far, near.anchor)).toEqual({ anchor: far, pushPx: [0, 0] });
  const zoomed = { ...view, pxPerFt: 13 };
  expect(viewAnchor(zoomed, view).anchor).toBe(zoomed);
});
it("shows another drawing whole again, and leaves the view alone where a corner was moved", () => {
  const box = (x: number, length: number, depth: number) =>
    [
      [x, 0],
      [x + length, 0],
      [x + length, depth],
      [x, depth],
    ] as const;
  expect(outlineElsewhere(box(0, 24, 8), box(0, 26, 8))).toBe(false);
  expect(outlineElsewhere(box(0, 24, 8), box(0, 300, 8))).toBe(true);
  expect(outlineElsewhere(box(0, 300, 8), box(0, 24, 8))).toBe(true);
  expect(outlineElsewhere(box(0, 24, 8), box(100, 24, 8))).toBe(true);
});
