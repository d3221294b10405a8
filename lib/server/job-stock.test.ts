// Against a real database: selling a job, reserving its plants, somebody else taking them meanwhile, a design that changes, and buying the rest.
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { databaseCopy } from "../../tests/support/base-database";
import type { BedRow } from "../ground/bed";
import { planPicks, planReleases } from "../pulls/stock-plan";
import { bedCreate, bedFind, bedSave } from "./beds";
import { database } from "./database";
import { jobRulesSet } from "./job-rules";
import { jobStageDate, jobStageRows, jobStageSet, jobStageView } from "./job-stages";
import { jobPurchaseList, jobStock } from "./job-stock";
import { jobPurchaseMove, jobSell, jobShortBuy, jobStockRelease, jobStockReserve } from "./job-stock-write";
import { jobCreate } from "./jobs";
import { reservationPull, reservationsMake, reservationsOfJob } from "./reservations";
import { today } from "./today";

const LIME = "hydrangea-paniculata-limelight";
const MAPLE = "acer-rubrum";
const NONE: ReadonlyMap<string, string> = new Map();
let copy: ReturnType<typeof databaseCopy>;
beforeAll(() => {
  copy = databaseCopy();
  process.env.DATABASE_URL = copy.url;
});
afterAll(async () => {
  await database().$disconnect();
  copy.remove();
});
beforeEach(async () => {
  const db = database();
  await db.reservation.deleteMany();
  await db.lotEvent.deleteMany();
  await db.lot.deleteMany();
  await db.supplier.deleteMany();
});

const rowOf = (id: string, count: number, more: Partial<BedRow> = {}): BedRow => ({
  id,
  taxonId: LIME,
  taxonName: "x",
  quantity: { by: "count", count },
  spacingFt: null,
  size: "#3",
  remarks: "",
  existing: false,
  ...more,
});

async function jobMade(name: string, rows: readonly BedRow[]): Promise<{ jobId: string; bedId: string }> {
  const jobId = await jobCreate(name);
  const bedId = await bedCreate(jobId, {
    name: "Bed",
    size: { by: "rectangle", lengthFt: 20, widthFt: 10 },
    site: { light: "sun", moisture: "average", ph: null, salt: "none", deer: "none", faces: "" },
    notes: "",
    rows,
  });
  return { jobId, bedId };
}

const lotMade = (id: string, quantity: number, more: object = {}) =>
  database().lot.create({ data: { id, taxonId: LIME, taxonName: "Hydrangea paniculata 'Limelight'", size: "#3", quantity, priceCents: 4200, ...more } });

async function planOf(jobId: string, chosen = NONE) {
  const stock = await jobStock(jobId, chosen);
  if (!stock) throw new Error("no job");
  return stock.plan;
}
async function shownOf(jobId: string, keys: readonly string[] | null = null, chosen = NONE) {
  return { keys, chosen, picks: planPicks(await planOf(jobId, chosen), keys) };
}
const heldOf = async (jobId: string) => (await reservationsOfJob(jobId)).map(({ lot, open, pulled }) => [lot.id, open, pulled]).sort();

async function rowsChanged(bedId: string, change: (rows: readonly BedRow[]) => readonly BedRow[]): Promise<void> {
  const found = await bedFind(bedId);
  if (!found) throw new Error("no bed");
  const answer = await bedSave(bedId, found.version, { ...found.bed, rows: change(found.bed.rows) });
  if (answer.kind !== "saved") throw new Error(JSON.stringify(answer));
}

/** What must hold of every lot at any moment. */
async function expectHolds(): Promise<void> {
  const [lots, sums] = await Promise.all([database().lot.findMany(), database().reservation.groupBy({ by: ["lotId"], _sum: { open: true } })]);
  for (const lot of lots) {
    expect(lot.reserved).toBe(sums.find(({ lotId }) => lotId === lot.id)?._sum.open ?? 0);
    expect(lot.reserved).toBeLessThanOrEqual(lot.quantity);
  }
}

describe("reserving the plants of a job", () => {
  it("promises all that is proposed, and afterwards proposes nothing more", async () => {
    const { jobId } = await jobMade("Court", [rowOf("r1", 6), rowOf("r2", 4)]);
    await lotMade("own", 12);
    expect(await jobStockReserve(jobId, await shownOf(jobId), "Ann")).toEqual({ kind: "done", message: "10 plants reserved." });
    expect((await heldOf(jobId)).reduce((sum, [, open]) => sum + Number(open), 0)).toBe(10);
    const plan = await planOf(jobId);
    expect([planPicks(plan, null), plan.groups.map(({ remaining, short }) => [remaining, short])]).toEqual([
      [],
      [
        [0, 0],
        [0, 0],
      ],
    ]);
    expect(await jobStockReserve(jobId, await shownOf(jobId), "Ann")).toMatchObject({ kind: "fault" });
    await expectHolds();
  });

  it("promises one group alone, and takes the lot that was chosen by hand", async () => {
    const { jobId, bedId } = await jobMade("Court", [rowOf("r1", 6), rowOf("r2", 4)]);
    const rowId = (await bedFind(bedId))?.bed.rows[1]?.id ?? "";
    await lotMade("near", 12);
    await lotMade("far", 12, { priceCents: 5000 });
    const key = `${bedId}:${rowId}`;
    const chosen = new Map([[key, "far"]]);
    expect(await jobStockReserve(jobId, await shownOf(jobId, [key], chosen), "Ann")).toMatchObject({ kind: "done" });
    expect(await heldOf(jobId)).toEqual([["far", 4, 0]]);
    await expectHolds();
  });

  it("writes nothing when another job took plants meanwhile, and names it", async () => {
    const { jobId } = await jobMade("Court", [rowOf("r1", 6)]);
    const other = await jobMade("Library", [rowOf("r9", 9)]);
    await lotMade("own", 10);
    await lotMade("dear", 40, { priceCents: 9900 });
    const shown = await shownOf(jobId);
    expect(shown.picks.map(({ lotId }) => lotId)).toEqual(["own"]);
    const otherRow = (await bedFind(other.bedId))?.bed.rows[0]?.id ?? "";
    expect(await reservationsMake(other.jobId, [{ lotId: "own", bedId: other.bedId, rowId: otherRow, quantity: 9, steps: 0 }], "Bob")).toMatchObject({ kind: "reserved" });
    const answer = await jobStockReserve(jobId, shown, "Ann");
    expect(answer.kind).toBe("changed");
    expect(answer.message).toContain("Hydrangea paniculata 'Limelight' #3: 6 wanted, only 1 free now; 9 promised to Library.");
    expect(await heldOf(jobId)).toEqual([]);
    // What is proposed now goes through.
    expect(await jobStockReserve(jobId, await shownOf(jobId), "Ann")).toMatchObject({ kind: "done" });
    expect(await heldOf(jobId)).toEqual([["dear", 6, 0]]);
    await expectHolds();
  });

  it("lets one of several screens of one job win, and never promises a plant twice", async () => {
    const { jobId } = await jobMade("Court", [rowOf("r1", 6)]);
    const rival = await jobMade("Library", [rowOf("r1", 6)]);
    await lotMade("own", 8);
    const [mine, theirs] = [await shownOf(jobId), await shownOf(rival.jobId)];
    const answers = await Promise.all([
      ...Array.from({ length: 4 }, () => jobStockReserve(jobId, mine, "Ann")),
      ...Array.from({ length: 4 }, () => jobStockReserve(rival.jobId, theirs, "Bob")),
    ]);
    expect(answers.filter(({ kind }) => kind === "done").length).toBe(1);
    await expectHolds();
  });

  it("keeps to the planting date and the sizes that the job allows", async () => {
    const { jobId } = await jobMade("Court", [rowOf("r1", 6)]);
    await lotMade("late", 10, { readyFrom: "2099-05-01" });
    await lotMade("five", 10, { size: "#5" });
    expect(await jobRulesSet(jobId, { plantingOn: "2099-04-01" })).toEqual({ kind: "done" });
    const [short] = (await planOf(jobId)).groups;
    expect(short?.short).toBe(6);
    expect(short?.why).toMatch(/Not ready by the planting date.*In other sizes: 10 of #5/);
    await jobRulesSet(jobId, { stepsAllowed: 1 });
    expect((await shownOf(jobId)).picks).toMatchObject([{ lotId: "five", steps: 1 }]);
    await jobRulesSet(jobId, { plantingOn: null });
    expect((await shownOf(jobId)).picks).toMatchObject([{ lotId: "late", steps: 0 }]);
    expect(await jobRulesSet(jobId, { plantingOn: "2099-02-31" })).toMatchObject({ kind: "fault" });
  });
});

describe("releasing", () => {
  it("frees one promise or all of the job's, but nothing that was pulled", async () => {
    const { jobId } = await jobMade("Court", [rowOf("r1", 6), rowOf("r2", 4)]);
    await lotMade("own", 12);
    await jobStockReserve(jobId, await shownOf(jobId), "Ann");
    const [first] = await reservationsOfJob(jobId);
    await reservationPull(first?.id ?? "", 2, "Ann");
    expect(await jobStockRelease(jobId, first?.id ?? "", "Ann")).toMatchObject({ kind: "done" });
    expect(await jobStockRelease(jobId, null, "Ann")).toMatchObject({ kind: "done" });
    expect(await heldOf(jobId)).toEqual([["own", 0, 2]]);
    expect((await database().lot.findUnique({ where: { id: "own" } }))?.quantity).toBe(10);
    expect(await jobStockRelease(jobId, null, "Ann")).toMatchObject({ kind: "changed" });
    await expectHolds();
  });

  it("of a promise of another job is refused", async () => {
    const { jobId } = await jobMade("Court", [rowOf("r1", 6)]);
    await lotMade("own", 12);
    await jobStockReserve(jobId, await shownOf(jobId), "Ann");
    const [first] = await reservationsOfJob(jobId);
    expect(await jobStockRelease(await jobCreate("Other"), first?.id ?? "", "Bob")).toMatchObject({ kind: "changed" });
    expect(await heldOf(jobId)).toEqual([["own", 6, 0]]);
  });
});

describe("a design that changes after its plants are reserved", () => {
  it("shows what no longer fits and is put right in one press: fewer, other size, other plant, row gone", async () => {
    const { jobId, bedId } = await jobMade("Court", [rowOf("r1", 6), rowOf("r2", 4), rowOf("r3", 3)]);
    await lotMade("own", 20);
    await lotMade("five", 20, { size: "#5" });
    await jobStockReserve(jobId, await shownOf(jobId), "Ann");
    await rowsChanged(bedId, ([a, b]) => [a, b].flatMap((row, i) => (row ? [i === 0 ? { ...row, quantity: { by: "count" as const, count: 5 } } : { ...row, size: "#5" }] : [])));
    const plan = await planOf(jobId);
    expect(
      planReleases(plan, null)
        .map(({ release }) => release)
        .sort(),
    ).toEqual([1, 3, 4]);
    expect(plan.astray).toHaveLength(1);
    expect(await jobStockReserve(jobId, await shownOf(jobId), "Ann")).toEqual({ kind: "done", message: "8 plants that no longer fit given back. 4 plants reserved." });
    expect(await heldOf(jobId)).toEqual([
      ["five", 4, 0],
      ["own", 5, 0],
    ]);
    expect(planReleases(await planOf(jobId), null)).toEqual([]);
    await expectHolds();
  });
});

describe("selling a job", () => {
  it("reserves its plants and is then reserved, each with its day and who", async () => {
    const { jobId } = await jobMade("Court", [rowOf("r1", 6)]);
    await lotMade("own", 12);
    const on = "2026-03-01";
    expect(await jobSell(jobId, await shownOf(jobId), on, "Ann")).toEqual({ kind: "done", message: "Sold. 6 plants reserved." });
    expect((await jobStageRows(jobId)).map(({ stage, on: day, who }) => [stage, day, who])).toEqual([
      ["sold", on, "Ann"],
      ["reserved", today().iso, "Ann"],
    ]);
    expect(await jobSell(jobId, await shownOf(jobId), on, "Ann")).toMatchObject({ kind: "changed" });
  });

  it("with plants short is sold, not reserved, and says how many are still to be found", async () => {
    const { jobId } = await jobMade("Court", [rowOf("r1", 6)]);
    await lotMade("own", 4);
    expect(await jobSell(jobId, await shownOf(jobId), today().iso, "Ann")).toEqual({
      kind: "done",
      message: "Sold. 4 plants reserved. 2 plants still to be found; they are named below.",
    });
    expect((await jobStageRows(jobId)).map(({ stage }) => stage)).toEqual(["sold"]);
    expect(await jobStageSet(jobId, "reserved", today().iso, "Ann", "")).toEqual({ kind: "done" });
  });

  it("is not sold when the plants were taken meanwhile", async () => {
    const { jobId } = await jobMade("Court", [rowOf("r1", 6)]);
    await lotMade("own", 6);
    const shown = await shownOf(jobId);
    await database().lot.update({ where: { id: "own" }, data: { quantity: 3 } });
    expect(await jobSell(jobId, shown, today().iso, "Ann")).toMatchObject({ kind: "changed" });
    expect(await jobStageRows(jobId)).toEqual([]);
    expect(await heldOf(jobId)).toEqual([]);
  });

  it("goes back with a reason, keeps the history, and has its days corrected", async () => {
    const { jobId } = await jobMade("Court", [rowOf("r1", 6)]);
    await lotMade("own", 6);
    await jobSell(jobId, await shownOf(jobId), "2026-03-01", "Ann");
    expect(await jobStageSet(jobId, "design", today().iso, "Bob", "")).toMatchObject({ kind: "fault" });
    expect(await jobStageSet(jobId, "design", today().iso, "Bob", "put off to spring")).toEqual({ kind: "done" });
    const rows = await jobStageRows(jobId);
    expect(rows.map(({ stage, who, note }) => [stage, who, note])).toEqual([
      ["sold", "Ann", ""],
      ["reserved", "Ann", ""],
      ["design", "Bob", "put off to spring"],
    ]);
    expect(await jobStageDate(jobId, rows[0]?.id ?? "", "2099-01-01")).toMatchObject({ kind: "fault" });
    expect(await jobStageDate(jobId, rows[0]?.id ?? "", "2026-03-05")).toEqual({ kind: "done" });
    expect((await jobStageRows(jobId))[0]?.on).toBe("2026-03-05");
  });

  it("counts what was pulled toward the stages", async () => {
    const { jobId } = await jobMade("Court", [rowOf("r1", 6)]);
    await lotMade("own", 6);
    await jobSell(jobId, await shownOf(jobId), today().iso, "Ann");
    const [first] = await reservationsOfJob(jobId);
    await reservationPull(first?.id ?? "", 6, "Ann");
    expect((await jobStageView(jobId))?.plants).toEqual({ wanted: 6, promised: 6, pulled: 6 });
  });
});

describe("buying the rest", () => {
  async function suppliersMade(): Promise<void> {
    await database().supplier.create({ data: { id: "s", name: "Valley", contact: "555-0101", minimumCents: 50_000, multiple: 5, leadDays: 14 } });
    await database().supplier.create({ data: { id: "t", name: "Hillside", multiple: 1 } });
  }

  it("lists what is reserved of suppliers' lots by supplier, rounded and dated, and what is on no order", async () => {
    const { jobId } = await jobMade("Court", [rowOf("r1", 6), rowOf("r2", 2, { taxonId: MAPLE })]);
    await suppliersMade();
    await lotMade("bought", 40, { supplierId: "s", code: "L3", priceCents: 2000 });
    await jobRulesSet(jobId, { plantingOn: "2099-04-15" });
    await jobStockReserve(jobId, await shownOf(jobId), "Ann");
    const list = await jobPurchaseList(jobId);
    expect(list?.suppliers).toMatchObject([
      {
        supplierName: "Valley",
        orderBy: "2099-04-01",
        late: false,
        cents: 20_000,
        belowMinimumCents: 30_000,
        lines: [{ code: "L3", wanted: 6, ordered: 10, extraCents: 8000, beds: ["Bed"] }],
      },
    ]);
    expect(list?.short).toMatchObject([{ taxonId: MAPLE, count: 2 }]);
  });

  it("puts what is short on a supplier's order, and takes it off again with the promise", async () => {
    const { jobId } = await jobMade("Court", [rowOf("r1", 6)]);
    await suppliersMade();
    const key = (await planOf(jobId)).groups[0]?.group.key ?? "";
    expect(await jobShortBuy(jobId, key, "t", "Ann")).toMatchObject({ kind: "done" });
    expect((await planOf(jobId)).groups[0]).toMatchObject({ remaining: 0, short: 0 });
    expect((await jobPurchaseList(jobId))?.suppliers).toMatchObject([{ supplierId: "t", unpricedPlants: 6, lines: [{ wanted: 6, cents: null }] }]);
    expect(await jobShortBuy(jobId, key, "t", "Ann")).toMatchObject({ kind: "changed" });
    await jobStockRelease(jobId, null, "Ann");
    expect(await database().lot.count({ where: { deletedAt: null } })).toBe(0);
    expect((await planOf(jobId)).groups[0]?.short).toBe(6);
    await expectHolds();
  });

  it("moves a line to another supplier's lot, whole or not at all", async () => {
    const { jobId } = await jobMade("Court", [rowOf("r1", 6)]);
    await suppliersMade();
    await lotMade("there", 40, { supplierId: "t", priceCents: 1500 });
    await jobStockReserve(jobId, await shownOf(jobId), "Ann");
    await lotMade("here", 40, { supplierId: "s", priceCents: 2000 });
    await lotMade("few", 3, { supplierId: "s", priceCents: 2000 });
    expect(await jobPurchaseMove(jobId, "there", "few", "Ann")).toMatchObject({ kind: "changed" });
    expect(await heldOf(jobId)).toEqual([["there", 6, 0]]);
    expect(await jobPurchaseMove(jobId, "there", "here", "Ann")).toEqual({ kind: "done", message: "6 plants moved." });
    expect(await heldOf(jobId)).toEqual([["here", 6, 0]]);
    await expectHolds();
  });
});
