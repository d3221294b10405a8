// Against a real database: a list read, confirmed, accepted; a second list; a fault in the middle; a cancelled reading.
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { databaseCopy } from "../../tests/support/base-database";
import { bedCreate, bedFind } from "./beds";
import { database } from "./database";
import { jobCreate } from "./jobs";
import { type ImportProgress, importAgain, importChoose, importFind, importStart } from "./list-import";
import { importAccept } from "./list-import-accept";
import { importChange, importNames, importShown } from "./list-import-view";
import { reservationsMake } from "./reservations";
import { supplierDelete, supplierFind, supplierList, supplierRestore, supplierSave } from "./suppliers";
import { unmatchedNames, unmatchedResolve } from "./unmatched-lines";

let copy: ReturnType<typeof databaseCopy>;
let supplierId = "";
beforeAll(async () => {
  copy = databaseCopy();
  process.env.DATABASE_URL = copy.url;
  const answer = await supplierSave(null, 0, { name: "Invented growers A", minimumCents: 50_000, multiple: 5, leadDays: 10 });
  if (answer.kind !== "saved") throw new Error(JSON.stringify(answer));
  supplierId = answer.supplier.id;
});
afterAll(async () => {
  await database().$disconnect();
  copy.remove();
});

const FIRST =
  "Plant,Size,Avail,Price\nHydrangea paniculata 'Limelight',#3,250+,$18.50\nQuercus bicolor,\"2\"\" BB\",12,$180.00\nIlex glabra 'Shamrock',#3,40,$16\nWintergreen wonder bush,#2,7,$9\nFuzzy nothing 'Blob',#1,9,$4\n";
const rows = async () => ({
  lots: await database().lot.count({ where: { supplierId } }),
  lists: await database().stockList.count(),
  events: await database().lotEvent.count(),
  unmatched: await database().unmatchedLine.count(),
  learned: await database().learnedName.count(),
});

async function read(csv: string, fileName = "list.csv", signal = new AbortController().signal): Promise<{ id: string; told: ImportProgress[] }> {
  const told: ImportProgress[] = [];
  await importStart(supplierId, fileName, new TextEncoder().encode(csv), (progress) => told.push(progress), signal);
  const last = told.at(-1);
  return { id: last?.kind === "ready" ? last.importId : "", told };
}
async function accepted(csv: string, fileName?: string) {
  const { id } = await read(csv, fileName);
  const answer = await importAccept(id, "Ada");
  if (answer.kind !== "accepted") throw new Error(answer.message);
  return answer;
}

describe("a supplier", () => {
  it("is refused without a name or under a name that is taken, with the field", async () => {
    expect(await supplierSave(null, 0, { name: " " })).toMatchObject({ kind: "fault", field: "name" });
    expect(await supplierSave(null, 0, { name: "invented GROWERS a" })).toMatchObject({ kind: "fault", field: "name" });
    expect(await supplierSave(null, 0, { name: "x", multiple: 0 })).toMatchObject({ kind: "fault", field: "multiple" });
  });
  it("is changed only over the version that was read", async () => {
    expect(await supplierSave(supplierId, 1, { name: "Invented growers A", contact: "Ada, gate 2" })).toMatchObject({ kind: "saved", supplier: { version: 2 } });
    expect(await supplierSave(supplierId, 1, { name: "Hillside" })).toMatchObject({ kind: "stale", theirs: { contact: "Ada, gate 2" } });
  });
});

describe("a list", () => {
  it("writes nothing while it is read, and nothing when it is cancelled", async () => {
    const before = await rows();
    const stop = new AbortController();
    stop.abort();
    const cancelled = await read(FIRST, "list.csv", stop.signal);
    expect(cancelled.id).toBe("");
    const { id, told } = await read(FIRST);
    expect(told[0]).toEqual({ kind: "read", lines: 5, skipped: 1 });
    expect(importShown(id)?.groups.sure.lines).toBe(3);
    expect(await rows()).toEqual(before);
  });

  it("leaves nothing when something fails in the middle of accepting, and can be accepted then", async () => {
    const { id } = await read(FIRST);
    const before = await rows();
    await expect(
      importAccept(id, "Ada", () => {
        throw new Error("the disk is full");
      }),
    ).rejects.toThrow("disk is full");
    expect(await rows()).toEqual(before);
    expect(importFind(id)).not.toBeNull();
  });

  it("becomes lots with their history, unmatched lines and remembered columns, and what was confirmed is learned", async () => {
    const { id } = await read(FIRST);
    const none = await importNames(id, "none", 1);
    const confirm = await importNames(id, "confirm", 1);
    const open = [...(none?.names ?? []), ...(confirm?.names ?? [])].map(({ written }) => written);
    expect(open.sort()).toEqual(["Fuzzy nothing 'Blob'", "Wintergreen wonder bush"]);
    expect(await importChoose(id, "WINTERGREEN wonder  bush", "no such plant")).toBe(false);
    expect(await importChoose(id, "WINTERGREEN wonder  bush", "ilex-glabra-shamrock")).toBe(true);
    const answer = await importAccept(id, "Ada");
    expect(answer).toMatchObject({ kind: "accepted", added: 4, updated: 0, gone: 0, unmatched: 1, learned: 1, tooFew: [] });
    expect(importFind(id)).toBeNull();
    expect(await importAccept(id, "Ada")).toMatchObject({ kind: "fault" });
    const lots = await database().lot.findMany({ where: { supplierId }, include: { events: true }, orderBy: { taxonName: "asc" } });
    expect(lots.map(({ taxonId, size, quantity, priceCents }) => [taxonId, size, quantity, priceCents])).toContainEqual(["hydrangea-paniculata-limelight", "#3", 250, 1850]);
    for (const { events } of lots) expect(events).toMatchObject([{ kind: "list", who: "Ada", why: "list list.csv" }]);
    expect(await database().learnedName.count({ where: { key: "wintergreen wonder bush" } })).toBe(2);
    expect((await supplierList())[0]).toMatchObject({ lots: 4, list: { fileName: "list.csv", lines: 5, who: "Ada" } });
  });

  it("knows a learned name at once, also on another supplier's list", async () => {
    const other = await supplierSave(null, 0, { name: "Invented growers C" });
    if (other.kind !== "saved") throw new Error("not saved");
    const told: ImportProgress[] = [];
    await importStart(
      other.supplier.id,
      "x.csv",
      new TextEncoder().encode("Plant,Size,Qty\nWintergreen Wonder Bush,#2,7\n"),
      (one) => told.push(one),
      new AbortController().signal,
    );
    const last = told.at(-1);
    const names = await importNames(last?.kind === "ready" ? last.importId : "", "sure", 1);
    expect(names?.names[0]?.candidates[0]?.id).toBe("ilex-glabra-shamrock");
  });

  it("read a second time updates the same lots, names promised plants first, and keeps what is promised", async () => {
    const lot = await database().lot.findFirstOrThrow({ where: { supplierId, taxonId: "quercus-bicolor" } });
    const jobId = await jobCreate("Library court");
    const row = { id: "r1", taxonId: lot.taxonId, taxonName: lot.taxonName, quantity: { by: "count", count: 5 } as const, spacingFt: null, size: "", remarks: "", existing: false };
    const site = { light: "sun", moisture: "average", ph: null, salt: "none", deer: "none", faces: "" } as const;
    const bedId = await bedCreate(jobId, { name: "Bed", size: { by: "rectangle", lengthFt: 10, widthFt: 6 }, site, notes: "", rows: [row] });
    const rowId = (await bedFind(bedId))?.bed.rows[0]?.id ?? "";
    expect(await reservationsMake(jobId, [{ lotId: lot.id, bedId, rowId, quantity: 5, steps: 0 }], "")).toMatchObject({ kind: "reserved" });
    const { id } = await read(
      "Updated list,,,\nAvail,Plant,Price,Size\n200,HYDR PAN LIMELIGHT,$19.00,3 gal\n50,Ilex glabra 'Shamrock',$16,#3\n9,Aronia melanocarpa,$12,#3\n",
      "second.csv",
    );
    expect(await importChange(id)).toMatchObject({
      first: false,
      counts: { added: 1, gone: 2, more: 1, fewer: 1, dearer: 1, cheaper: 0 },
      tooFew: [{ size: '2" BB', words: "gone; promised: 5 to Library court" }],
    });
    const answer = await importAccept(id, "Ada");
    expect(answer).toMatchObject({ kind: "accepted", added: 1, gone: 2, unmatched: 0, tooFew: [`Quercus bicolor 2" BB: gone, 5 to Library court promised`] });
    expect(await database().lot.findUnique({ where: { id: lot.id } })).toMatchObject({ quantity: 5, reserved: 5 });
    expect(await database().lot.findFirst({ where: { supplierId, taxonId: "hydrangea-paniculata-limelight" }, include: { events: { orderBy: { at: "desc" } } } })).toMatchObject({
      quantity: 200,
      priceCents: 1900,
      version: 2,
      events: [{ before: { quantity: 250, priceCents: 1850 }, after: { quantity: 200, priceCents: 1900 } }, {}],
    });
    expect(await database().lot.count({ where: { supplierId } })).toBe(5);
  });

  it("keeps columns that a person corrected, for the next list", async () => {
    const csv = "Plant,Size,A,B\nQuercus bicolor,#5,12,30\nAcer rubrum,#5,4,25\nNyssa sylvatica,#7,6,28\n";
    const { id } = await read(csv, "odd.csv");
    const told: ImportProgress[] = [];
    await importAgain(id, [{ sheet: "list", roles: ["name", "size", "price", "quantity"] }], (one) => told.push(one), new AbortController().signal);
    expect(told.at(-1)).toEqual({ kind: "ready", importId: id });
    await importAccept(id, "");
    const next = await read(csv.replace("12,30", "13,31"), "odd2.csv");
    expect(importShown(next.id)).toMatchObject({ recalled: true, sheets: [{ columns: [{ role: "name" }, { role: "size" }, { role: "price" }, { role: "quantity" }] }] });
    expect(importFind(next.id)?.matched[0]).toMatchObject({ quantity: { count: 31 }, priceCents: 1300 });
  });

  it("keeps lines that match nothing until they are said to be a plant, and then makes lots of them", async () => {
    await accepted("Plant,Size,Qty,Price\nGlimmer bush 'Whatever',#3,8,$11.00\nGlimmer bush 'Whatever',#5,3,$21.00\n");
    expect(await unmatchedNames(supplierId)).toMatchObject([{ written: "Glimmer bush 'Whatever'", lines: 2, plants: 11, sizes: ["#3", "#5"] }]);
    expect(await unmatchedResolve(supplierId, "glimmer bush 'whatever'", "acer-rubrum", "Ada")).toBe(2);
    expect(await unmatchedNames(supplierId)).toEqual([]);
    expect(await database().lot.findFirst({ where: { supplierId, taxonId: "acer-rubrum", quantity: 8 } })).toMatchObject({ priceCents: 1100, size: "#3" });
  });

  it("of some thousand lines is accepted in one go, and again with other prices", async () => {
    const many = `Plant,Size,Qty,Price\n${Array.from({ length: 3000 }, (_, i) => `Acer rubrum,#${(i % 40) + 1},${i % 90},${(i % 70) + 1}.50`).join("\n")}`;
    const first = await accepted(many);
    expect(first.added + first.updated).toBeGreaterThan(2900);
    expect(await accepted(many.replaceAll(".50", ".75"))).toMatchObject({ added: 0 });
  }, 60_000);

  it("says in words what is wrong with a file", async () => {
    expect((await read("", "empty.csv")).told).toEqual([{ kind: "fault", message: "empty.csv is empty." }]);
    expect((await importFind("nobody")) === null).toBe(true);
  });
});

describe("a supplier whose plants are promised", () => {
  it("is not deleted; released, it is, and comes back with its lots", async () => {
    expect(await supplierDelete(supplierId)).toBe("Invented growers A cannot be deleted: 5 plants to Library court promised from its lots. Release them in the job first.");
    await database().reservation.updateMany({ data: { open: 0 } });
    expect(await supplierDelete(supplierId)).toBeNull();
    expect(await supplierFind(supplierId)).toBeNull();
    await supplierRestore(supplierId);
    expect(await supplierFind(supplierId)).toMatchObject({ name: "Invented growers A" });
  });
});
