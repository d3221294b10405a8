import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Lot, lotPriceCents, type PriceBreak } from "../nursery/lot";
import { sizeFromText } from "../nursery/size-read";
import { multipleUp, type PurchaseNeed, type PurchaseSupplier, purchaseOrders } from "./purchase-list";

const supplier = (id: string, more: Partial<PurchaseSupplier> = {}): PurchaseSupplier => ({
  id,
  name: `Nursery ${id}`,
  contact: "",
  minimumCents: null,
  multiple: 1,
  leadDays: null,
  ...more,
});
function lot(
  id: string,
  supplierId: string,
  cents: number | null,
  { prices, taxonId = "a", size = "#3", onHand = 100 }: { prices?: PriceBreak[]; taxonId?: string; size?: string; onHand?: number } = {},
): Lot {
  const owner = { kind: "supplier", supplierId, supplierName: `Nursery ${supplierId}` } as const;
  return {
    id,
    taxonId,
    sizeText: size,
    size: sizeFromText(size),
    owner,
    place: { block: "", row: "", bay: "", step: null },
    onHand,
    reserved: 0,
    readyFrom: null,
    prices: prices ?? (cents === null ? [] : [{ from: 1, cents }]),
    grade: "",
    remarks: "",
    countedOn: null,
  };
}
const need = (of: Lot, quantity: number, bedName = "Bed 1"): PurchaseNeed => ({ lot: of, code: `c-${of.id}`, taxonName: "Plant", bedName, quantity });
const TODAY = "2027-03-01";

describe("an order", () => {
  it("rounds up to the supplier's multiple and says what the extra plants cost", () => {
    const [order] = purchaseOrders([need(lot("l", "s", 500), 7, "Bed 1"), need(lot("l", "s", 500), 5, "Bed 2")], [supplier("s", { multiple: 5 })], [], null, TODAY);
    expect(order?.lines).toMatchObject([{ wanted: 12, ordered: 15, centsEach: 500, cents: 7500, extraCents: 1500, beds: ["Bed 1", "Bed 2"], code: "c-l" }]);
  });

  it("counts a price break at what is ordered, so that more plants may cost less", () => {
    const broken = lot("l", "s", null, {
      prices: [
        { from: 1, cents: 1000 },
        { from: 10, cents: 700 },
      ],
    });
    expect(purchaseOrders([need(broken, 8)], [supplier("s", { multiple: 10 })], [], null, TODAY)[0]?.lines[0]).toMatchObject({ ordered: 10, cents: 7000, extraCents: -1000 });
  });

  it("says what is missing to the least order, and which lines of others could come here at the same size", () => {
    const mine = lot("mine", "s", 2000);
    const theirs = lot("theirs", "t", 900, { taxonId: "b" });
    const offers = [lot("b here", "s", 1000, { taxonId: "b" }), lot("b other size", "s", 1000, { taxonId: "b", size: "#5" }), lot("b few", "s", 500, { taxonId: "b", onHand: 3 })];
    const orders = purchaseOrders([need(mine, 10), need(theirs, 6)], [supplier("s", { minimumCents: 25_000 }), supplier("t")], [...offers, mine, theirs], null, TODAY);
    expect(orders.map((order) => [order.supplierId, order.cents, order.belowMinimumCents])).toEqual([
      ["s", 20_000, 5000],
      ["t", 5400, 0],
    ]);
    expect(orders[0]?.moves).toEqual([
      { fromSupplierName: "Nursery t", fromLotId: "theirs", toLotId: "b here", text: "Plant #3", quantity: 6, gainCents: 6000, moreCents: 600, leavesBelowCents: 0 },
    ]);
    expect(orders[1]?.moves).toEqual([]);
  });

  it("is to be placed so many days before planting, and says when that day is past", () => {
    const needs = [need(lot("l", "s", 500), 1)];
    expect(purchaseOrders(needs, [supplier("s", { leadDays: 14 })], [], "2027-04-15", TODAY)[0]).toMatchObject({ orderBy: "2027-04-01", late: false });
    expect(purchaseOrders(needs, [supplier("s", { leadDays: 60 })], [], "2027-04-15", TODAY)[0]).toMatchObject({ orderBy: "2027-02-14", late: true });
    expect(purchaseOrders(needs, [supplier("s")], [], "2027-04-15", TODAY)[0]?.orderBy).toBeNull();
    expect(purchaseOrders(needs, [supplier("s", { leadDays: 14 })], [], null, TODAY)[0]?.orderBy).toBeNull();
  });

  it("names plants without a price and lines that ask for more than is on the list", () => {
    const [order] = purchaseOrders([need(lot("l", "s", null, { onHand: 4 }), 4)], [supplier("s", { multiple: 5 })], [], null, TODAY);
    expect(order).toMatchObject({ unpricedPlants: 5, cents: 0, lines: [{ cents: null, extraCents: null, remarks: "only 4 on the list" }] });
  });
});

describe("orders of any job", () => {
  const lots = fc
    .array(fc.record({ supplierId: fc.constantFrom("s", "t", "u"), cents: fc.option(fc.integer({ min: 1, max: 5000 })), taxonId: fc.constantFrom("a", "b") }), {
      minLength: 1,
      maxLength: 6,
    })
    .map((list) => list.map(({ supplierId, cents, taxonId }, i) => lot(`l${i}`, supplierId, cents, { taxonId })));
  const suppliers = fc
    .tuple(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 1, max: 12 }), fc.option(fc.integer({ min: 0, max: 100_000 })))
    .map(([a, b, minimumCents]) => [supplier("s", { multiple: a, minimumCents }), supplier("t", { multiple: b }), supplier("u")]);
  const needs = lots.chain((list) =>
    fc.array(fc.record({ l: fc.nat(list.length - 1), quantity: fc.integer({ min: 0, max: 40 }), bed: fc.constantFrom("Bed 1", "Bed 2") }), { maxLength: 12 }).map((picks) => ({
      list,
      needs: picks.flatMap(({ l, quantity, bed }) => {
        const of = list[l];
        return of ? [need(of, quantity, bed)] : [];
      }),
    })),
  );

  it("never order fewer than wanted, keep the multiples, lose and add no plant, and add up", () => {
    fc.assert(
      fc.property(needs, suppliers, ({ list, needs: wanted }, from) => {
        const orders = purchaseOrders(wanted, from, list, null, TODAY);
        const lines = orders.flatMap((order) => order.lines.map((line) => ({ ...line, multiple: order.multiple })));
        expect(lines.reduce((sum, line) => sum + line.wanted, 0)).toBe(wanted.reduce((sum, one) => sum + one.quantity, 0));
        expect(new Set(lines.map(({ lotId }) => lotId)).size).toBe(lines.length);
        for (const line of lines) {
          expect(line.ordered).toBeGreaterThanOrEqual(line.wanted);
          expect(line.ordered - line.wanted).toBeLessThan(line.multiple);
          expect(line.ordered % line.multiple).toBe(0);
          const each = lotPriceCents(list.find(({ id }) => id === line.lotId) ?? { prices: [] }, line.ordered);
          expect(line.cents).toBe(each === null ? null : each * line.ordered);
        }
        for (const order of orders) {
          expect(order.cents).toBe(order.lines.reduce((sum, line) => sum + (line.cents ?? 0), 0));
          expect(order.belowMinimumCents).toBe(Math.max(0, (order.minimumCents ?? 0) - order.cents));
        }
      }),
    );
  });

  it("round to the least multiple that serves", () => {
    expect([multipleUp(12, 5), multipleUp(10, 5), multipleUp(0, 5), multipleUp(3, 0)]).toEqual([15, 10, 0, 3]);
  });
});
