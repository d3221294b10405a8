// Against a real database: what a newcomer finds in the nursery.
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { databaseCopy } from "../../tests/support/base-database";
import { database } from "./database";
import { demoStockPlant } from "./demo-stock";
import { lotAdd, lotDelete, lotList } from "./lots";
import { placeList } from "./stock-places";

let copy: ReturnType<typeof databaseCopy>;
beforeAll(() => {
  copy = databaseCopy();
  process.env.DATABASE_URL = copy.url;
});
afterAll(async () => {
  await database().$disconnect();
  copy.remove();
});

describe("the demo's stock", () => {
  it("is not planted where there are lots already, and not later either", async () => {
    const answer = await lotAdd("acer-rubrum", { quantity: 3 });
    await demoStockPlant(() => {});
    expect(await lotList()).toHaveLength(1);
    if (answer.kind === "saved") await lotDelete(answer.lot.id);
    await database().lot.deleteMany();
    await demoStockPlant(() => {});
    expect(await lotList()).toEqual([]);
  });
  it("is planted once into an empty nursery: two fields and a yard, a price missing, a lot not ready before spring", async () => {
    await database().mark.delete({ where: { key: "demo stock" } });
    const said: string[] = [];
    await demoStockPlant((line) => said.push(line));
    await demoStockPlant((line) => said.push(line));
    expect(said).toEqual(["demo: the firm's stock, 26 lots"]);
    const lots = await lotList();
    expect(lots).toHaveLength(26);
    expect(lots.filter((lot) => lot.priceCents === null)).toHaveLength(1);
    expect(lots.filter((lot) => lot.readyFrom?.endsWith("-04-20"))).toHaveLength(1);
    expect(lots.filter((lot) => lot.countedAt === null)).toHaveLength(2);
    expect((await placeList()).map((place) => place.text)).toEqual([
      "North field, row 1",
      "North field, row 2",
      "North field, row 3",
      "South field, row 1",
      "South field, row 2",
      "Yard, bay 1",
      "Yard, bay 2",
      "Yard, bay 3",
      "Yard, bay 4",
      "Yard, heel-in bed",
    ]);
  });
});
