import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type LoadItem, loadsPlanned, type Truck } from "./loads";

const truck: Truck = { name: "flatbed", payloadLb: 4000, deckLengthFt: 14, deckWidthFt: 8, clearFt: 6 };
const item = (key: string, bedTurn: number, quantity: number, weightLb: number, widthIn = 12, heightFt = 3): LoadItem => ({
  key,
  bedId: `bed ${bedTurn}`,
  bedTurn,
  quantity,
  weightLb,
  widthIn,
  heightFt,
});

describe("loads", () => {
  it("put heavy balls at the headboard and the first bed at the tailgate", () => {
    const { loads } = loadsPlanned([item("first", 0, 10, 20), item("tree", 0, 2, 550, 28, 12), item("second", 1, 10, 20)], [truck]);
    expect(loads.map(({ items }) => items.map(({ key }) => key))).toEqual([["tree", "second", "first"]]);
    expect(loads[0]?.items[0]).toMatchObject({ lift: "machine", laidBack: true, weightLb: 1100 });
  });

  it("bring the beds that are planted first on the first trip", () => {
    const { loads } = loadsPlanned([item("late", 1, 5, 700, 32), item("early", 0, 5, 700, 32)], [truck]);
    expect(loads.map(({ trip, items }) => [trip, items.map(({ key, quantity }) => `${key} ${quantity}`)])).toEqual([
      [1, ["early 5"]],
      [2, ["late 5"]],
    ]);
  });

  it("leave what no truck may carry, and say why", () => {
    expect(loadsPlanned([item("giant", 0, 1, 9000, 90)], [truck])).toMatchObject({
      loads: [],
      left: [{ key: "giant", quantity: 1, reason: "at 9000 lb heavier than any truck may carry" }],
    });
    expect(loadsPlanned([item("wide", 0, 1, 100, 120)], [truck]).left[0]?.reason).toBe("wider than any deck");
    expect(loadsPlanned([item("x", 0, 1, 1)], []).left[0]?.reason).toBe("no truck is named");
  });

  it("never pass payload or deck, and carry every plant once", () => {
    const items = fc.array(fc.record({ bedTurn: fc.nat(3), quantity: fc.nat(30), weightLb: fc.integer({ min: 1, max: 5000 }), widthIn: fc.integer({ min: 4, max: 110 }) }), {
      maxLength: 8,
    });
    const trucks = fc.constantFrom([truck], [truck, { ...truck, name: "van", payloadLb: 800, deckLengthFt: 6, deckWidthFt: 5 }]);
    fc.assert(
      fc.property(items, trucks, (list, fleet) => {
        const wanted = list.map((one, i) => item(`i${i}`, one.bedTurn, one.quantity, one.weightLb, one.widthIn));
        const { loads, left } = loadsPlanned(wanted, fleet);
        for (const load of loads) {
          const own = fleet.find(({ name }) => name === load.truck);
          expect(load.weightLb).toBeLessThanOrEqual((own?.payloadLb ?? 0) + 1e-6);
          expect(load.deckShare).toBeLessThanOrEqual(1 + 1e-6);
        }
        for (const { key, quantity } of wanted) {
          const carried = loads.flatMap((load) => load.items).filter((one) => one.key === key);
          const stays = left.filter((one) => one.key === key);
          expect([...carried, ...stays].reduce((sum, one) => sum + one.quantity, 0)).toBe(quantity);
        }
      }),
      { numRuns: 150 },
    );
  });
});
