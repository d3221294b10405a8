import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { KINDS, type Kind } from "../plants/vocabulary";
import { type PullRow, type PullTaxon, pullList } from "./pull-list";

fc.configureGlobal({ numRuns: 1000 });
function taxon(name: string, kind: Kind): PullTaxon {
  const [genus = name] = name.split(" ");
  return { id: name.toLowerCase().replace(/\W+/g, "-"), name, genus, botanical: name, cultivar: null, group: null, tradeDesignation: null, commonNames: [], kind };
}

const maple = taxon("Acer × freemanii", "tree");
const redMaple = taxon("Acer rubrum", "tree");
const sugarMaple = taxon("Acer griseum", "tree");
const inkberry = taxon("Ilex glabra", "shrub");
const coneflower = taxon("Echinacea purpurea", "perennial");
const daffodil = taxon("Narcissus poeticus", "bulb");

const row = (over: Partial<PullRow>): PullRow => ({ bedId: "a", bedName: "Bed A", taxon: inkberry, sizeText: "#3", quantity: 5, existing: false, remarks: "", ...over });

const anyRow: fc.Arbitrary<PullRow> = fc
  .record({
    bedId: fc.constantFrom("a", "b", "c"),
    bedName: fc.constant(""),
    taxon: fc.constantFrom(maple, redMaple, inkberry, coneflower, daffodil),
    sizeText: fc.constantFrom("#3", "3 gal", "#1", "2 in cal B&B", '2" cal B&B', "as sample", ""),
    quantity: fc.integer({ min: 0, max: 400 }),
    existing: fc.boolean(),
    remarks: fc.constantFrom("", "spaced by hand", "matching"),
  })
  .map((r) => ({ ...r, bedName: `Bed ${r.bedId}` }));

describe("a pull list", () => {
  it("totals by taxon and size over the beds and shows the split", () => {
    const list = pullList([
      row({ quantity: 5 }),
      row({ bedId: "b", bedName: "Bed B", quantity: 7, remarks: "matching" }),
      row({ quantity: 2, sizeText: "#5" }),
      row({ quantity: 1 }),
    ]);
    const [three, five] = list.groups[0]?.lines ?? [];
    expect(three).toMatchObject({ sizeText: "#3", quantity: 13, remarks: ["matching"] });
    expect(three?.split).toEqual([
      { bedId: "a", bedName: "Bed A", quantity: 6 },
      { bedId: "b", bedName: "Bed B", quantity: 7 },
    ]);
    expect(five).toMatchObject({ sizeText: "#5", quantity: 2 });
    expect(list.quantity).toBe(15);
  });

  it("takes the spellings of a size as one", () => {
    const list = pullList([row({ sizeText: "3 gallon" }), row({ sizeText: "#3" }), row({ sizeText: "3  gal" })]);
    expect(list.groups[0]?.lines).toHaveLength(1);
    expect(list.groups[0]?.lines[0]).toMatchObject({ sizeText: "#3", quantity: 15 });
  });

  it("leaves out plants that stay and rows without plants", () => {
    const list = pullList([row({ existing: true }), row({ quantity: 0 }), row({ taxon: coneflower, quantity: 3, sizeText: "#1" })]);
    expect(list.groups.map((group) => group.kind)).toEqual(["perennial"]);
    expect(pullList([row({ existing: true })])).toEqual({ beds: [], groups: [], quantity: 0 });
  });

  it("goes by kind, then botanical name without the hybrid sign, then size", () => {
    const list = pullList([
      row({ taxon: daffodil, sizeText: "14-16 cm" }),
      row({ taxon: redMaple, sizeText: "2 in cal" }),
      row({ taxon: coneflower, sizeText: "#1" }),
      row({ taxon: coneflower, sizeText: "qt" }),
      row({ taxon: maple, sizeText: "2 in cal" }),
      row({ taxon: sugarMaple, sizeText: "2 in cal" }),
      row({}),
    ]);
    expect(list.groups.map((group) => group.heading)).toEqual(["Trees", "Shrubs", "Perennials", "Bulbs"]);
    expect(list.groups[0]?.lines.map((line) => line.taxon.name)).toEqual(["Acer × freemanii", "Acer griseum", "Acer rubrum"]);
    expect(list.groups[2]?.lines.map((line) => line.sizeText)).toEqual(["qt", "#1"]);
  });

  it("has a heading for every kind", () => {
    const list = pullList(KINDS.map((kind) => row({ taxon: taxon(`Genus ${kind}`, kind) })));
    expect(list.groups).toHaveLength(KINDS.length);
    expect(list.groups[0]?.kind).toBe("tree");
  });

  it("names beds in the order of people", () => {
    const beds = ["Bed 10", "Bed 2", "bed 1"].map((bedName) => row({ bedId: bedName, bedName }));
    expect(pullList(beds).beds.map((bed) => bed.bedName)).toEqual(["bed 1", "Bed 2", "Bed 10"]);
  });

  it("keeps beds of one name apart", () => {
    expect(pullList([row({ bedId: "x" }), row({ bedId: "y" })]).beds).toHaveLength(2);
  });

  it("does not depend on the order of the rows", () => {
    const shuffled = fc
      .array(anyRow, { maxLength: 30 })
      .chain((rows) => fc.tuple(fc.constant(rows), fc.shuffledSubarray(rows, { minLength: rows.length, maxLength: rows.length })));
    fc.assert(
      fc.property(shuffled, ([rows, other]) => {
        expect(pullList(other)).toEqual(pullList(rows));
      }),
    );
  });

  it("loses and adds no plant: lines, kinds, beds and the whole add up to what was asked", () => {
    fc.assert(
      fc.property(fc.array(anyRow, { maxLength: 30 }), (rows) => {
        const list = pullList(rows);
        const sum = (items: readonly { quantity: number }[]) => items.reduce((total, item) => total + item.quantity, 0);
        const lines = list.groups.flatMap((group) => group.lines);
        const asked = sum(rows.filter((r) => !r.existing));
        expect([list.quantity, sum(list.groups), sum(lines), sum(list.beds), sum(lines.flatMap((line) => line.split))]).toEqual(Array(5).fill(asked));
        for (const t of [maple, inkberry, coneflower])
          expect(sum(lines.filter((line) => line.taxon.id === t.id))).toBe(sum(rows.filter((r) => r.taxon.id === t.id && !r.existing)));
      }),
    );
  });
});
