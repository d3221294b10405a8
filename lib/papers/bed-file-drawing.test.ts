import { describe, expect, it } from "vitest";
import type { Bed } from "../ground/bed";
import { EMPTY_DRAWING, type PlacedPlant } from "../ground/bed-drawing";
import { STRAIGHT } from "../ground/curve";
import { DEFAULT_TARGETS } from "../season/interest";
import { bedFileOf, bedFileRead, bedOfFile } from "./bed-file";

const plant = (id: string, rowId: string, x: number, group: number): PlacedPlant => ({ id, rowId, at: [x, 3.25], group });
const row = { taxonId: "t", taxonName: "Testa prima", spacingFt: null, size: "#3", remarks: "", existing: false };
const BED: Bed = {
  name: "Drawn",
  size: {
    by: "drawing",
    edges: [
      { from: [0, 0], shape: { kind: "cubic", control1: [6, -2], control2: [14, 2] }, border: { what: "walk" } },
      { from: [20, 0], shape: { kind: "arc", ordinateFt: 1.5 }, border: { what: "street corner", withinFt: 25, maxHeightFt: 2.5 } },
      { from: [20, 10], shape: STRAIGHT, border: { what: "house wall", windows: [{ fromFt: 2, toFt: 6, sillFt: 3 }] } },
      { from: [0, 10], shape: STRAIGHT, border: { what: "retaining wall", heightFt: 3, bedAt: "top", setbackFt: 2 } },
    ],
  },
  site: { light: "sun", moisture: "average", ph: null, salt: "none", deer: "none", faces: "" },
  notes: "",
  rows: [
    { ...row, id: "p1", quantity: { by: "drawing" } },
    { ...row, id: "p2", quantity: { by: "count", count: 5 } },
    { ...row, id: "p3", quantity: { by: "area", areaSqFt: 30 } },
    { ...row, id: "p4", quantity: { by: "drawing" } },
  ],
  drawing: {
    ...EMPTY_DRAWING,
    plants: [plant("d1-1", "p1", 4, 1), plant("d1-2", "p1", 6, 1), plant("d2-1", "p2", 9.5, 7), plant("d3-1", "p3", 12, 8)],
    things: [
      {
        what: "buried line",
        path: [
          [1, 0],
          [1, 10],
        ],
        clearFt: 5,
      },
      {
        what: "overhead line",
        path: [
          [0, 5],
          [20, 5],
        ],
        heightFt: 25,
        clearFt: 10,
      },
      { what: "spout", at: [19, 9], radiusFt: 0.3, clearFt: 1.5 },
    ],
    standpoint: { kind: "all round" },
  },
};

describe("a bed file with a drawing", () => {
  it("gives the same bed back: edges, borders, things, standpoint, places and groups", () => {
    const text = JSON.stringify(bedFileOf(BED, { zip: "05401" }, DEFAULT_TARGETS, () => "Testa prima"));
    const read = bedFileRead(text);
    if (read.kind !== "file") throw new Error(`${read.field}: ${read.message}`);
    const back = bedOfFile(read.file, (name) => ({ id: "t", name }));
    if (back.kind !== "bed") throw new Error(back.message);
    expect(back.bed).toEqual(BED);
  });
  it("says where a drawn outline crosses itself", () => {
    const edges = [{ from: [0, 0] }, { from: [10, 10] }, { from: [10, 0] }, { from: [0, 10] }];
    const read = bedFileRead(JSON.stringify({ version: 1, place: { zip: "05401" }, size: { edges } }));
    expect(read).toMatchObject({ kind: "fault", field: expect.stringContaining("size") });
  });
});
