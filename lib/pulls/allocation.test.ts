import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Lot, lotFree, lotPriceCents } from "../nursery/lot";
import { sizeFromText } from "../nursery/size-read";
import { sizeSteps } from "../nursery/size-step";
import { lotsAllocated, type Need } from "./allocation";

function lot(id: string, onHand: number, own: boolean, cents: number | null, { size = "#3", taxonId = "a", readyFrom = null as string | null, reserved = 0 } = {}): Lot {
  const owner = own ? ({ kind: "own" } as const) : ({ kind: "supplier", supplierId: "s", supplierName: "Supplier" } as const);
  const place = { block: "", row: "", bay: "", step: null };
  const prices = cents === null ? [] : [{ from: 1, cents }];
  return { id, taxonId, sizeText: size, size: sizeFromText(size), owner, place, onHand, reserved, readyFrom, prices, grade: "", remarks: "", countedOn: null };
}
const need = (key: string, quantity: number, more: Partial<Need> = {}): Need => ({
  key,
  taxonId: "a",
  size: sizeFromText("#3"),
  quantity,
  plantingOn: "2027-04-15",
  stepsAllowed: 0,
  ...more,
});
const picked = (needs: Need[], lots: Lot[]) =>
  lotsAllocated(needs, lots).served.map(({ picks, short }) => [picks.map(({ lotId, quantity }) => `${lotId} ${quantity}`).join(", "), short]);

describe("lots for a job", () => {
  it("come from own stock first, then from the cheapest", () => {
    expect(picked([need("g", 10)], [lot("dear", 50, false, 900), lot("cheap", 50, false, 500), lot("own", 10, true, 2000)])).toEqual([["own 10", 0]]);
    expect(picked([need("g", 10)], [lot("dear", 50, false, 900), lot("cheap", 50, false, 500)])).toEqual([["cheap 10", 0]]);
  });

  it("serve a group from one lot where one has enough, and part it where none has", () => {
    expect(picked([need("g", 10)], [lot("own", 6, true, 100), lot("big", 10, false, 900)])).toEqual([["big 10", 0]]);
    expect(picked([need("g", 10)], [lot("own", 6, true, 100), lot("other", 8, false, 900)])).toEqual([["own 6, other 4", 0]]);
  });

  it("say what falls short, and never take what is promised already", () => {
    expect(picked([need("g", 10)], [lot("own", 12, true, 100, { reserved: 8 })])).toEqual([["own 4", 6]]);
    expect(picked([need("g", 10)], [])).toEqual([["", 10]]);
  });

  it("keep to lots ready by the planting date", () => {
    const late = lot("late", 20, true, 100, { readyFrom: "2027-05-01" });
    expect(picked([need("g", 5)], [late])).toEqual([["", 5]]);
    expect(picked([need("g", 5, { plantingOn: "2027-05-01" })], [late])).toEqual([["late 5", 0]]);
  });

  it("go one size up or down only where the job allows it, and after the size that was asked for", () => {
    const bigger = lot("bigger", 20, true, 100, { size: "#5" });
    const huge = lot("huge", 20, true, 100, { size: "#15" });
    expect(picked([need("g", 5)], [bigger])).toEqual([["", 5]]);
    expect(picked([need("g", 5, { stepsAllowed: 1 })], [huge, bigger])).toEqual([["bigger 5", 0]]);
    expect(picked([need("g", 5, { stepsAllowed: 1 })], [bigger, lot("same", 20, true, 900)])).toEqual([["same 5", 0]]);
  });

  it("count price breaks at what is taken in all", () => {
    const broken: Lot = {
      ...lot("broken", 100, false, 1000),
      prices: [
        { from: 1, cents: 1000 },
        { from: 20, cents: 600 },
      ],
    };
    const flat = lot("flat", 100, false, 700);
    expect(lotsAllocated([need("g", 12), need("h", 12)], [flat, broken]).cents).toBe(24 * 600);
    expect(lotsAllocated([need("g", 12)], [flat, broken]).cents).toBe(12 * 700);
  });

  it("show other lots that could serve the group", () => {
    const [served] = lotsAllocated([need("g", 10)], [lot("cheap", 50, false, 500), lot("dear", 50, false, 900), lot("few", 3, false, 100)]).served;
    expect(served?.alternatives).toEqual([{ lotId: "dear", steps: 0, moreCentsEach: 400 }]);
  });

  it("come from the one lot that was chosen by hand, with the better ones among the others", () => {
    const lots = [lot("cheap", 50, false, 500), lot("dear", 50, false, 900)];
    const [served] = lotsAllocated([need("g", 10, { onlyLotId: "dear" })], lots).served;
    expect(served?.picks).toEqual([{ lotId: "dear", quantity: 10, steps: 0 }]);
    expect(served?.alternatives).toEqual([{ lotId: "cheap", steps: 0, moreCentsEach: -400 }]);
  });

  it("are found for a large job too, without proof", () => {
    const lots = Array.from({ length: 12 }, (_, i) => lot(`l${i}`, 30 + i, i < 3, 500 + i * 10));
    const result = lotsAllocated(
      Array.from({ length: 20 }, (_, i) => need(`g${i}`, 5 + (i % 7))),
      lots,
    );
    expect(result.proven).toBe(false);
    expect(result.served.every(({ short, picks }) => short === 0 && picks.length >= 1)).toBe(true);
  });
});

type Judged = readonly [short: number, split: number, notOwn: number, steps: number, cents: number];
const judgedOrder = (a: Judged, b: Judged): number => a.map((value, i) => value - (b[i] ?? 0)).find((difference) => difference !== 0) ?? 0;

/** Judges shares (plants by need and lot) as the docstring of `lotsAllocated` weighs them. */
function judged(needs: readonly Need[], lots: readonly Lot[], shares: readonly (readonly number[])[]): Judged {
  const sum = (value: (g: number, l: number) => number) => shares.reduce((all, row, g) => all + row.reduce((own, quantity, l) => own + quantity * value(g, l), 0), 0);
  const taken = lots.map((_, l) => shares.reduce((all, row) => all + (row[l] ?? 0), 0));
  const stepsOf = (g: number, l: number) => Math.abs(sizeSteps(needs[g]?.size ?? sizeFromText(""), lots[l]?.size ?? sizeFromText("")) ?? 0);
  return [
    needs.reduce((all, { quantity }) => all + quantity, 0) - sum(() => 1),
    shares.filter((row) => row.filter((quantity) => quantity > 0).length > 1).length,
    sum((_, l) => Number(lots[l]?.owner.kind !== "own")),
    sum(stepsOf),
    sum((_, l) => lotPriceCents(lots[l] ?? { prices: [] }, taken[l] ?? 0) ?? 0),
  ];
}

/** Every way of sharing plants: the oracle. */
function bestByForce(needs: readonly Need[], lots: readonly Lot[]): Judged {
  let best: Judged | null = null;
  const shares = needs.map(() => lots.map(() => 0));
  const left = lots.map(lotFree);
  const walk = (at: number, open: number): void => {
    const g = Math.floor(at / lots.length);
    const l = at % lots.length;
    if (g === needs.length) {
      const own = judged(needs, lots, shares);
      if (!best || judgedOrder(own, best) < 0) best = own;
      return;
    }
    const one = needs[g];
    const other = lots[l];
    const row = shares[g];
    if (!one || !other || !row) return;
    const room = l === 0 ? one.quantity : open;
    const steps = sizeSteps(one.size, other.size);
    const serves = steps !== null && Math.abs(steps) <= one.stepsAllowed && other.taxonId === one.taxonId && (!one.onlyLotId || one.onlyLotId === other.id);
    for (let quantity = 0; quantity <= (serves ? Math.min(room, left[l] ?? 0) : 0); quantity++) {
      row[l] = quantity;
      left[l] = (left[l] ?? 0) - quantity;
      walk(at + 1, room - quantity);
      left[l] = (left[l] ?? 0) + quantity;
    }
    row[l] = 0;
  };
  walk(0, 0);
  return best ?? [0, 0, 0, 0, 0];
}

describe("the answer", () => {
  const lots = fc
    .array(fc.record({ onHand: fc.nat(5), own: fc.boolean(), cents: fc.integer({ min: 1, max: 9 }), size: fc.constantFrom("#3", "#5", "#2") }), { minLength: 1, maxLength: 3 })
    .map((list) => list.map(({ onHand, own, cents, size }, i) => lot(`l${i}`, onHand, own, cents, { size })));
  const needs = fc
    .array(
      fc.record({
        quantity: fc.integer({ min: 1, max: 4 }),
        stepsAllowed: fc.constantFrom(0 as const, 1 as const),
        onlyLotId: fc.oneof({ weight: 3, arbitrary: fc.constant(null) }, fc.constantFrom("l0", "l1")),
      }),
      { minLength: 1, maxLength: 3 },
    )
    .map((list) => list.map(({ quantity, ...more }, i) => need(`g${i}`, quantity, more)));

  it("is the best of all ways, and never more than a lot has", () => {
    fc.assert(
      fc.property(needs, lots, (wanted, stock) => {
        const result = lotsAllocated(wanted, stock);
        const shares = result.served.map(({ picks }) => stock.map(({ id }) => picks.find((pick) => pick.lotId === id)?.quantity ?? 0));
        stock.forEach((one, l) => {
          expect(shares.reduce((sum, row) => sum + (row[l] ?? 0), 0)).toBeLessThanOrEqual(lotFree(one));
        });
        expect(result.proven).toBe(true);
        expect(judged(wanted, stock, shares)).toEqual(bestByForce(wanted, stock));
      }),
      { numRuns: 150 },
    );
  });
});
