// The firm's lots in the database: what stands where, and how many. Every change is one conditional statement, so that two counts at once cannot both hold.
import { z } from "zod";
import { database } from "./database";
import type { Lot as LotRecord, StockPlace } from "./generated/client";
import { newId } from "./identity";
import { taxaHeld } from "./taxa";

/** A lot as stored. `version` grows by one at each change; `countedAt` is an ISO instant, null: never counted. */
export type StoredLot = {
  readonly id: string;
  readonly taxonId: string;
  readonly taxonName: string;
  readonly size: string;
  /** Field row or yard bay, as the firm calls it. */
  readonly place: string;
  /** Whole plants, never negative. */
  readonly quantity: number;
  /** Cents a plant; null: not priced. */
  readonly priceCents: number | null;
  readonly remarks: string;
  readonly countedAt: string | null;
  readonly version: number;
};

const text = (max: number) => z.string().trim().max(max, `At most ${max} characters.`);
const changeInput = z
  .strictObject({
    size: text(60),
    place: text(80),
    quantity: z.int("A whole number of plants, such as 7.").min(0, "There cannot be fewer than 0 plants on hand.").max(1_000_000, "At most 1,000,000 plants."),
    priceCents: z.int("Whole cents.").min(0, "A price is not negative.").max(100_000_000, "At most $1,000,000.").nullable(),
    remarks: text(300),
  })
  .partial();

/** What of a lot may change. A quantity is a count: it sets the date of the count. */
export type LotChange = z.infer<typeof changeInput>;

export type LotAnswer =
  | { readonly kind: "saved"; readonly lot: StoredLot }
  | { readonly kind: "stale"; readonly theirs: StoredLot }
  | { readonly kind: "gone"; readonly message: string }
  | { readonly kind: "fault"; readonly field: string; readonly message: string };

const withPlace = { place: true } as const;

function storedLot({ id, taxonId, taxonName, size, place, quantity, priceCents, remarks, countedAt, version }: LotRecord & { place: StockPlace | null }): StoredLot {
  return { id, taxonId, taxonName, size, place: place?.block ?? "", quantity, priceCents, remarks, countedAt: countedAt?.toISOString() ?? null, version };
}

/** The id of the place so called, made at the end of the walk where there is none; null for no place. */
async function placeNamed(block: string): Promise<string | null> {
  if (block === "") return null;
  const key = { block, row: "", bay: "" };
  const last = await database().stockPlace.aggregate({ _max: { position: true } });
  const place = await database().stockPlace.upsert({ where: { block_row_bay: key }, update: {}, create: { id: newId(), ...key, position: (last._max.position ?? -1) + 1 } });
  return place.id;
}

/** A change as the table has it. */
async function changeFields({ place, ...change }: LotChange) {
  return { ...change, ...counted(change), ...(place === undefined ? {} : { placeId: await placeNamed(place) }) };
}

function inputFault(error: z.ZodError): LotAnswer {
  const issue = error.issues[0];
  return { kind: "fault", field: String(issue?.path[0] ?? ""), message: issue?.message ?? "Cannot be read." };
}

const counted = (change: LotChange) => (change.quantity === undefined ? {} : { countedAt: new Date() });

/** Lots that are not deleted, by name, then as they came: a row does not jump while its place is typed. */
export async function lotList(): Promise<StoredLot[]> {
  const records = await database().lot.findMany({
    where: { deletedAt: null, supplierId: null },
    include: withPlace,
    orderBy: [{ taxonName: "asc" }, { createdAt: "asc" }, { id: "asc" }],
  });
  return records.map(storedLot);
}

/** Adds a lot of a plant of the dataset or one's own; what is not given is empty, its quantity 0 and not counted. @param untrusted a LotChange from a screen */
export async function lotAdd(taxonId: string, untrusted: unknown = {}): Promise<LotAnswer> {
  const parsed = changeInput.safeParse(untrusted);
  if (!parsed.success) return inputFault(parsed.error);
  const taxon = (await taxaHeld()).byId.get(taxonId);
  if (!taxon) return { kind: "fault", field: "taxonId", message: "This plant is no longer in the dataset. Reload the page and look for it again." };
  const record = await database().lot.create({ data: { id: newId(), taxonId, taxonName: taxon.name, ...(await changeFields(parsed.data)) }, include: withPlace });
  return { kind: "saved", lot: storedLot(record) };
}

/** Changes a lot as it stood at version `baseVersion`. When somebody changed it in between nothing is written and their lot comes back. @param untrusted a LotChange */
export async function lotChange(id: string, baseVersion: number, untrusted: unknown): Promise<LotAnswer> {
  const parsed = changeInput.safeParse(untrusted);
  if (!parsed.success) return inputFault(parsed.error);
  const fields = await changeFields(parsed.data);
  const written = await database().lot.updateMany({ where: { id, version: baseVersion, deletedAt: null }, data: { ...fields, version: { increment: 1 } } });
  const theirs = await database().lot.findFirst({ where: { id, deletedAt: null }, include: withPlace });
  if (written.count && theirs) return { kind: "saved", lot: storedLot(theirs) };
  return theirs
    ? { kind: "stale", theirs: storedLot(theirs) }
    : { kind: "gone", message: "This lot was deleted in another window. Undo the deletion there, then change it again." };
}

/** Deletes a lot so that it can be restored. */
export async function lotDelete(id: string): Promise<void> {
  await database().lot.updateMany({ where: { id, deletedAt: null }, data: { deletedAt: new Date(), version: { increment: 1 } } });
}

export async function lotRestore(id: string): Promise<void> {
  await database().lot.updateMany({ where: { id, deletedAt: { not: null } }, data: { deletedAt: null, version: { increment: 1 } } });
}

/** Plants on hand by taxon, all lots together; only taxa of which there is at least one. */
export async function onHandByTaxon(): Promise<Readonly<Record<string, number>>> {
  const groups = await database().lot.groupBy({ by: ["taxonId"], where: { deletedAt: null, quantity: { gt: 0 } }, _sum: { quantity: true } });
  return Object.fromEntries(groups.map((g) => [g.taxonId, g._sum.quantity ?? 0]));
}
