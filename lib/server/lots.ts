// The firm's own lots in the database: what stands where, and how many. Every change is made over the version it was looked at, in one transaction with
// the line of history that tells of it, so that two counts at once cannot both hold.
import { z } from "zod";
import { type PlaceName, placeRead, placeSame } from "../nursery/lot-place";
import { database, type Transaction } from "./database";
import { newId } from "./identity";
import { type ByWhom, lotEventsWrite, lotState } from "./lot-events";
import { lotPromises, promisedMessage, promisesRelease, promisesText } from "./lot-promises";
import { placeMade } from "./stock-places";
import { stockTransaction } from "./stock-transaction";
import { type LotAnswer, lotAtVersion, type StoredLot, storedLot, withPlace } from "./stored-lot";
import { taxaHeld } from "./taxa";

export type { LotAnswer, StoredLot } from "./stored-lot";

const text = (max: number) => z.string().trim().max(max, `At most ${max} characters.`);
const cents = z.int("Whole cents.").min(0, "A price is not negative.").max(100_000_000, "At most $1,000,000.").nullable();
const isDay = (day: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(day) && new Date(`${day}T00:00:00Z`).toISOString().slice(0, 10) === day;

export const lotFields = {
  size: text(60),
  place: text(80),
  quantity: z.int("A whole number of plants, such as 7.").min(0, "There cannot be fewer than 0 plants on hand.").max(1_000_000, "At most 1,000,000 plants."),
  readyFrom: z
    .string()
    .refine((day) => Number.isFinite(Date.parse(day)) && isDay(day), "A date, such as 2027-04-15.")
    .nullable(),
  priceCents: cents,
  costCents: cents,
  grade: text(40),
  remarks: text(300),
};
const changeInput = z.strictObject(lotFields).partial();

/** What of a lot may change. A quantity is a count: it sets the date of the count. `place` is as a person types it. */
export type LotChange = z.infer<typeof changeInput>;

/** The first fault of an input, with its field. */
export function inputFault(error: z.ZodError): LotAnswer {
  const issue = error.issues[0];
  return { kind: "fault", field: String(issue?.path[0] ?? ""), message: issue?.message ?? "Cannot be read." };
}

/** The id of the place so called, made at the end of the walk where there is none; null for no place. */
export async function placeIdOf(tx: Transaction, written: string): Promise<string | null> {
  if (written.trim() === "") return null;
  const asked: PlaceName = placeRead(written);
  const found = (await tx.stockPlace.findMany({ orderBy: { position: "asc" } })).find((place) => placeSame(place, asked));
  return found ? found.id : placeMade(tx, asked);
}

/** A change as the table has it. */
async function changeFields(tx: Transaction, { place, ...change }: LotChange) {
  return {
    ...change,
    ...(change.quantity === undefined ? {} : { countedAt: new Date() }),
    ...(place === undefined ? {} : { placeId: await placeIdOf(tx, place) }),
    // A price typed by hand holds for any quantity.
    ...(change.priceCents === undefined ? {} : { prices: [] }),
  };
}

/** The firm's own lots that are not deleted, by name, then as they came: a row does not jump while its place is typed. */
export async function lotList(): Promise<StoredLot[]> {
  const records = await database().lot.findMany({
    where: { deletedAt: null, supplierId: null },
    include: withPlace,
    orderBy: [{ taxonName: "asc" }, { createdAt: "asc" }, { id: "asc" }],
  });
  return records.map(storedLot);
}

/** One of the firm's own lots; null where there is none or it is deleted. */
export async function lotFind(id: string): Promise<StoredLot | null> {
  const record = await database().lot.findFirst({ where: { id, deletedAt: null, supplierId: null }, include: withPlace });
  return record && storedLot(record);
}

/** Adds a lot of a plant of the dataset or one's own; what is not given is empty, its quantity 0 and not counted. @param untrusted a LotChange from a screen */
export async function lotAdd(taxonId: string, untrusted: unknown = {}, by: ByWhom = { who: "" }): Promise<LotAnswer> {
  const parsed = changeInput.safeParse(untrusted);
  if (!parsed.success) return inputFault(parsed.error);
  const taxon = (await taxaHeld()).byId.get(taxonId);
  if (!taxon) return { kind: "fault", field: "taxonId", message: "This plant is no longer in the dataset. Reload the page and look for it again." };
  return stockTransaction(async (tx): Promise<LotAnswer> => {
    const record = await tx.lot.create({ data: { id: newId(), taxonId, taxonName: taxon.name, ...(await changeFields(tx, parsed.data)) }, include: withPlace });
    await lotEventsWrite(tx, [{ lotId: record.id, kind: "add", ...by, before: {}, after: lotState(record) }]);
    return { kind: "saved", lot: storedLot(record) };
  });
}

/**
 * Changes a lot as it stood at version `baseVersion`. When somebody changed it in between nothing is written and their lot comes back. A count below what
 * is promised is refused with the jobs named, unless `anyway`: then the newest promises are let go down to the count.
 * @param untrusted a LotChange
 */
export async function lotChange(id: string, baseVersion: number, untrusted: unknown, by: ByWhom = { who: "" }, { anyway = false } = {}): Promise<LotAnswer> {
  const parsed = changeInput.safeParse(untrusted);
  if (!parsed.success) return inputFault(parsed.error);
  const change = parsed.data;
  return stockTransaction(async (tx): Promise<LotAnswer> => {
    const found = await lotAtVersion(tx, id, baseVersion);
    if ("answer" in found) return found.answer;
    const { record } = found;
    const left = change.quantity;
    let released: string[] = [];
    if (left !== undefined && left < record.reserved) {
      if (!anyway) return { kind: "promised", message: promisedMessage(left, record.reserved, await lotPromises(tx, id)) };
      released = await promisesRelease(tx, id, left, by.who, `counted ${left.toLocaleString("en-US")}`);
    }
    const written = await tx.lot.update({ where: { id, version: baseVersion }, data: { ...(await changeFields(tx, change)), version: { increment: 1 } }, include: withPlace });
    const kind = left !== undefined ? "count" : written.placeId !== record.placeId ? "move" : "change";
    // The promises let go have lines of their own.
    const before = { ...lotState(record), reserved: written.reserved };
    await lotEventsWrite(tx, [{ lotId: id, kind, ...by, before, after: lotState(written) }]);
    return { kind: "saved", lot: storedLot(written), ...(released.length ? { released } : {}) };
  });
}

/** Deletes a lot so that it can be restored. A lot of which plants are promised stays; the answer names the jobs. @returns null when it is deleted */
export async function lotDelete(id: string, by: ByWhom = { who: "" }): Promise<string | null> {
  return stockTransaction(async (tx) => {
    const record = await tx.lot.findFirst({ where: { id, deletedAt: null, supplierId: null } });
    if (!record) return null;
    if (record.reserved > 0)
      return `${record.taxonName} cannot be deleted: ${promisesText(await lotPromises(tx, id))} promised. Release them in the job first, or write the plants off.`;
    await tx.lot.update({ where: { id }, data: { deletedAt: new Date(), version: { increment: 1 } } });
    await lotEventsWrite(tx, [{ lotId: id, kind: "delete", ...by, before: {}, after: {} }]);
    return null;
  });
}

export async function lotRestore(id: string, by: ByWhom = { who: "" }): Promise<void> {
  await stockTransaction(async (tx) => {
    const restored = await tx.lot.updateMany({ where: { id, deletedAt: { not: null }, supplierId: null }, data: { deletedAt: null, version: { increment: 1 } } });
    if (restored.count) await lotEventsWrite(tx, [{ lotId: id, kind: "restore", ...by, before: {}, after: {} }]);
  });
}

/** The firm's own plants on hand by taxon, all lots together; only taxa of which there is at least one. */
export async function onHandByTaxon(): Promise<Readonly<Record<string, number>>> {
  const groups = await database().lot.groupBy({ by: ["taxonId"], where: { deletedAt: null, supplierId: null, quantity: { gt: 0 } }, _sum: { quantity: true } });
  return Object.fromEntries(groups.map((g) => [g.taxonId, g._sum.quantity ?? 0]));
}

/** The name of a lot of the firm's own that was deleted; null where there is none of that id. */
export async function lotDeleted(id: string): Promise<string | null> {
  const record = await database().lot.findFirst({ where: { id, deletedAt: { not: null }, supplierId: null }, select: { taxonName: true } });
  return record?.taxonName ?? null;
}
