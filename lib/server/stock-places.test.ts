// Against a real database: the walk through the firm's fields and yard.
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { databaseCopy } from "../../tests/support/base-database";
import { database } from "./database";
import { lotAdd, lotDelete, lotRestore } from "./lots";
import { placeAdd, placeDelete, placeList, placeRename, placesOrder } from "./stock-places";

let copy: ReturnType<typeof databaseCopy>;
beforeAll(() => {
  copy = databaseCopy();
  process.env.DATABASE_URL = copy.url;
});
afterAll(async () => {
  await database().$disconnect();
  copy.remove();
});
const texts = async () => (await placeList()).map((place) => place.text);
const idOf = async (text: string) => (await placeList()).find((place) => place.text === text)?.id ?? "";

describe("the places of a nursery", () => {
  it("stand in the order in which they were added, those of a block together", async () => {
    for (const [block, row, bay] of [
      ["A", "1", ""],
      ["Yard", "", "1"],
      ["A", "2", ""],
    ])
      expect(await placeAdd({ block, row, bay })).toMatchObject({ kind: "saved" });
    expect(await texts()).toEqual(["Block A, row 1", "Block A, row 2", "Yard, bay 1"]);
  });
  it("are made by a lot's place as it is typed, once", async () => {
    await lotAdd("acer-rubrum", { place: "yard bay 2", quantity: 3 });
    await lotAdd("acer-rubrum", { place: "YARD / bay 2", quantity: 4 });
    expect(await texts()).toEqual(["Block A, row 1", "Block A, row 2", "Yard, bay 1", "Yard, bay 2"]);
    expect((await placeList()).at(-1)).toMatchObject({ lots: 2, plants: 7 });
  });
  it("take an order set by hand, also when another window knew of fewer or of more", async () => {
    const [a1, y2] = [await idOf("Block A, row 1"), await idOf("Yard, bay 2")];
    await placesOrder([y2, "gone", a1, y2]);
    expect(await texts()).toEqual(["Yard, bay 2", "Block A, row 1", "Block A, row 2", "Yard, bay 1"]);
    expect((await placeList()).map((place) => place.position)).toEqual([0, 1, 2, 3]);
  });
  it("are renamed with what stands there, but not to a name that is taken or to nothing", async () => {
    const id = await idOf("Yard, bay 2");
    expect(await placeRename(id, { block: "yard", row: "", bay: "1" })).toMatchObject({ kind: "fault", message: "Yard, bay 1 is on the list already." });
    expect(await placeRename(id, { block: "", row: " ", bay: "" })).toMatchObject({ kind: "fault", message: expect.stringContaining("a block, a row or a bay") });
    expect(await placeRename(id, { block: "Shade house", row: "", bay: "2" })).toMatchObject({ kind: "saved" });
    expect((await placeList())[0]).toMatchObject({ text: "Shade house, bay 2", lots: 2 });
  });
  it("are deleted only when nothing stands there; a lot deleted there comes back without a place", async () => {
    expect(await placeDelete(await idOf("Block A, row 1"))).toMatchObject({ kind: "saved" });
    const full = await idOf("Shade house, bay 2");
    expect(await placeDelete(full)).toMatchObject({
      kind: "fault",
      message: "Shade house, bay 2 is not empty: Acer rubrum and 1 more lot stand there. Move what stands there first.",
    });
    const lots = await database().lot.findMany({ where: { placeId: full } });
    for (const lot of lots) await lotDelete(lot.id);
    expect(await placeDelete(full)).toMatchObject({ kind: "saved" });
    await lotRestore(lots[0]?.id ?? "");
    expect(await database().lot.findUnique({ where: { id: lots[0]?.id ?? "" } })).toMatchObject({ placeId: null, deletedAt: null });
    expect(await texts()).toEqual(["Block A, row 2", "Yard, bay 1"]);
  });
});
