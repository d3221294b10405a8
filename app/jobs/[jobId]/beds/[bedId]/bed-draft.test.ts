import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Bed, BedRow } from "@/lib/ground/bed";
import { type BedCommand, bedChanged, draftNext, draftOf } from "./bed-draft";

const row = (id: string): BedRow => ({ id, taxonId: id, taxonName: id, quantity: { by: "count", count: 3 }, spacingFt: 2, size: "#3", remarks: "", existing: false });
const bed: Bed = {
  name: "Entrance",
  size: { by: "rectangle", lengthFt: 20, widthFt: 8 },
  site: { light: "sun", moisture: "average", ph: null, salt: "none", deer: "none", faces: "" },
  notes: "",
  rows: ["a", "b", "c"].map(row),
};
const ids = (b: Bed) => b.rows.map((r) => r.id).join("");

const command = fc.oneof<fc.Arbitrary<BedCommand>[]>(
  fc.record({ type: fc.constant("move" as const), rowId: fc.constantFrom("a", "b", "c", "x"), to: fc.integer({ min: -2, max: 6 }) }),
  fc.record({ type: fc.constant("remove" as const), rowId: fc.constantFrom("a", "b", "c") }),
  fc.record({ type: fc.constant("rename" as const), name: fc.constantFrom("Entrance", "Walk") }),
  fc.record({ type: fc.constant("change" as const), rowId: fc.constantFrom("a", "b"), change: fc.record({ remarks: fc.string() }) }),
);

describe("bed draft", () => {
  it("moves a row to where it is dropped and holds it inside the list", () => {
    expect(ids(bedChanged(bed, { type: "move", rowId: "a", to: 2 }))).toBe("bca");
    expect(ids(bedChanged(bed, { type: "move", rowId: "c", to: -5 }))).toBe("cab");
    expect(bedChanged(bed, { type: "move", rowId: "b", to: 1 })).toBe(bed);
  });
  it("brings a removed plant back on undo, with all it had, and takes it out again on redo", () => {
    const out = draftNext(draftOf(bed), { type: "remove", rowId: "b" });
    expect(ids(out.present)).toBe("ac");
    const back = draftNext(out, { type: "undo" });
    expect(back.present).toEqual(bed);
    expect(ids(draftNext(back, { type: "redo" }).present)).toBe("ac");
  });
  it("does not fill the history with commands that change nothing", () => {
    expect(draftNext(draftOf(bed), { type: "rename", name: "Entrance" }).past).toHaveLength(0);
  });
  it("undoes any run of commands back to the first bed, and redoes it to the last", () => {
    fc.assert(
      fc.property(fc.array(command, { maxLength: 12 }), (commands) => {
        const worked = commands.reduce(draftNext, draftOf(bed));
        let back = worked;
        for (let i = 0; i < worked.past.length; i++) back = draftNext(back, { type: "undo" });
        expect(back.present).toEqual(bed);
        let forth = back;
        for (let i = 0; i < worked.past.length; i++) forth = draftNext(forth, { type: "redo" });
        expect(forth.present).toEqual(worked.present);
      }),
    );
  });
});
