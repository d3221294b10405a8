import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Lot } from "../nursery/lot";
import { sizeFromText } from "../nursery/size-read";
import type { PullTaxon } from "./pull-list";
import { NOTHING_DONE } from "./pull-progress";
import { lotIsInField, pullSheet, type SheetPromise, type SheetRow, sheetLines } from "./pull-sheet";

const taxon: PullTaxon = {
  id: "cercis-canadensis",
  name: "Cercis canadensis",
  genus: "Cercis",
  botanical: "Cercis canadensis",
  cultivar: null,
  group: null,
  tradeDesignation: null,
  commonNames: ["eastern redbud"],
  kind: "tree",
};
const plant = { flags: ["fall-dig-hazard"] as const, leaves: { onDay: 130, offDay: 290 } };
const row = (over: Partial<SheetRow> = {}): SheetRow => ({
  bedId: "b1",
  bedName: "Door",
  rowId: "r1",
  letter: "A",
  taxon,
  plant,
  sizeText: "2 in cal B&B",
  quantity: 5,
  existing: false,
  remarks: "",
  ...over,
});
const lot = (over: Partial<Lot> = {}): Lot => ({
  id: "l1",
  taxonId: taxon.id,
  sizeText: "2 in cal",
  size: sizeFromText("2 in cal", "tree"),
  owner: { kind: "own" },
  place: { block: "North field", row: "3", bay: "", step: 2 },
  onHand: 9,
  reserved: 3,
  readyFrom: null,
  prices: [],
  grade: "",
  remarks: "",
  countedOn: null,
  ...over,
});
const promise = (over: Partial<SheetPromise> = {}): SheetPromise => ({ id: "p1", bedId: "b1", rowId: "r1", open: 3, pulled: 0, steps: 0, lot: lot(), taxon, plant, ...over });
const context = { digOn: "2026-10-20", lastFreezeDay: 120, progress: new Map() };

describe("a pull sheet", () => {
  it("goes by place in walking order, then suppliers, then what is not reserved", () => {
    const yard = lot({ id: "l2", place: { block: "Yard", row: "", bay: "1", step: 1 } });
    const bought = lot({ id: "l3", owner: { kind: "supplier", supplierId: "s", supplierName: "Millbrook Wholesale" }, place: { block: "", row: "", bay: "", step: null } });
    const sheet = pullSheet([row({ quantity: 9 })], [promise(), promise({ id: "p2", lot: bought, open: 1 }), promise({ id: "p3", lot: yard, open: 2 })], context);
    expect(sheet.stops.map(({ place, lines }) => [place, lines.map(({ wanted, method }) => `${wanted} ${method}`)])).toEqual([
      ["Yard, bay 1", ["2 carry"]],
      ["North field, row 3", ["3 dig"]],
      ["Millbrook Wholesale", ["1 buy"]],
      ["Not reserved", ["3 not reserved"]],
    ]);
    expect(sheet.plants).toBe(9);
  });

  it("gives what stands in the field its ball, weight, machine and hazards", () => {
    const [line] = sheetLines(pullSheet([row()], [promise()], context));
    expect(line).toMatchObject({ ball: { diameterIn: 24, depthIn: 16 }, dig: "44 in tree spade", lift: "machine", lineId: "p1" });
    expect(line?.hazards[0]).toMatch(/^Fall-dig hazard/);
  });

  it("takes the ball of a plant that is dug already as a weight, not as digging", () => {
    const heeled = lot({ sizeText: "2 in cal B&B", size: sizeFromText("2 in cal B&B", "tree"), place: { block: "Yard", row: "", bay: "heel-in bed", step: 1 } });
    const [line] = sheetLines(pullSheet([row()], [promise({ lot: heeled })], context));
    expect(line).toMatchObject({ method: "carry", dig: null, lift: "machine", hazards: [] });
  });

  it("says the size that was asked for where another is pulled", () => {
    const [line] = sheetLines(pullSheet([row({ sizeText: "1.75 in cal" })], [promise({ steps: 1 })], context));
    expect(line?.remarks).toBe("for 1.75 in cal, 1 size up");
  });

  it("keeps what was short on its line and does not ask for it again", () => {
    const progress = new Map([["p1", { ...NOTHING_DONE, short: 2 }]]);
    const lines = sheetLines(pullSheet([row()], [promise({ open: 3, pulled: 0 })], { ...context, progress }));
    expect(lines.map(({ wanted, short }) => [wanted, short])).toEqual([[5, 2]]);
  });

  it("leaves out plants that stay, and keeps promises whose row is gone", () => {
    const lines = sheetLines(pullSheet([row({ existing: true })], [promise({ rowId: "gone" })], context));
    expect(lines.map(({ bedName, wanted }) => [bedName, wanted])).toEqual([["Bed no longer there", 3]]);
  });

  it("tells what is left to do apart from what is missing, swapped, or settled by a substitute already", () => {
    const done = { ...NOTHING_DONE, short: 3, substituted: 3, swapped: 1, notes: ["wet feet"], photos: ["/photo/1"] };
    const [line] = sheetLines(
      pullSheet([row({ rowId: "r0", quantity: 8 })], [promise({ id: "p0", rowId: "r0", open: 2, pulled: 5 })], { ...context, progress: new Map([["p0", done]]) }),
    );
    expect(line).toMatchObject({ wanted: 8, pulled: 5, open: 2, swapped: 1, notes: ["wet feet"], photos: ["/photo/1"] });
  });

  it("neither loses nor adds a plant", () => {
    const rows = fc.array(fc.nat(40), { minLength: 1, maxLength: 6 });
    const shares = fc.array(fc.record({ row: fc.nat(5), open: fc.nat(20), pulled: fc.nat(20) }), { maxLength: 8 });
    fc.assert(
      fc.property(rows, shares, (quantities, parts) => {
        const own = quantities.map((quantity, i) => row({ rowId: `r${i}`, quantity }));
        const promises = parts.map((part, i) => promise({ id: `p${i}`, rowId: `r${part.row % quantities.length}`, open: part.open, pulled: part.pulled }));
        const lines = sheetLines(pullSheet(own, promises, context));
        for (const { rowId, quantity } of own) {
          const promised = promises.filter((one) => one.rowId === rowId).reduce((sum, one) => sum + one.open + one.pulled, 0);
          expect(lines.filter((line) => line.rowId === rowId).reduce((sum, line) => sum + line.wanted, 0)).toBe(Math.max(quantity, promised));
        }
      }),
      { numRuns: 200 },
    );
  });
});

describe("what stands in the field", () => {
  it("is told by root and place", () => {
    const at = (block: string, text: string) => lotIsInField(lot({ place: { block, row: "", bay: "", step: null }, size: sizeFromText(text, "tree") }));
    expect([
      at("North field", "2 in cal"),
      at("Yard", "2 in cal B&B"),
      at("North field", "#5"),
      at("", "2 in cal B&B"),
      at("", "2 in cal"),
      at("Holding yard", "6-8 ft B&B"),
    ]).toEqual([true, false, false, false, true, false]);
    expect(lotIsInField(lot({ owner: { kind: "supplier", supplierId: "s", supplierName: "S" } }))).toBe(false);
  });
});
