import { expect, it } from "vitest";
import { ftOfPx, pxOfFt, viewOfAll, viewZoomed } from "./sheet-view";

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
