import { describe, expect, it } from "vitest";
import { testTaxon } from "../../tests/fixtures/test-taxon";
import type { Bed, BedRow } from "../ground/bed";
import { EMPTY_DRAWING, type PlacedPlant, placedByRow } from "../ground/bed-drawing";
import { layoutFromSeed } from "../ground/layout";
import { bedSetOut, layoutPlants, layoutWords, type SetOutRows, STANDPOINTS, setOutAsk, standpointName, standpointOf } from "./set-out";

const taxon = testTaxon({ height: [3, 3], spread: [3, 3] });
const row = (id: string, over: Partial<BedRow> = {}): BedRow => ({
  id,
  taxonId: taxon.id,
  taxonName: taxon.name,
  quantity: { by: "count", count: 5 },
  spacingFt: 3,
  size: "#3",
  remarks: "",
  existing: false,
  ...over,
});
const plant = (id: string, rowId: string, x: number): PlacedPlant => ({ id, rowId, at: [x, 4], group: 4 });
function bedOf(rows: readonly BedRow[], plants: readonly PlacedPlant[] = []): { bed: Bed; view: SetOutRows } {
  const bed: Bed = {
    name: "Bed",
    size: { by: "rectangle", lengthFt: 30, widthFt: 10 },
    site: { light: "sun", moisture: "average", ph: null, salt: "none", deer: "none", faces: "" },
    notes: "",
    rows,
    drawing: { ...EMPTY_DRAWING, plants },
  };
  const counts = placedByRow(bed.drawing ?? null);
  const quantity = (own: BedRow) => (own.quantity.by === "count" ? own.quantity.count : own.quantity.by === "drawing" ? (counts.get(own.id) ?? 0) : 6);
  return { bed, view: { rows: rows.map((own, i) => ({ row: own, letter: "ABC".charAt(i), quantity: quantity(own), spacingFt: own.spacingFt, placed: { taxon } })) } };
}
const front = standpointOf("front");

describe("the standpoint", () => {
  it("is named back as it was chosen", () => {
    for (const name of STANDPOINTS) expect(standpointName(standpointOf(name))).toBe(name);
    expect(standpointName({ kind: "one side", lookAngle: Math.PI / 2 + 0.3 + 2 * Math.PI })).toBe("front");
  });
});

describe("a list to be set out", () => {
  it("asks for what is not placed yet when what is placed is kept, and for everything else anew", () => {
    const { bed, view } = bedOf([row("a"), row("b", { quantity: { by: "area", areaSqFt: 40 } })], [plant("1", "a", 3), plant("2", "a", 9)]);
    const kept = setOutAsk(bed, view, front, true);
    expect(kept.input.rows.map(({ key, quantity }) => [key, quantity])).toEqual([
      ["a", 3],
      ["b", 6],
    ]);
    expect(kept.input.fixed).toHaveLength(2);
    const anew = setOutAsk(bed, view, front, false);
    expect(anew.input.rows.map(({ quantity }) => quantity)).toEqual([5, 6]);
    expect(anew.kept).toEqual([]);
  });
  it("leaves plants that the dataset no longer has where they stand, and says that they are not set out", () => {
    const { bed, view } = bedOf([row("a"), row("b")], [plant("1", "a", 3), plant("2", "b", 9)]);
    const gone = { rows: view.rows.map((own) => (own.row.id === "b" ? { ...own, placed: null } : own)) };
    const ask = setOutAsk(bed, gone, front, false);
    expect(ask.kept.map(({ id }) => id)).toEqual(["2"]);
    expect(ask.left.map(({ letter, why }) => `${letter} ${why}`)).toEqual(["B is no longer in the dataset, so its size is not known."]);
  });
  it("leaves standing plants where they stand, and those nobody has placed to the person on site", () => {
    const { bed, view } = bedOf([row("a", { existing: true, quantity: { by: "count", count: 2 } }), row("b")], [plant("1", "a", 3)]);
    const ask = setOutAsk(bed, view, front, false);
    expect(ask.kept.map(({ id }) => id)).toEqual(["1"]);
    expect(ask.input.rows.map(({ key }) => key)).toEqual(["b"]);
    expect(ask.left).toEqual([{ letter: "A", name: taxon.name, why: expect.stringContaining("by hand") }]);
  });
  it("gives every plant an id and group of its own beside those kept, also from the same seed twice", () => {
    const { bed, view } = bedOf([row("a")]);
    const first = setOutAsk(bed, view, front, false);
    const plants = layoutPlants([], layoutFromSeed(first.input, 1));
    expect(plants).toHaveLength(5);
    const more = bedOf([row("a", { quantity: { by: "count", count: 9 } })], plants);
    const again = setOutAsk(more.bed, more.view, front, true);
    const all = layoutPlants(again.kept, layoutFromSeed(again.input, 1));
    expect(new Set(all.map(({ id }) => id)).size).toBe(9);
    const groups = new Set(plants.map(({ group }) => group));
    expect(all.slice(5).every(({ group }) => !groups.has(group))).toBe(true);
    expect(all.slice(0, 5)).toEqual(plants);
  });
});

describe("an arrangement taken", () => {
  it("changes places and standpoint alone", () => {
    const { bed, view } = bedOf([row("a")]);
    const taken = bedSetOut(bed, view, [plant("1", "a", 3)], standpointOf("all round"));
    expect(taken).toEqual({ ...bed, drawing: { ...bed.drawing, plants: [plant("1", "a", 3)], standpoint: { kind: "all round" } } });
  });
  it("does not shorten a row that is counted from the drawing because some found no room", () => {
    const { bed, view } = bedOf([row("a", { quantity: { by: "drawing" } })], [plant("1", "a", 3), plant("2", "a", 9)]);
    expect(bedSetOut(bed, view, [plant("1", "a", 3)], front).rows[0]?.quantity).toEqual({ by: "count", count: 2 });
    expect(bedSetOut(bed, view, [plant("1", "a", 3), plant("9", "a", 5)], front).rows[0]?.quantity).toEqual({ by: "drawing" });
  });
  it("says each part of its score with its figure", () => {
    const words = layoutWords({ spacingShare: 0.94 }, { overall: 90, order: 0.8, evergreensSeen: 1, spread: 0.5, room: 0.94 });
    expect(words.map(({ figure }) => figure)).toEqual(["80 %", "100 %", "50 %", "94 %", "94 %"]);
  });
});
