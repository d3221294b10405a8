import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { deckPlaced } from "./deck";
import { bedsOrdered } from "./load-items";
import { loadsPlanned } from "./loads";

const deck = { deckLengthFt: 12, deckWidthFt: 7 };

describe("the deck", () => {
  it("fills rows across from the headboard", () => {
    expect(deckPlaced([{ key: "a", quantity: 3, widthIn: 36 }], deck)?.map(({ xFt, yFt }) => [xFt, yFt])).toEqual([
      [1.5, 1.5],
      [4.5, 1.5],
      [1.5, 4.5],
    ]);
  });

  it("refuses what does not fit", () => {
    expect(deckPlaced([{ key: "a", quantity: 9, widthIn: 36 }], deck)).toBeNull();
    expect(deckPlaced([{ key: "a", quantity: 1, widthIn: 90 }], deck)).toBeNull();
  });

  it("keeps every unit on the deck and none on another", () => {
    const items = fc.array(fc.record({ quantity: fc.nat(12), widthIn: fc.integer({ min: 4, max: 60 }) }), { maxLength: 6 });
    fc.assert(
      fc.property(items, (list) => {
        const spots = deckPlaced(
          list.map((item, i) => ({ key: `i${i}`, ...item })),
          deck,
        );
        for (const [i, a] of (spots ?? []).entries()) {
          expect(a.xFt - a.widthFt / 2).toBeGreaterThan(-1e-6);
          expect(a.xFt + a.widthFt / 2).toBeLessThan(deck.deckWidthFt + 1e-6);
          expect(a.yFt + a.widthFt / 2).toBeLessThan(deck.deckLengthFt + 1e-6);
          for (const b of (spots ?? []).slice(i + 1)) expect(Math.hypot(a.xFt - b.xFt, a.yFt - b.yFt)).toBeGreaterThan((a.widthFt + b.widthFt) / 2 - 1e-6);
        }
      }),
      { numRuns: 150 },
    );
  });
});

describe("loads on a deck", () => {
  const truck = { name: "stake body", payloadLb: 9000, ...deck, clearFt: null };
  it("have a spot for every unit, and say what reaches past the tailgate or is too wide", () => {
    const [load] = loadsPlanned([{ key: "tree", bedId: "b", bedTurn: 0, quantity: 2, weightLb: 900, widthIn: 38, heightFt: 16 }], [truck]).loads;
    expect(load?.spots).toHaveLength(2);
    expect(load?.pastTailgateFt).toBeGreaterThan(4);
    expect(load?.cautions.join(" ")).toMatch(/Lay back 2.*flag the end/);
  });

  it("know that a ball wider than the road allows wants a permit", () => {
    const wide = { ...truck, deckWidthFt: 10 };
    const [load] = loadsPlanned([{ key: "tree", bedId: "b", bedTurn: 0, quantity: 1, weightLb: 8000, widthIn: 110, heightFt: 9 }], [wide]).loads;
    expect(load?.cautions.join(" ")).toMatch(/wider than 8.5 ft/);
  });

  it("take beds in the order chosen, the others after", () => {
    expect(bedsOrdered([{ id: "a" }, { id: "b" }, { id: "c" }], ["c", "a"]).map(({ id }) => id)).toEqual(["c", "a", "b"]);
  });
});
