import { describe, expect, it } from "vitest";
import type { Lot } from "../nursery/lot";
import { placeText, walkStops } from "./walking-order";

type Placed = Pick<Lot, "owner" | "place">;
const own = (block: string, row: string, bay = "", step: number | null = null): Placed => ({ owner: { kind: "own" }, place: { block, row, bay, step } });
const supplier = (supplierName: string): Placed => ({ owner: { kind: "supplier", supplierId: supplierName, supplierName }, place: { block: "", row: "", bay: "", step: null } });

describe("a walk through the yard", () => {
  it("goes as the places were set by hand, then by block, row and bay, then to the suppliers", () => {
    const lots = [supplier("Zinnia Growers"), own("B", "10"), own("B", "2"), own("C", "1", "", 1), own("A", "1", "", 2), supplier("Aster Growers")];
    expect(walkStops(lots, (lot) => lot).map(({ place }) => place)).toEqual([
      "Block C, row 1",
      "Block A, row 1",
      "Block B, row 2",
      "Block B, row 10",
      "Aster Growers",
      "Zinnia Growers",
    ]);
  });

  it("stops once at each place and loses nothing", () => {
    const items = [own("A", "1"), own("A", "2"), own("A", "1")];
    const stops = walkStops(items, (lot) => lot);
    expect(stops.map((stop) => stop.items.length)).toEqual([2, 1]);
  });

  it("calls a place without a name the yard", () => {
    expect(placeText(own("", ""))).toBe("Yard");
    expect(placeText(own("A", "3", "12"))).toBe("Block A, row 3, bay 12");
  });
});
