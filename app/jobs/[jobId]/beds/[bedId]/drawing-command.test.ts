import { describe, expect, it } from "vitest";
import { type Bed, EMPTY_BED } from "@/lib/ground/bed";
import { placedByRow } from "@/lib/ground/bed-drawing";
import { bedChanged, draftNext, draftOf } from "./bed-draft";

const row = (id: string, count: number): Bed["rows"][number] => ({
  id,
  taxonId: id,
  taxonName: id,
  quantity: { by: "count", count },
  spacingFt: 2,
  size: "#3",
  remarks: "",
  existing: false,
});
const bed: Bed = { ...EMPTY_BED, rows: [row("a", 2), row("b", 1)] };
const plant = (id: string, rowId: string, x = 0, y = 0) => ({ id, rowId, at: [x, y] as const, group: 1 });
const three = bedChanged(bed, { type: "place", plants: [plant("1", "a"), plant("2", "a", 3, 0), plant("3", "b", 6, 0)] });

describe("a bed's drawing", () => {
  it("keeps the list's count while no more stand on it, and gives the count once more do", () => {
    expect(three.rows.map((r) => r.quantity.by)).toEqual(["count", "count"]);
    const more = bedChanged(three, { type: "place", plants: [plant("4", "a", 9, 0)] });
    expect(more.rows.map((r) => r.quantity.by)).toEqual(["drawing", "count"]);
    expect(placedByRow(more.drawing ?? null).get("a")).toBe(3);
  });
  it("loses a plant and keeps its line on the list", () => {
    const fewer = bedChanged(three, { type: "unplace", ids: new Set(["1"]) });
    expect(fewer.drawing?.plants.map((p) => p.id)).toEqual(["2", "3"]);
    expect(fewer.rows).toHaveLength(2);
  });
  it("loses the plants of a line that is taken out, and has them again after undo", () => {
    const draft = draftNext(draftOf(three), { type: "remove", rowId: "a" });
    expect(draft.present.drawing?.plants.map((p) => p.id)).toEqual(["3"]);
    expect(draftNext(draft, { type: "undo" }).present).toBe(three);
  });
  it("moves plants together or each to its place, and is the same bed where nothing moves", () => {
    expect(bedChanged(three, { type: "shift", ids: new Set(["2", "3"]), by: [1, -0.5] }).drawing?.plants.map((p) => p.at)).toEqual([
      [0, 0],
      [4, -0.5],
      [7, -0.5],
    ]);
    expect(bedChanged(three, { type: "put", places: new Map([["1", [5, 5]]]) }).drawing?.plants[0]?.at).toEqual([5, 5]);
    expect(bedChanged(three, { type: "shift", ids: new Set(["9"]), by: [1, 1] })).toBe(three);
    expect(bedChanged(three, { type: "shift", ids: new Set(["1"]), by: [0, 0] })).toBe(three);
  });
  it("makes one group of several plants, and single ones of a group", () => {
    const together = bedChanged(three, { type: "regroup", ids: new Set(["1", "2"]), together: true }).drawing?.plants.map((p) => p.group) ?? [];
    expect(together[0]).toBe(together[1]);
    expect(together[0]).not.toBe(together[2]);
    const apart = bedChanged(three, { type: "regroup", ids: new Set(["1", "2", "3"]), together: false }).drawing?.plants.map((p) => p.group);
    expect(new Set(apart).size).toBe(3);
  });
});
