// Against a real database: counts that come at once, and that no lot is ever negative.
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { databaseCopy } from "../../tests/support/base-database";
import { database } from "./database";
import { lotAdd, lotChange, lotDelete, lotList, lotRestore, onHandByTaxon, type StoredLot } from "./lots";

const TAXON = "hydrangea-paniculata-limelight";
let copy: ReturnType<typeof databaseCopy>;
beforeAll(() => {
  copy = databaseCopy();
  process.env.DATABASE_URL = copy.url;
});
afterAll(async () => {
  await database().$disconnect();
  copy.remove();
});

async function added(input: object = {}): Promise<StoredLot> {
  const answer = await lotAdd(TAXON, input);
  if (answer.kind !== "saved") throw new Error(JSON.stringify(answer));
  return answer.lot;
}
const found = async (id: string): Promise<StoredLot | undefined> => (await lotList()).find((lot) => lot.id === id);

describe("a lot in the database", () => {
  it("starts with none on hand and not counted, under the plant's present name", async () => {
    const lot = await added({ place: "  Yard bay 3 " });
    expect(lot).toMatchObject({ taxonId: TAXON, taxonName: "Hydrangea paniculata 'Limelight'", place: "Yard, bay 3", quantity: 0, countedAt: null, version: 1 });
    await lotDelete(lot.id);
  });
  it("is not added for a plant that is not there", async () => {
    expect(await lotAdd("nobody")).toMatchObject({ kind: "fault", field: "taxonId" });
  });
  it("has the date of its count when the quantity is given, and only then", async () => {
    const lot = await added();
    expect(await lotChange(lot.id, 1, { remarks: "behind the shed" })).toMatchObject({ kind: "saved", lot: { countedAt: null, version: 2 } });
    const answer = await lotChange(lot.id, 2, { quantity: 12 });
    expect(answer).toMatchObject({ kind: "saved", lot: { quantity: 12, version: 3, remarks: "behind the shed" } });
    expect(Date.parse((await found(lot.id))?.countedAt ?? "")).toBeGreaterThan(Date.now() - 60_000);
    await lotDelete(lot.id);
  });
  it.each([
    ["a negative count", { quantity: -1 }, "quantity"],
    ["half a plant", { quantity: 1.5 }, "quantity"],
    ["a count that is no number", { quantity: "7" }, "quantity"],
    ["a negative price", { priceCents: -5 }, "priceCents"],
    ["a place longer than a sign", { place: "x".repeat(81) }, "place"],
    ["a field that is not a lot's to change", { version: 99 }, ""],
  ])("refuses %s with the field and changes nothing", async (_, change, field) => {
    const lot = await added({ quantity: 5 });
    const answer = await lotChange(lot.id, 1, change);
    expect(answer).toMatchObject({ kind: "fault", field });
    expect(answer.kind === "fault" && answer.message).toMatch(/\w/);
    expect(await found(lot.id)).toEqual(lot);
    await lotDelete(lot.id);
  });
  it("cannot be made negative past the program either: the database refuses", async () => {
    const lot = await added({ quantity: 5 });
    await expect(database().lot.update({ where: { id: lot.id }, data: { quantity: { decrement: 6 } } })).rejects.toThrow();
    await expect(database().lot.update({ where: { id: lot.id }, data: { quantity: -1 } })).rejects.toThrow();
    expect((await found(lot.id))?.quantity).toBe(5);
    await lotDelete(lot.id);
  });
});

describe("counts at once", () => {
  it("take one of fifty for each version, hand the winner's lot to the others, and never go below zero", async () => {
    const lot = await added({ quantity: 50 });
    let base = lot;
    for (let round = 0; round < 3; round++) {
      // Each tenth of them is a count that must be refused outright.
      const answers = await Promise.all(Array.from({ length: 50 }, (_, i) => lotChange(lot.id, base.version, { quantity: i % 10 === 0 ? -i - 1 : 100 * round + i })));
      const kinds = (kind: string) => answers.filter((a) => a.kind === kind);
      expect([kinds("saved").length, kinds("stale").length, kinds("fault").length]).toEqual([1, 44, 5]);
      const [winner] = answers.flatMap((a) => (a.kind === "saved" ? [a.lot] : []));
      if (!winner) throw new Error("nobody won");
      expect(winner.version).toBe(base.version + 1);
      for (const answer of answers) if (answer.kind === "stale") expect(answer.theirs).toEqual(winner);
      expect(await found(lot.id)).toEqual(winner);
      expect(winner.quantity).toBeGreaterThanOrEqual(0);
      base = winner;
    }
    await lotDelete(lot.id);
  });
});

describe("what is on hand", () => {
  it("is the sum of a plant's lots, without those deleted and those at zero", async () => {
    expect(await onHandByTaxon()).toEqual({});
    const [a, b] = [await added({ quantity: 7, place: "Row 1" }), await added({ quantity: 5, place: "Row 2" })];
    const other = await lotAdd("acer-rubrum", { quantity: 0 });
    expect(other.kind).toBe("saved");
    expect(await onHandByTaxon()).toEqual({ [TAXON]: 12 });
    await lotDelete(b.id);
    expect(await onHandByTaxon()).toEqual({ [TAXON]: 7 });
    expect(await lotChange(b.id, b.version + 1, { quantity: 1 })).toMatchObject({ kind: "gone" });
    await lotRestore(b.id);
    expect(await onHandByTaxon()).toEqual({ [TAXON]: 12 });
    expect(await lotChange(b.id, b.version, { quantity: 1 })).toMatchObject({ kind: "stale", theirs: { quantity: 5 } });
    await Promise.all([a.id, b.id].map((id) => lotDelete(id)));
    expect(await onHandByTaxon()).toEqual({});
  });
});
