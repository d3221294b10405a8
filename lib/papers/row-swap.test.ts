import { describe, expect, it } from "vitest";
import type { Bed, BedRow } from "../ground/bed";
import { EMPTY_DRAWING, type PlacedPlant } from "../ground/bed-drawing";
import { plantLeftOut, plantsExchanged, rowExchanged } from "./row-swap";

const small = { id: "small", name: "Testa minor", spreadFt: [2, 3] } as const;
const row = (quantity: BedRow["quantity"], spacingFt: number | null = 4): BedRow => ({
  id: "a",
  taxonId: "big",
  taxonName: "Testa major",
  quantity,
  spacingFt,
  size: "#3",
  remarks: "by the door",
  existing: false,
});
const plants: PlacedPlant[] = [1, 2, 3].map((i) => ({ id: `p${i}`, rowId: "a", at: [i * 3, 4], group: 1 }));
const bed = (own: BedRow): Bed => ({
  name: "Bed",
  size: { by: "rectangle", lengthFt: 20, widthFt: 8 },
  site: { light: "sun", moisture: "average", ph: null, salt: "none", deer: "none", faces: "" },
  notes: "",
  rows: [own],
  drawing: { ...EMPTY_DRAWING, plants },
});

describe("a smaller plant in place of another", () => {
  it("takes the row with its places; a spacing that was the larger plant's goes with it", () => {
    const changed = rowExchanged(bed(row({ by: "count", count: 3 })), "a", small);
    expect(changed.rows[0]).toMatchObject({ taxonId: "small", taxonName: "Testa minor", spacingFt: null, size: "#3", quantity: { by: "count", count: 3 } });
    expect(changed.drawing?.plants).toEqual(plants);
    expect(rowExchanged(bed(row({ by: "count", count: 3 }, 2)), "a", small).rows[0]?.spacingFt).toBe(2);
  });
  it("splits the row when it is for some of its plants, and keeps the sum", () => {
    const changed = plantsExchanged(bed(row({ by: "count", count: 5 })), "a", new Set(["p2"]), 5, small, "new");
    expect(changed.rows.map(({ id, taxonId, quantity }) => [id, taxonId, quantity])).toEqual([
      ["a", "big", { by: "count", count: 4 }],
      ["new", "small", { by: "count", count: 1 }],
    ]);
    expect(changed.drawing?.plants.map(({ id, rowId }) => [id, rowId])).toEqual([
      ["p1", "a"],
      ["p2", "new"],
      ["p3", "a"],
    ]);
  });
  it("leaves a row that is counted from the drawing to the drawing, and makes no empty row", () => {
    expect(plantsExchanged(bed(row({ by: "drawing" })), "a", new Set(["p1"]), 3, small, "new").rows[0]?.quantity).toEqual({ by: "drawing" });
    expect(plantsExchanged(bed(row({ by: "drawing" })), "a", new Set(["p1", "p2", "p3"]), 3, small, "new").rows).toHaveLength(1);
    const same = bed(row({ by: "drawing" }));
    expect(plantsExchanged(same, "a", new Set(["gone"]), 3, small, "new")).toBe(same);
  });
});

describe("a plant left out", () => {
  it("leaves drawing and list alike", () => {
    const changed = plantLeftOut(bed(row({ by: "count", count: 3 })), "p2", 3);
    expect(changed.drawing?.plants.map(({ id }) => id)).toEqual(["p1", "p3"]);
    expect(changed.rows[0]?.quantity).toEqual({ by: "count", count: 2 });
    expect(plantLeftOut(bed(row({ by: "area", areaSqFt: 30 })), "p2", 3).rows[0]?.quantity).toEqual({ by: "count", count: 2 });
  });
});
