import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { databaseCopy } from "../../tests/support/base-database";
import { EMPTY_BED } from "../ground/bed";

let copy: ReturnType<typeof databaseCopy>;
beforeAll(() => {
  copy = databaseCopy();
  process.env.DATABASE_URL = copy.url;
});
afterAll(() => copy.remove());

const row = (id: string, taxonName: string) => ({
  id,
  taxonId: "acer-rubrum",
  taxonName,
  quantity: { by: "count", count: 1 } as const,
  spacingFt: null,
  size: "#3",
  remarks: "",
  existing: false,
});

describe("the database", () => {
  it("does not lose an outside write when another transaction rolls back", async () => {
    const { database } = await import("./database");
    const db = database();
    const transaction = db.$transaction(async (tx) => {
      await tx.job.create({ data: { id: "inner", name: "inner" } });
      await new Promise((resolve) => setTimeout(resolve, 100));
      throw new Error("back");
    });
    const refused = expect(transaction).rejects.toThrow("back");
    await new Promise((resolve) => setTimeout(resolve, 30));
    await db.job.create({ data: { id: "outer", name: "outer" } });
    await refused;
    expect((await db.job.findMany()).map((j) => j.id)).toEqual(["outer"]);
  });

  it("is migrated and seeded once: a second run changes nothing", async () => {
    const { databaseMigrate } = await import("./migrate");
    const { databaseSeed } = await import("./seed");
    const said: string[] = [];
    expect(await databaseMigrate()).toEqual([]);
    await databaseSeed((line) => said.push(line));
    expect(said).toEqual([]);
  });

  it("holds every ZIP the packages know, with the zone where the table has one", async () => {
    const { database } = await import("./database");
    const db = database();
    expect(await db.zip.count()).toBeGreaterThan(39_000);
    expect(await db.zip.findUnique({ where: { zip: "05401" } })).toMatchObject({ state: "VT", zone: "5b" });
    expect((await db.zip.findUnique({ where: { zip: "96813" } }))?.zone).toBeNull();
  });
});

describe("saving a bed", () => {
  it("takes the newest version only, and hands back the other's bed when it comes too late", async () => {
    const { jobCreate } = await import("./jobs");
    const { bedCreate, bedFind, bedSave } = await import("./beds");
    const job = await jobCreate("Stale test");
    const id = await bedCreate(job, { ...EMPTY_BED, rows: [row("a", "Acer rubrum")] });
    const mine = { ...EMPTY_BED, name: "Mine", rows: [row("b", "Acer rubrum"), row("c", "Acer rubrum")] };
    expect(await bedSave(id, 1, mine)).toMatchObject({ kind: "saved", version: 2 });
    const late = await bedSave(id, 1, { ...EMPTY_BED, name: "Late" });
    expect(late).toMatchObject({ kind: "stale", theirs: { version: 2, bed: { name: "Mine" } } });
    expect((await bedFind(id))?.bed).toEqual(mine);
  });

  it("lets one of many simultaneous saves through", async () => {
    const { jobCreate } = await import("./jobs");
    const { bedCreate, bedSave } = await import("./beds");
    const id = await bedCreate(await jobCreate("Crowd"), EMPTY_BED);
    const answers = await Promise.all(Array.from({ length: 12 }, (_, i) => bedSave(id, 1, { ...EMPTY_BED, name: `n${i}` })));
    expect(answers.filter((a) => a.kind === "saved")).toHaveLength(1);
    expect(answers.filter((a) => a.kind === "stale")).toHaveLength(11);
  });

  it("refuses what cannot be on the ground, and leaves the bed as it was", async () => {
    const { jobCreate } = await import("./jobs");
    const { bedCreate, bedFind, bedSave } = await import("./beds");
    const id = await bedCreate(await jobCreate("Refusals"), EMPTY_BED);
    const bow = {
      by: "outline",
      points: [
        [0, 0],
        [10, 10],
        [10, 0],
        [0, 10],
      ],
    };
    for (const bad of [
      null,
      7,
      { ...EMPTY_BED, name: "" },
      { ...EMPTY_BED, size: { by: "rectangle", lengthFt: -1, widthFt: 3 } },
      { ...EMPTY_BED, size: bow },
      { ...EMPTY_BED, rows: [{ ...row("a", "x"), spacingFt: -2 }] },
    ]) {
      const answer = await bedSave(id, 1, bad);
      expect(answer.kind).toBe("fault");
    }
    expect(await bedFind(id)).toMatchObject({ version: 1, bed: EMPTY_BED });
  });

  it("imports a bed file whole or not at all", async () => {
    const { jobCreate } = await import("./jobs");
    const { bedImport } = await import("./bed-import");
    const { bedsOfJob } = await import("./beds");
    const job = await jobCreate("Import");
    const text = (name: string) =>
      JSON.stringify({
        place: { zip: "05401" },
        size: { lengthFt: 10, widthFt: 5 },
        plants: [
          { name: "Acer rubrum", quantity: 1 },
          { name, quantity: 2 },
        ],
      });
    expect(await bedImport(job, text("Quercus imaginaria"))).toMatchObject({ kind: "fault", field: "plants[1].name" });
    expect(await bedsOfJob(job)).toEqual([]);
    expect(await bedImport(job, text("Quercus rubra"))).toMatchObject({ kind: "imported" });
    expect((await bedsOfJob(job))[0]?.bed.rows.map((r) => r.taxonName)).toEqual(["Acer rubrum", "Quercus rubra"]);
  });
});
