// Against a real database: phones that send twice, that cross each other, and what becomes of the stock.
import { afterAll, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { databaseCopy } from "../../tests/support/base-database";
import { pullProgress } from "../pulls/pull-progress";
import { database } from "./database";
import { jobCreate } from "./jobs";
import { pullConflictSettle, pullEventsOfJob, pullEventsReceive, pullPhoto } from "./pull-events";

const PIXEL = "data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==";
let copy: ReturnType<typeof databaseCopy>;
let jobId = "";
let made = 0;
beforeAll(() => {
  copy = databaseCopy();
  process.env.DATABASE_URL = copy.url;
});
afterAll(async () => {
  await database().$disconnect();
  copy.remove();
});
beforeEach(async () => {
  jobId = await jobCreate("Pull test");
  made += 1;
  await database().lot.create({ data: { id: `lot${made}`, taxonId: "acer-rubrum", taxonName: "Acer rubrum", quantity: 10, reserved: 6 } });
  await database().reservation.create({ data: { id: `res${made}`, lotId: `lot${made}`, jobId, bedId: "bed", rowId: "row", open: 6 } });
});

let told = 0;
const event = (more: object) => ({
  id: `event-${told++}-abcdef`,
  lineId: `res${made}`,
  kind: "pulled",
  quantity: 1,
  who: "Ana",
  doneAt: "2026-04-20T08:00:00.000Z",
  knew: 0,
  ...more,
});
const lot = () => database().lot.findUniqueOrThrow({ where: { id: `lot${made}` } });
const reservation = () => database().reservation.findUniqueOrThrow({ where: { id: `res${made}` } });

describe("what comes from the field", () => {
  it("takes pulled plants out of the lot and out of what is promised", async () => {
    expect(await pullEventsReceive(jobId, [event({ quantity: 4 })])).toEqual({ kind: "received", added: 1, conflicts: 0 });
    expect(await lot()).toMatchObject({ quantity: 6, reserved: 2 });
    expect(await reservation()).toMatchObject({ open: 2, pulled: 4 });
  });
  it("counts an event once, however often the phone sends it", async () => {
    const once = event({ quantity: 2 });
    await pullEventsReceive(jobId, [once]);
    expect(await pullEventsReceive(jobId, [once, event({ quantity: 1, knew: 1 })])).toEqual({ kind: "received", added: 1, conflicts: 0 });
    expect(await reservation()).toMatchObject({ open: 3, pulled: 3 });
  });
  it("writes short and damaged plants off with the reason, and frees swapped ones", async () => {
    await pullEventsReceive(jobId, [
      event({ kind: "short", quantity: 1 }),
      event({ kind: "damaged", quantity: 2, knew: 1, note: "broken leader" }),
      event({ kind: "swapped", quantity: 1, knew: 2, data: "acer-saccharum" }),
    ]);
    expect(await lot()).toMatchObject({ quantity: 7, reserved: 2 });
    expect(await reservation()).toMatchObject({ open: 2, pulled: 0 });
    const history = await database().lotEvent.findMany({ where: { lotId: `lot${made}` }, orderBy: { at: "asc" } });
    expect(history.map((h) => h.kind)).toEqual(["write off", "write off", "release"]);
    expect(history[1]).toMatchObject({ who: "Ana", why: "damaged when pulling: broken leader" });
  });
  it("takes a correction back into the lot", async () => {
    await pullEventsReceive(jobId, [event({ quantity: 4 }), event({ quantity: -3, knew: 1 })]);
    expect(await lot()).toMatchObject({ quantity: 9, reserved: 5 });
    expect(await reservation()).toMatchObject({ open: 5, pulled: 1 });
  });
  it("brings a lot back that was deleted after its last plants were pulled, when some are put back", async () => {
    await pullEventsReceive(jobId, [event({ quantity: 6 })]);
    await database().lot.update({ where: { id: `lot${made}` }, data: { deletedAt: new Date() } });
    await pullEventsReceive(jobId, [event({ quantity: -2, knew: 1 })]);
    expect(await lot()).toMatchObject({ quantity: 6, reserved: 2, deletedAt: null });
  });
  it("keeps both of two phones' work and marks the one that did not know of the other", async () => {
    await pullEventsReceive(jobId, [event({ quantity: 4 })]);
    expect(await pullEventsReceive(jobId, [event({ quantity: 2, who: "Ben" })])).toMatchObject({ added: 1, conflicts: 1 });
    const line = () => pullEventsOfJob(jobId).then((events) => pullProgress(events).get(`res${made}`));
    expect(await line()).toMatchObject({ pulled: 6, conflict: true, events: 2 });
    await pullConflictSettle(jobId, `res${made}`);
    expect(await line()).toMatchObject({ pulled: 6, conflict: false });
  });
  it("records more than was left as a conflict, without taking it from the lot", async () => {
    expect(await pullEventsReceive(jobId, [event({ quantity: 7 })])).toMatchObject({ added: 1, conflicts: 1 });
    expect(await lot()).toMatchObject({ quantity: 10, reserved: 6 });
  });
  it("keeps notes and pictures of a line, the picture at an address of its own", async () => {
    await pullEventsReceive(jobId, [
      event({ kind: "note", quantity: 0, note: "gate code at the shed" }),
      event({ id: "picture-1", kind: "photo", quantity: 0, data: PIXEL, knew: 1 }),
    ]);
    const line = pullProgress(await pullEventsOfJob(jobId)).get(`res${made}`);
    expect(line).toMatchObject({ notes: ["gate code at the shed"], photos: [`/jobs/${jobId}/pull/field/photo/picture-1`] });
    expect(await pullPhoto(jobId, "picture-1")).toMatchObject({ mime: "image/png" });
  });
  it("takes all of a list or, where one of it cannot be read, none", async () => {
    expect(await pullEventsReceive(jobId, [event({}), event({ kind: "lost" })])).toMatchObject({ kind: "fault", message: /kind/ });
    expect(await pullEventsReceive("nowhere", [event({})])).toMatchObject({ kind: "fault", message: /no longer there/ });
    expect(await pullEventsOfJob(jobId)).toEqual([]);
  });
  it("takes the same event of many tries at once a single time", async () => {
    const once = event({ quantity: 2 });
    const answers = await Promise.allSettled(Array.from({ length: 20 }, () => pullEventsReceive(jobId, [once])));
    expect(answers.filter((a) => a.status === "fulfilled").length).toBe(20);
    expect(await reservation()).toMatchObject({ open: 4, pulled: 2 });
  });
  it("keeps a job from being deleted while plants are promised to it", async () => {
    const { jobDelete } = await import("./jobs");
    expect(await jobDelete(jobId)).toMatch(/6 plants are reserved/);
    await pullEventsReceive(jobId, [event({ quantity: 6 })]);
    expect(await jobDelete(jobId)).toBeNull();
  });
});
