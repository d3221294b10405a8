import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Lot, lotFree } from "../nursery/lot";
import { sizeFromText } from "../nursery/size-read";
import type { JobRules, PromisedPlants, StockGroup } from "./stock-group";
import { planMoney } from "./stock-money";
import { OWN_FIRST, planPicks, planReleases, stockPlan } from "./stock-plan";

const RULES: JobRules = { plantingOn: "2027-04-15", stepsAllowed: 0 };
function lot(id: string, onHand: number, { own = true, cents = 1000 as number | null, size = "#3", taxonId = "a", reserved = 0, readyFrom = null as string | null } = {}): Lot {
  const owner = own ? ({ kind: "own" } as const) : ({ kind: "supplier", supplierId: "s", supplierName: "Valley" } as const);
  return {
    id,
    taxonId,
    sizeText: size,
    size: sizeFromText(size),
    owner,
    place: { block: "", row: "", bay: id, step: null },
    onHand,
    reserved,
    readyFrom,
    prices: cents === null ? [] : [{ from: 1, cents }],
    grade: "",
    remarks: "",
    countedOn: null,
  };
}
const group = (rowId: string, wanted: number, { size = "#3", taxonId = "a", received = 0, bedId = "b" } = {}): StockGroup => ({
  key: `${bedId}:${rowId}`,
  bedId,
  bedName: `Bed ${bedId}`,
  rowId,
  letter: "A",
  taxonId,
  taxonName: `Plant ${taxonId}`,
  sizeText: size,
  size: sizeFromText(size),
  wanted,
  received,
  remarks: "",
});
const promise = (of: Lot, rowId: string, open: number, pulled = 0): PromisedPlants => ({ id: `${of.id}-${rowId}`, bedId: "b", rowId, open, pulled, lot: of });
const plan = (groups: StockGroup[], lots: Lot[], { promised = [] as PromisedPlants[], rules = RULES, chosen = {} as Record<string, string> } = {}) =>
  stockPlan(groups, promised, lots, rules, new Map(Object.entries(chosen)));
const proposedText = (of: ReturnType<typeof plan>) => of.groups.map(({ proposed }) => proposed.map(({ lot: { id }, quantity }) => `${id} ${quantity}`).join(", "));

describe("the plan of a job's plants", () => {
  it("proposes lots for what is neither promised nor received", () => {
    const own = lot("own", 30, { reserved: 4 });
    const result = plan([group("r", 10, { received: 1 })], [own], { promised: [promise(own, "r", 4, 2)] });
    expect(proposedText(result)).toEqual(["own 3"]);
    expect(planPicks(result, null)).toEqual([{ lotId: "own", bedId: "b", rowId: "r", quantity: 3, steps: 0 }]);
    expect(planReleases(result, null)).toEqual([]);
  });

  it("offers own plants first where a group comes whole from elsewhere, and takes them with the rest bought when that is chosen", () => {
    const lots = [lot("own", 4), lot("bought", 30, { own: false })];
    const offered = plan([group("r", 6)], lots);
    expect(proposedText(offered)).toEqual(["bought 6"]);
    expect(offered.groups[0]?.ownFirst).toEqual({ own: 4, rest: 2 });
    const chosen = plan([group("r", 6)], lots, { chosen: { "b:r": OWN_FIRST } });
    expect(proposedText(chosen)).toEqual(["own 4, bought 2"]);
    expect(chosen.groups[0]).toMatchObject({ short: 0, ownFirst: null, chosenLotId: OWN_FIRST });
  });

  it("shares own plants among groups that want them first, and offers none that another group takes", () => {
    const lots = [lot("own", 4), lot("bought", 30, { own: false })];
    const both = plan([group("r", 3), group("s", 3)], lots, { chosen: { "b:r": OWN_FIRST, "b:s": OWN_FIRST } });
    expect(proposedText(both)).toEqual(["own 3", "own 1, bought 2"]);
    const taken = plan([group("r", 4), group("s", 6)], lots);
    expect(proposedText(taken)).toEqual(["own 4", "bought 6"]);
    expect(taken.groups[1]?.ownFirst).toBeNull();
  });

  it("lets a choice of own plants go where there are none", () => {
    expect(plan([group("r", 6)], [lot("bought", 30, { own: false })], { chosen: { "b:r": OWN_FIRST } }).groups[0]).toMatchObject({ chosenLotId: null, short: 0 });
  });

  it("gives back the surplus of a row that wants fewer now, suppliers' plants first", () => {
    const own = lot("own", 30, { reserved: 6 });
    const bought = lot("bought", 30, { reserved: 4, own: false });
    const result = plan([group("r", 5)], [own, bought], { promised: [promise(own, "r", 6), promise(bought, "r", 4)] });
    expect(planReleases(result, null).map(({ promised, release }) => [promised.lot.id, release])).toEqual([
      ["own", 1],
      ["bought", 4],
    ]);
    expect(proposedText(result)).toEqual([""]);
  });

  it("gives back what is of another plant, another size, or ready too late, says why, and proposes anew", () => {
    const own = lot("own", 6, { reserved: 6 });
    const other = lot("other", 20, { taxonId: "c" });
    const five = lot("five", 20, { size: "#5" });
    const why = (result: ReturnType<typeof plan>) => result.groups[0]?.held[0]?.why;
    const promised = [promise(own, "r", 6)];
    const another = plan([group("r", 6, { taxonId: "c" })], [own, other], { promised });
    expect([why(another), proposedText(another)]).toEqual(["the bed now wants Plant c here", ["other 6"]]);
    const larger = plan([group("r", 6, { size: "#5" })], [own, five], { promised });
    expect([why(larger), proposedText(larger)]).toEqual(["the bed wants #5, these are #3 (1 size down)", ["five 6"]]);
    const late = lot("late", 6, { reserved: 6, readyFrom: "2027-05-01" });
    expect(why(plan([group("r", 6)], [late], { promised: [promise(late, "r", 6)] }))).toBe("not ready before May 1, 2027");
    expect(why(plan([group("r", 6, { size: "#5" })], [own, five], { promised, rules: { ...RULES, stepsAllowed: 1 } }))).toBeNull();
  });

  it("counts on plants that come back: they may serve another row", () => {
    const own = lot("own", 6, { reserved: 6 });
    expect(proposedText(plan([group("r", 6, { taxonId: "c" }), group("q", 6)], [own], { promised: [promise(own, "r", 6)] }))).toEqual(["", "own 6"]);
  });

  it("names promises to rows that are on no list any more", () => {
    const own = lot("own", 6, { reserved: 6 });
    const result = plan([group("q", 2)], [own], { promised: [promise(own, "gone", 6)] });
    expect(result.astray).toMatchObject([{ release: 6, why: "this row is no longer on a plant list of the job" }]);
    expect(planReleases(result, ["b:q"])).toEqual([]);
  });

  it("takes the lot that was chosen by hand and shares the rest out anew; a choice that cannot serve is let go", () => {
    const [a, b] = [lot("a", 6, { cents: 500 }), lot("b", 6, { cents: 900 })];
    const groups = [group("r", 6), group("q", 4)];
    expect(proposedText(plan(groups, [a, b]))).toEqual(["a 6", "b 4"]);
    const chosen = plan(groups, [a, b], { chosen: { "b:q": "a" } });
    expect(proposedText(chosen)).toEqual(["b 6", "a 4"]);
    expect(chosen.groups[1]?.chosenLotId).toBe("a");
    expect(plan([group("r", 6), group("q", 2)], [a, lot("c", 20, { cents: 100 })], { chosen: { "b:q": "a" } }).groups[1]?.others.map(({ lot: { id } }) => id)).toEqual(["c"]);
    const few = plan([group("r", 9)], [a, lot("c", 20)], { chosen: { "b:r": "a" } });
    expect([proposedText(few), few.groups[0]?.chosenLotId]).toEqual([["c 9"], null]);
  });

  it.each([
    ["none at all", [], "None at all: not in the nursery, and on no supplier's list."],
    ["only promised ones", [lot("l", 5, { reserved: 5 })], "All 5 on hand are promised."],
    ["only later ones", [lot("l", 5, { readyFrom: "2027-05-01" })], "Not ready by the planting date: 5 at Bay l, ready May 1, 2027."],
    ["only other sizes", [lot("l", 5, { size: "#5" })], "Only in other sizes: 5 of #5 at Bay l (1 size up). One size up or down is not allowed on this job yet."],
    ["too few", [lot("l", 5)], "Only 5 free for this job's beds together."],
  ])("says why plants are short: %s", (_, lots, words) => {
    const [own] = plan([group("r", 7)], lots).groups;
    expect(own?.short).toBeGreaterThan(0);
    expect(own?.why).toBe(words);
  });

  it("never proposes more than is free and, with what is short, always comes to what is wanted", () => {
    const lots = fc
      .array(fc.record({ onHand: fc.nat(12), taken: fc.nat(12), own: fc.boolean(), size: fc.constantFrom("#3", "#5") }), { maxLength: 4 })
      .map((list) => list.map(({ onHand, taken, own, size }, i) => lot(`l${i}`, onHand, { own, size, reserved: Math.min(onHand, taken) })));
    const groups = fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 4 }).map((list) => list.map((wanted, i) => group(`r${i}`, wanted)));
    fc.assert(
      fc.property(groups, lots, fc.constantFrom(0 as const, 1 as const), (wanted, stock, stepsAllowed) => {
        const result = plan(wanted, stock, { rules: { ...RULES, stepsAllowed } });
        for (const own of result.groups) expect(own.proposed.reduce((sum, { quantity }) => sum + quantity, 0) + own.short).toBe(own.group.wanted);
        for (const one of stock) {
          const taken = planPicks(result, null).filter(({ lotId }) => lotId === one.id);
          expect(taken.reduce((sum, { quantity }) => sum + quantity, 0)).toBeLessThanOrEqual(lotFree(one));
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe("the money of a plan", () => {
  it("is the same by source and by bed, at the break that the job reaches, with unpriced plants named", () => {
    const broken = {
      ...lot("broken", 50),
      prices: [
        { from: 1, cents: 1000 },
        { from: 10, cents: 800 },
      ],
    };
    const bare = lot("bare", 9, { cents: null, taxonId: "c" });
    const bought = lot("bought", 9, { own: false, taxonId: "d", cents: 300 });
    const money = planMoney(
      plan(
        [group("r", 6), group("q", 6, { bedId: "c" }), group("s", 2, { taxonId: "c" }), group("t", 3, { taxonId: "d" }), group("u", 4, { taxonId: "e" })],
        [broken, bare, bought],
      ),
    );
    expect(money.cents).toBe(12 * 800 + 900);
    expect(money.sources.map(({ name, plants, cents }) => [name, plants, cents])).toEqual([
      ["Own nursery", 14, 9600],
      ["Valley", 3, 900],
    ]);
    expect(money.beds.map(({ bedName, cents, short }) => [bedName, cents, short])).toEqual([
      ["Bed b", 5700, 4],
      ["Bed c", 4800, 0],
    ]);
    expect(money.unpriced).toEqual([{ text: "Plant c #3", plants: 2 }]);
    expect(money.shortText).toEqual(["4 Plant e #3"]);
  });
});
