import { describe, expect, it } from "vitest";
import { type HeldLot, listChange, type OfferedLot, sizeKey } from "./list-change";
import { sizeFromText } from "./size-read";

const held = (id: string, change: Partial<HeldLot> = {}): HeldLot => ({ id, taxonId: "acer", sizeKey: "#3", code: "", quantity: 10, reserved: 0, priceCents: 500, ...change });
const offer = (change: Partial<OfferedLot> = {}): OfferedLot => ({
  taxonId: "acer",
  sizeKey: "#3",
  sizeText: "#3",
  code: "",
  quantity: 10,
  priceCents: 500,
  prices: [],
  readyFrom: null,
  grade: "",
  remarks: "",
  ...change,
});

describe("a second list", () => {
  it("names new, gone, more, fewer, dearer and cheaper lots", () => {
    const lots = [held("a"), held("b", { sizeKey: "#5" }), held("c", { sizeKey: "#7" }), held("d", { taxonId: "quercus" })];
    const change = listChange(lots, [
      offer({ quantity: 12, priceCents: 450 }),
      offer({ sizeKey: "#5", quantity: 3, priceCents: 600 }),
      offer({ sizeKey: "#7" }),
      offer({ taxonId: "tilia" }),
    ]);
    expect(change.added.map(({ taxonId }) => taxonId)).toEqual(["tilia"]);
    expect(change.gone.map(({ id }) => id)).toEqual(["d"]);
    expect(change.more.map(({ lot }) => lot.id)).toEqual(["a"]);
    expect(change.fewer.map(({ lot }) => lot.id)).toEqual(["b"]);
    expect(change.dearer.map(({ lot }) => lot.id)).toEqual(["b"]);
    expect(change.cheaper.map(({ lot }) => lot.id)).toEqual(["a"]);
    expect(change.kept).toHaveLength(3);
  });
  it("pairs by the supplier's number before size alone, and a lot only once", () => {
    const change = listChange([held("a", { code: "A1" }), held("b", { code: "B2" })], [offer({ code: "B2", quantity: 1 }), offer({ code: "new" }), offer({ code: "third" })]);
    expect(change.kept.map(({ lot, offer: { code } }) => [lot.id, code])).toEqual([
      ["b", "B2"],
      ["a", "new"],
    ]);
    expect(change.added.map(({ code }) => code)).toEqual(["third"]);
  });
  it("puts first what was promised and is gone or too few", () => {
    const change = listChange(
      [held("a", { reserved: 4 }), held("b", { sizeKey: "#5", reserved: 4 }), held("c", { sizeKey: "#7", reserved: 4 })],
      [offer({ quantity: 3 }), offer({ sizeKey: "#5", quantity: 4 })],
    );
    expect(change.tooFew.map(({ lot, offered }) => [lot.id, offered])).toEqual([
      ["c", 0],
      ["a", 3],
    ]);
  });
  it("does not call a lot gone that held nothing already", () => {
    expect(listChange([held("a", { quantity: 0 })], []).gone).toEqual([]);
  });
});

describe("the key of a size", () => {
  const key = (text: string) => sizeKey(sizeFromText(text, "shrub"), text);
  it("is one for all spellings of a size, and the words where they are not understood", () => {
    expect(key("3 gal")).toBe(key("#3"));
    expect(key("#3")).not.toBe(key("#5"));
    expect(key("Jumbo  Grade")).not.toBe(key(""));
  });
});
