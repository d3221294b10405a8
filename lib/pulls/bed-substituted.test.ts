import { describe, expect, it } from "vitest";
import { type Bed, EMPTY_BED } from "../ground/bed";
import { EMPTY_DRAWING } from "../ground/bed-drawing";
import { bedSubstituted, type Substitution } from "./bed-substituted";

const row = {
  id: "a",
  taxonId: "x",
  taxonName: "Hydrangea paniculata 'Jane'",
  quantity: { by: "count", count: 5 },
  spacingFt: 4,
  size: "#3",
  remarks: "",
  existing: false,
} as const;
const bed: Bed = { ...EMPTY_BED, rows: [row, { ...row, id: "z" }] };
const swap: Substitution = { rowId: "a", quantity: 2, present: 5, taxonId: "y", taxonName: "Hydrangea arborescens", size: "#3", newRowId: "n" };

describe("a substitution", () => {
  it("puts the other plant in a line of its own after what is left of the old one", () => {
    const after = bedSubstituted(bed, swap);
    expect(after?.rows.map((r) => [r.id, r.quantity])).toEqual([
      ["a", { by: "count", count: 3 }],
      ["n", { by: "count", count: 2 }],
      ["z", { by: "count", count: 5 }],
    ]);
    expect(after?.rows[1]).toMatchObject({ taxonId: "y", spacingFt: 4, remarks: "instead of Hydrangea paniculata 'Jane'" });
  });
  it("takes the whole line when all give way, and never more than there are", () => {
    expect(bedSubstituted(bed, { ...swap, quantity: 9 })?.rows.map((r) => [r.id, r.quantity])).toEqual([
      ["n", { by: "count", count: 5 }],
      ["z", { by: "count", count: 5 }],
    ]);
    expect(bedSubstituted(bed, { ...swap, rowId: "gone" })).toBeNull();
    expect(bedSubstituted(bed, { ...swap, quantity: 0 })).toBeNull();
  });
  it("stands on the drawing where those stood that gave way", () => {
    const plants = ["1", "2", "3"].map((id, i) => ({ id, rowId: "a", at: [i, 0] as const, group: 1 }));
    const drawn: Bed = { ...bed, rows: [{ ...row, quantity: { by: "drawing" } }], drawing: { ...EMPTY_DRAWING, plants } };
    const after = bedSubstituted(drawn, { ...swap, present: 3 });
    expect(after?.drawing?.plants.map((p) => p.rowId)).toEqual(["a", "n", "n"]);
    expect(after?.rows.map((r) => r.quantity.by)).toEqual(["drawing", "drawing"]);
  });
});
