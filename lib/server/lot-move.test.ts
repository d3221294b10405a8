// Against a real database: lots moved whole and in part, and written off, with the history that tells of it.
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { databaseCopy } from "../../tests/support/base-database";
import { lotEventText } from "../nursery/lot-event";
import { bedCreate, bedFind } from "./beds";
import { database } from "./database";
import { jobCreate } from "./jobs";
import { lotEventsLatest, lotEventsOf } from "./lot-events";
import { lotMove, lotWriteOff } from "./lot-move";
import { lotAdd, lotFind } from "./lots";
import { reservationsMake, reservationsOfJob } from "./reservations";

const BY = { who: "Ada" };
let copy: ReturnType<typeof databaseCopy>;
beforeAll(() => {
  copy = databaseCopy();
  process.env.DATABASE_URL = copy.url;
});
afterAll(async () => {
  await database().$disconnect();
  copy.remove();
});

async function maples(quantity = 12): Promise<string> {
  const answer = await lotAdd("acer-rubrum", { quantity, size: "2 in cal", place: "North field, row 4", priceCents: 18_500, grade: "specimen" }, BY);
  if (answer.kind !== "saved") throw new Error(JSON.stringify(answer));
  return answer.lot.id;
}
/** Jobs of one bed and one row to which so many plants of the lot are promised. */
async function promised(lotId: string, name: string, quantity: number): Promise<string> {
  const jobId = await jobCreate(name);
  const bedId = await bedCreate(jobId, {
    name: "Lawn",
    size: { by: "rectangle", lengthFt: 20, widthFt: 10 },
    site: { light: "sun", moisture: "average", ph: null, salt: "none", deer: "none", faces: "" },
    notes: "",
    rows: [{ id: "r", taxonId: "acer-rubrum", taxonName: "Acer rubrum", quantity: { by: "count", count: quantity }, spacingFt: null, size: "", remarks: "", existing: false }],
  });
  const rowId = (await bedFind(bedId))?.bed.rows[0]?.id ?? "";
  expect(await reservationsMake(jobId, [{ lotId, bedId, rowId, quantity, steps: 0 }], "")).toMatchObject({ kind: "reserved" });
  return jobId;
}
const told = async (id: string) => (await lotEventsOf(id)).map((event) => [lotEventText(event), event.why]);

describe("a lot that is moved", () => {
  it("whole stays the same lot at another place, size and price", async () => {
    const id = await maples();
    const answer = await lotMove(id, 1, { quantity: 12, place: "yard bay 3", size: "2 in cal B&B", priceCents: 24_000 }, BY);
    expect(answer).toMatchObject({ kind: "saved", lot: { id, quantity: 12, place: "Yard, bay 3", size: "2 in cal B&B", priceCents: 24_000, version: 2 } });
    expect((await told(id))[0]).toEqual(["Moved: size “2 in cal” → “2 in cal B&B”; place “North field, row 4” → “Yard, bay 3”; price $185.00 → $240.00", ""]);
  });
  it("in part makes a second lot, with a line in the history of both", async () => {
    const id = await maples();
    const answer = await lotMove(id, 1, { quantity: 5, place: "Yard, bay 3", size: "2 in cal B&B", priceCents: 24_000, why: "dug and heeled in" }, BY);
    if (answer.kind !== "saved") throw new Error(JSON.stringify(answer));
    expect(answer.lot).toMatchObject({ quantity: 5, reserved: 0, place: "Yard, bay 3", size: "2 in cal B&B", priceCents: 24_000, grade: "specimen" });
    expect(await lotFind(id)).toMatchObject({ quantity: 7, place: "North field, row 4", size: "2 in cal", priceCents: 18_500, version: 2 });
    expect((await told(id))[0]).toEqual(["Moved: on hand 12 → 7", "5 plants to Yard, bay 3; dug and heeled in"]);
    expect((await told(answer.lot.id))[0]?.[1]).toBe("from North field, row 4; dug and heeled in");
  });
  it("takes the promises along of the jobs it is dug for, and leaves the others what they were promised", async () => {
    const id = await maples(10);
    const [library, school] = [await promised(id, "Library", 4), await promised(id, "School", 3)];
    expect(await lotMove(id, 1, { quantity: 4, place: "Yard" }, BY)).toMatchObject({
      kind: "fault",
      field: "quantity",
      message: expect.stringContaining("Only 3 plants can be moved: 4 to Library, 3 to School promised"),
    });
    expect(await lotMove(id, 1, { quantity: 3, place: "Yard", jobs: [library] }, BY)).toMatchObject({ kind: "fault", message: expect.stringContaining("Move at least 4") });
    const answer = await lotMove(id, 1, { quantity: 6, place: "Yard", jobs: [library] }, BY);
    if (answer.kind !== "saved") throw new Error(JSON.stringify(answer));
    expect(answer.lot).toMatchObject({ quantity: 6, reserved: 4 });
    expect(await lotFind(id)).toMatchObject({ quantity: 4, reserved: 3 });
    expect((await reservationsOfJob(library))[0]).toMatchObject({ open: 4, lot: { id: answer.lot.id } });
    expect((await reservationsOfJob(school))[0]).toMatchObject({ open: 3, lot: { id } });
  });
  it("is refused more than stand there, no place, and a version that has passed", async () => {
    const id = await maples();
    expect(await lotMove(id, 1, { quantity: 13, place: "Yard" }, BY)).toMatchObject({
      kind: "fault",
      field: "quantity",
      message: expect.stringContaining("Only 12 plants on hand"),
    });
    expect(await lotMove(id, 1, { quantity: 0, place: "Yard" }, BY)).toMatchObject({ kind: "fault", field: "quantity" });
    expect(await lotMove(id, 1, { quantity: 2, place: " " }, BY)).toMatchObject({ kind: "fault", field: "place", message: expect.stringContaining("Say where it goes") });
    expect(await lotMove(id, 2, { quantity: 2, place: "Yard" }, BY)).toMatchObject({ kind: "stale", theirs: { quantity: 12 } });
    expect(await lotFind(id)).toMatchObject({ quantity: 12, version: 1 });
  });
});

describe("a write-off", () => {
  it("needs a reason, takes no more than there are, and is told in the history", async () => {
    const id = await maples();
    expect(await lotWriteOff(id, 1, { quantity: 2, why: " " }, BY)).toMatchObject({ kind: "fault", field: "why" });
    expect(await lotWriteOff(id, 1, { quantity: 13, why: "deer" }, BY)).toMatchObject({
      kind: "fault",
      field: "quantity",
      message: "Only 12 plants on hand; 13 cannot be written off.",
    });
    expect(await lotWriteOff(id, 1, { quantity: 2, why: "deer" }, BY)).toMatchObject({ kind: "saved", lot: { quantity: 10 } });
    expect((await lotEventsLatest(1))[0]).toMatchObject({ lotId: id, kind: "write off", who: "Ada", why: "deer", taxonName: "Acer rubrum" });
  });
  it("of promised plants is refused with the job named, and lets the promise go when it is meant", async () => {
    const id = await maples();
    await promised(id, "Town green", 11);
    expect(await lotWriteOff(id, 1, { quantity: 2, why: "winter kill" }, BY)).toMatchObject({ kind: "promised", message: expect.stringContaining("11 to Town green") });
    expect(await lotWriteOff(id, 1, { quantity: 2, why: "winter kill" }, BY, { anyway: true })).toMatchObject({
      kind: "saved",
      lot: { quantity: 10, reserved: 10 },
      released: ["Town green (1 plant)"],
    });
    expect((await told(id)).slice(0, 2)).toEqual([
      ["Written off 2 plants: on hand 12 → 10", "winter kill"],
      ["Promise released 1 plant: promised 11 → 10", "winter kill: Town green goes short"],
    ]);
  });
});
