// Against a real database: no plant is ever promised twice, however many ask for it at once, in one process or in several.
import { spawn } from "node:child_process";
import path from "node:path";
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { databaseCopy } from "../../tests/support/base-database";
import { bedCreate, bedFind } from "./beds";
import { database } from "./database";
import { jobCreate } from "./jobs";
import { lotEventsOf } from "./lot-events";
import { lotMove, lotWriteOff } from "./lot-move";
import { lotAdd, lotChange, lotDelete, lotFind } from "./lots";
import { type ReserveAnswer, reservationPull, reservationRelease, reservationsMake, reservationsOfJob, reservationsReleaseJob } from "./reservations";
import { stockLots } from "./stock-lots";

const TAXON = "hydrangea-paniculata-limelight";
const ROOT = path.resolve(import.meta.dirname, "../..");
type Wants = { readonly jobId: string; readonly bedId: string; readonly rowIds: readonly string[] };
let copy: ReturnType<typeof databaseCopy>;
let wants: Wants;

async function jobMade(name: string, rows: number): Promise<Wants> {
  const jobId = await jobCreate(name);
  const row = (i: number) => ({
    id: `r${i}`,
    taxonId: TAXON,
    taxonName: "x",
    quantity: { by: "count", count: 9 } as const,
    spacingFt: null,
    size: "#3",
    remarks: "",
    existing: false,
  });
  const bedId = await bedCreate(jobId, {
    name: "Bed",
    size: { by: "rectangle", lengthFt: 20, widthFt: 10 },
    site: { light: "sun", moisture: "average", ph: null, salt: "none", deer: "none", faces: "" },
    notes: "",
    rows: Array.from({ length: rows }, (_, i) => row(i)),
  });
  return { jobId, bedId, rowIds: (await bedFind(bedId))?.bed.rows.map((r) => r.id) ?? [] };
}

async function lotMade(quantity: number, more: object = {}): Promise<string> {
  const answer = await lotAdd(TAXON, { quantity, size: "#3", ...more });
  if (answer.kind !== "saved") throw new Error(JSON.stringify(answer));
  return answer.lot.id;
}

const pick = (lotId: string, quantity: number, row = 0, of = wants) => ({ lotId, bedId: of.bedId, rowId: of.rowIds[row] ?? "", quantity, steps: 0 });
const kinds = (answers: readonly ReserveAnswer[], kind: string) => answers.filter((answer) => answer.kind === kind);

/** What must hold of every lot at any moment. */
async function expectHolds(): Promise<void> {
  const [lots, sums] = await Promise.all([database().lot.findMany(), database().reservation.groupBy({ by: ["lotId"], _sum: { open: true } })]);
  const open = new Map(sums.map((sum) => [sum.lotId, sum._sum.open ?? 0]));
  for (const lot of lots) {
    expect(lot.quantity).toBeGreaterThanOrEqual(0);
    expect(lot.reserved).toBeLessThanOrEqual(lot.quantity);
    expect(lot.reserved).toBe(open.get(lot.id) ?? 0);
  }
}

beforeAll(async () => {
  copy = databaseCopy();
  process.env.DATABASE_URL = copy.url;
  wants = await jobMade("Library court", 60);
});
afterAll(async () => {
  await database().$disconnect();
  copy.remove();
});

describe("promising plants", () => {
  it("takes all picks or none, and names the lot that has too few", async () => {
    const [a, b] = [await lotMade(10), await lotMade(2)];
    const answer = await reservationsMake(wants.jobId, [pick(a, 4), pick(b, 3, 1)], "Ada");
    expect(answer).toMatchObject({ kind: "short", lotId: b, wanted: 3, free: 2 });
    expect(answer.kind === "short" && answer.message).toMatch(/'Limelight' #3: 3 plants wanted, only 2 free \(2 on hand, 0 promised\)/);
    expect(await lotFind(a)).toMatchObject({ reserved: 0 });
    expect(await reservationsMake(wants.jobId, [pick(a, 4), pick(a, 2), pick(b, 2, 1)], "Ada")).toEqual({ kind: "reserved", count: 8 });
    expect((await reservationsOfJob(wants.jobId)).map(({ open, lot }) => [lot.id, open, lot.reserved, lot.onHand])).toEqual([
      [a, 6, 6, 10],
      [b, 2, 2, 2],
    ]);
    expect((await lotEventsOf(a))[0]).toMatchObject({ kind: "reserve", who: "Ada", why: "Library court", before: { reserved: 0 }, after: { reserved: 6 } });
    expect((await stockLots([TAXON])).find((lot) => lot.id === a)).toMatchObject({ onHand: 10, reserved: 6, owner: { kind: "own" }, size: { containerClass: "#3" } });
    await expectHolds();
    expect(await reservationsReleaseJob(wants.jobId, "Ada", "not sold")).toEqual({ kind: "done", count: 8 });
    expect(await reservationsOfJob(wants.jobId)).toEqual([]);
    await expectHolds();
  });
  it("refuses what is no whole number, another job's bed, and a row that has gone", async () => {
    const lot = await lotMade(5);
    const other = await jobMade("Other", 1);
    for (const bad of [pick(lot, 0), pick(lot, 1.5), pick(lot, -2), pick(lot, 1, 0, other), { ...pick(lot, 1), rowId: "gone" }, pick("no lot", 1)])
      expect(await reservationsMake(wants.jobId, [bad], "")).toMatchObject({ kind: "fault", message: expect.stringMatching(/\w/) });
    expect(await reservationsMake("nobody", [pick(lot, 1)], "")).toMatchObject({ kind: "fault" });
    expect(await lotFind(lot)).toMatchObject({ reserved: 0 });
  });
  it("pulls what is open and no more, puts back what was pulled and no more, and releases the rest", async () => {
    const lot = await lotMade(9);
    await reservationsMake(wants.jobId, [pick(lot, 6)], "");
    const [reservation] = await reservationsOfJob(wants.jobId);
    const id = reservation?.id ?? "";
    expect(await reservationPull(id, 7, "")).toMatchObject({ kind: "fault", message: expect.stringContaining("Only 6 plants") });
    expect(await reservationPull(id, 4, "Ben")).toEqual({ kind: "done", count: 4 });
    expect(await lotFind(lot)).toMatchObject({ quantity: 5, reserved: 2 });
    expect(await reservationPull(id, -5, "")).toMatchObject({ kind: "fault" });
    expect(await reservationPull(id, -1, "Ben")).toMatchObject({ kind: "done" });
    expect((await reservationsOfJob(wants.jobId))[0]).toMatchObject({ open: 3, pulled: 3, lot: { onHand: 6, reserved: 3 } });
    expect(await reservationRelease(id, 4, "", "")).toMatchObject({ kind: "fault" });
    expect(await reservationRelease(id, null, "", "enough")).toEqual({ kind: "done", count: 3 });
    expect((await reservationsOfJob(wants.jobId))[0]).toMatchObject({ open: 0, pulled: 3, lot: { onHand: 6, reserved: 0 } });
    await expectHolds();
  });
  it("is refused a lot's deletion and a count below what is promised, with the job named, and the count holds when it is meant", async () => {
    const lot = await lotMade(10);
    await reservationsMake(wants.jobId, [pick(lot, 3, 1)], "");
    await reservationsMake(wants.jobId, [pick(lot, 5, 2)], "");
    expect(await lotDelete(lot)).toContain("8 to Library court promised");
    const refused = await lotChange(lot, 1, { quantity: 4 }, { who: "Ada" });
    expect(refused).toMatchObject({ kind: "promised", message: "8 plants of this lot promised: 8 to Library court. With only 4 on hand, 4 plants would be missing." });
    expect(await lotFind(lot)).toMatchObject({ quantity: 10, reserved: 8, version: 1 });
    const meant = await lotChange(lot, 1, { quantity: 4 }, { who: "Ada" }, { anyway: true });
    expect(meant).toMatchObject({ kind: "saved", lot: { quantity: 4, reserved: 4 }, released: ["Library court (4 plants)"] });
    // The newest promise gave way.
    expect((await reservationsOfJob(wants.jobId)).filter((r) => r.lot.id === lot).map((r) => r.open)).toEqual([3, 1]);
    expect((await lotEventsOf(lot)).slice(0, 2).map(({ kind, who, why }) => [kind, who, why])).toEqual([
      ["count", "Ada", ""],
      ["release", "Ada", "counted 4: Library court goes short"],
    ]);
    await expectHolds();
  });
});

describe("many at once", () => {
  it("fifty who ask for a lot with too few get no more than there are, and the refused are told", async () => {
    const lot = await lotMade(83);
    const answers = await Promise.all(Array.from({ length: 50 }, (_, i) => reservationsMake(wants.jobId, [pick(lot, 3, i)], `asker ${i}`)));
    expect([kinds(answers, "reserved").length, kinds(answers, "short").length]).toEqual([27, 23]);
    for (const answer of answers) if (answer.kind === "short") expect(answer.message).toMatch(/3 plants wanted, only 2 free/);
    expect(await lotFind(lot)).toMatchObject({ quantity: 83, reserved: 81 });
    await expectHolds();
  });
  it("four processes of twelve askers each, and this one, do no better", async () => {
    const lot = await lotMade(100);
    const process4 = [0, 1, 2, 3].map(
      (i) =>
        new Promise<ReserveAnswer[]>((resolve, reject) => {
          const child = spawn(process.execPath, ["node_modules/tsx/dist/cli.mjs", "tests/support/reserver.ts", wants.jobId, lot, wants.bedId, wants.rowIds[i] ?? "", "12", "3"], {
            cwd: ROOT,
            env: { ...process.env, DATABASE_URL: copy.url },
          });
          let [out, err] = ["", ""];
          child.stdout.on("data", (data) => {
            out += String(data);
          });
          child.stderr.on("data", (data) => {
            err += String(data);
          });
          child.on("error", reject);
          child.on("close", (code) => (code === 0 ? resolve(JSON.parse(out) as ReserveAnswer[]) : reject(new Error(err))));
        }),
    );
    const here = Array.from({ length: 12 }, (_, i) => reservationsMake(wants.jobId, [pick(lot, 3, 10 + i)], "here"));
    const answers = (await Promise.all([Promise.all(here), ...process4])).flat();
    expect(answers).toHaveLength(60);
    expect([kinds(answers, "reserved").length, kinds(answers, "short").length]).toEqual([33, 27]);
    expect(await lotFind(lot)).toMatchObject({ quantity: 100, reserved: 99 });
    await expectHolds();
  });
});

describe("counts, moves, promises, releases, pulls and write-offs in any order, at once", () => {
  type Act = { readonly act: number; readonly lot: number; readonly n: number };
  const acts = fc.array(fc.record({ act: fc.nat(7), lot: fc.nat(3), n: fc.integer({ min: 1, max: 9 }) }), { minLength: 15, maxLength: 45 });
  it("never promise a plant twice, and neither lose nor make one", async () => {
    const succeeded = new Map<string, number>();
    const tell = (kind: string, answer: { readonly kind: string }) => succeeded.set(`${kind} ${answer.kind}`, (succeeded.get(`${kind} ${answer.kind}`) ?? 0) + 1);
    await fc.assert(
      fc.asyncProperty(acts, async (list) => {
        const of = await jobMade("Any order", 4);
        const first = await lotMade(12);
        const lots = [first, await lotMade(6, { place: "Yard" }), await lotMade(0)];
        // Plants that a count, a write-off or a pull has put in or taken out.
        let outside = 0;
        const done = async ({ act, lot: which, n }: Act): Promise<void> => {
          const id = lots[which % lots.length] ?? first;
          const lot = await lotFind(id);
          const promises = await reservationsOfJob(of.jobId);
          const held = promises[which % Math.max(1, promises.length)];
          if (!lot) return;
          if (act === 0) tell("reserve", await reservationsMake(of.jobId, [pick(id, n, which, of)], ""));
          if (act === 1) await reservationsMake(of.jobId, [pick(id, n, 0, of), pick(lots[0] ?? "", 1, 1, of)], "");
          if (act === 2 && held) tell("release", await reservationRelease(held.id, Math.min(n, held.open) || null, "", ""));
          if (act === 3 && held) {
            const pulled = await reservationPull(held.id, n % 3 ? Math.ceil(n / 3) : -1, "");
            tell("pull", pulled);
            if (pulled.kind === "done") outside -= pulled.count;
          }
          if (act === 4 || act === 5) {
            const answer =
              act === 4
                ? await lotChange(id, lot.version, { quantity: n % 6 }, { who: "" }, { anyway: n % 2 === 0 })
                : await lotWriteOff(id, lot.version, { quantity: n, why: "deer" }, { who: "" }, { anyway: n % 2 === 0 });
            tell(act === 4 ? "count" : "write off", answer);
            if (answer.kind === "saved") outside += answer.lot.quantity - lot.quantity;
          }
          if (act === 6 || act === 7) {
            const answer = await lotMove(id, lot.version, { quantity: n, place: `Block ${n}`, jobs: act === 7 ? [of.jobId] : [] }, { who: "" });
            tell("move", answer);
            if (answer.kind === "saved" && answer.lot.id !== id) lots.push(answer.lot.id);
          }
        };
        for (let i = 0; i < list.length; i += 5) {
          await Promise.all(list.slice(i, i + 5).map(done));
          await expectHolds();
        }
        const sum = await database().lot.aggregate({ where: { id: { in: lots } }, _sum: { quantity: true } });
        expect(sum._sum.quantity).toBe(18 + outside);
        await reservationsReleaseJob(of.jobId, "", "");
        await expectHolds();
        await database().reservation.deleteMany({ where: { jobId: of.jobId } });
        await database().lot.deleteMany({ where: { id: { in: lots } } });
      }),
      { numRuns: 20, seed: 20261125 },
    );
    // Each was done and each was refused several times, or this has shown little.
    for (const outcome of [
      "reserve reserved",
      "reserve short",
      "release done",
      "pull done",
      "pull fault",
      "count saved",
      "count promised",
      "count stale",
      "write off saved",
      "write off promised",
      "move saved",
      "move fault",
    ])
      expect(succeeded.get(outcome) ?? 0, outcome).toBeGreaterThan(2);
  }, 240_000);
});
