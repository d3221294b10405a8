// Against a real database with the demo job: what the papers say of its beds, its reservations and its trucks.
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { databaseCopy } from "../../../tests/support/base-database";
import { paperRows } from "../../papers/paper";
import { sheetLines } from "../../pulls/pull-sheet";
import { database } from "../database";
import { jobPullSheet } from "../job-pull-sheet";
import { jobStock } from "../job-stock";
import { reservationsMake } from "../reservations";
import { truckAdd, truckChange, truckList, truckMove, truckRemove, USUAL_TRUCKS } from "../trucks";
import { jobLoads } from "./job-loads";
import { pullViewPaper, schedulePaper } from "./job-papers";
import { jobTags } from "./job-tags";

let copy: ReturnType<typeof databaseCopy>;
let jobId = "";
beforeAll(async () => {
  copy = databaseCopy({ demo: true });
  process.env.DATABASE_URL = copy.url;
  jobId = (await database().job.findFirst({ where: { demo: true } }))?.id ?? "";
});
afterAll(async () => {
  await database().$disconnect();
  copy.remove();
});

const plantsOf = async (): Promise<number> =>
  (await pullViewPaper(jobId, null, "kind"))?.paper.groups.reduce((sum, { rows }) => sum + rows.reduce((n, { cells }) => n + Number(cells.qty), 0), 0) ?? 0;

describe("the papers of a job", () => {
  it("open with the totals by kind while nothing is reserved, every plant not reserved", async () => {
    expect((await pullViewPaper(jobId, null, null))?.view).toBe("kind");
    const sheet = await jobPullSheet(jobId);
    expect(sheet?.sheet.stops.map(({ place }) => place)).toEqual(["Not reserved"]);
    expect(sheet?.sheet.plants).toBe(await plantsOf());
  });

  it("go by place once lots are reserved, with the same plants", async () => {
    await database().job.update({ where: { id: jobId }, data: { plantingOn: "2026-10-20", stepsAllowed: 1 } });
    const plan = (await jobStock(jobId))?.plan.groups ?? [];
    const picks = plan.flatMap(({ group, proposed }) => proposed.map(({ lot, quantity, steps }) => ({ lotId: lot.id, bedId: group.bedId, rowId: group.rowId, quantity, steps })));
    expect((await reservationsMake(jobId, picks, "Dana")).kind).toBe("reserved");
    const found = await pullViewPaper(jobId, null, null);
    expect(found?.view).toBe("place");
    expect(found?.paper.groups[0]?.heading).toMatch(/^North field/);
    expect(found?.paper.groups.at(-1)?.heading).toBe("Not reserved");
    expect((await jobPullSheet(jobId))?.sheet.plants).toBe(await plantsOf());
  });

  it("list what is to be dug with its ball, and the fall-dig hazard of the planting date", async () => {
    const dig = await pullViewPaper(jobId, null, "dig");
    const rows = dig ? paperRows(dig.paper) : [];
    expect(rows.length).toBeGreaterThan(0);
    for (const { cells } of rows) expect(cells.ball).toMatch(/\d+ × \d+ in|bare root/);
    expect(rows.map(({ caution }) => caution ?? "").join(" ")).toContain("Fall-dig hazard");
    expect(dig?.paper.notes.join(" ")).toContain("811");
  });

  it("are of one bed where it is named, and gone with it", async () => {
    const beds = (await jobPullSheet(jobId))?.beds ?? [];
    const [whole, one] = [await schedulePaper(jobId, null), await schedulePaper(jobId, beds[0]?.id ?? "")];
    expect(one?.bedName).toBe(beds[0]?.name);
    expect(one && whole && paperRows(one.paper).length < paperRows(whole.paper).length).toBe(true);
    expect([await schedulePaper(jobId, "nothing"), await pullViewPaper(jobId, "nothing", null), await pullViewPaper("nothing", null, null)]).toEqual([null, null, null]);
  });

  it("have a tag for every plant, with the address of its line", async () => {
    const tags = await jobTags(jobId, null, "plant", "http://nursery:3000");
    expect(tags?.set.tags).toHaveLength(await plantsOf());
    const lineIds = new Set(
      sheetLines((await jobPullSheet(jobId))?.sheet ?? { stops: [], plants: 0 }).map(({ lineId }) => `http://nursery:3000/jobs/${jobId}/pull/field#${lineId}`),
    );
    for (const { code } of tags?.set.tags ?? []) expect(lineIds.has(code), code).toBe(true);
  });
});

describe("trucks", () => {
  it("are added, moved, changed and removed, and wrong figures are refused with the field", async () => {
    for (const usual of USUAL_TRUCKS) expect((await truckAdd(usual)).kind).toBe("saved");
    const [first, second] = await truckList();
    await truckMove(second?.id ?? "", -1);
    expect((await truckList())[0]?.id).toBe(second?.id);
    expect(await truckChange(first?.id ?? "", { payloadLb: -5 })).toMatchObject({ kind: "fault", field: "payloadLb" });
    expect(await truckChange(first?.id ?? "", { clearFt: 7 })).toMatchObject({ kind: "saved", truck: { clearFt: 7, payloadLb: first?.payloadLb } });
    expect(await truckRemove(first?.id ?? "")).toMatchObject({ name: first?.name, clearFt: 7 });
    expect(await truckChange(first?.id ?? "", { clearFt: 7 })).toMatchObject({ kind: "fault" });
  });

  it("carry every plant of the job once, beds in the order chosen", async () => {
    const beds = (await jobPullSheet(jobId))?.beds ?? [];
    const last = beds.at(-1)?.id ?? "";
    const loads = await jobLoads(jobId, { beds: last, bought: null });
    expect(loads?.beds[0]?.id).toBe(last);
    const carried = loads?.plan.loads.reduce((sum, { items }) => sum + items.reduce((n, { quantity }) => n + quantity, 0), 0) ?? 0;
    const left = loads?.plan.left.reduce((sum, { quantity }) => sum + quantity, 0) ?? 0;
    expect(carried + left).toBe(await plantsOf());
    for (const load of loads?.plan.loads ?? []) expect(load.spots).toHaveLength(load.items.reduce((n, { quantity }) => n + quantity, 0));
  });
});
