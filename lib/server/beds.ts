// Beds in the database. Rows become domain values here and nowhere else.
import type { Bed } from "../ground/bed";
import { bedInput, drawingInput, quantityInput, siteInput, sizeInput } from "./bed-input";
import { database, type Transaction } from "./database";
import { type Bed as BedRecord, Prisma, type BedRow as RowRecord } from "./generated/client";
import { newId } from "./identity";

/** A bed with what the database adds to it. `version` grows by one at each save. */
export type StoredBed = { readonly id: string; readonly jobId: string; readonly position: number; readonly version: number; readonly savedAt: string; readonly bed: Bed };

const withRows = { rows: { orderBy: { position: "asc" } } } as const;

/** Throws when a stored value is not what this program writes: a bug or a damaged file, not something a user did. */
function storedBed(record: BedRecord & { rows: RowRecord[] }): StoredBed {
  const bed: Bed = {
    name: record.name,
    size: sizeInput.parse(record.size),
    site: siteInput.parse({ light: record.light, moisture: record.moisture, ph: record.ph, salt: record.salt, deer: record.deer, faces: record.faces }),
    notes: record.notes,
    rows: record.rows.map((row) => ({
      id: row.id,
      taxonId: row.taxonId,
      taxonName: row.taxonName,
      quantity: quantityInput.parse(row.quantity),
      spacingFt: row.spacingFt,
      size: row.size,
      remarks: row.remarks,
      existing: row.existing,
    })),
    drawing: drawingInput.parse(record.drawing),
  };
  return { id: record.id, jobId: record.jobId, position: record.position, version: record.version, savedAt: record.updatedAt.toISOString(), bed };
}

const bedFields = (bed: Bed) => ({ name: bed.name, size: bed.size, ...bed.site, notes: bed.notes, drawing: bed.drawing ?? Prisma.DbNull });

async function rowsReplace(tx: Transaction, bedId: string, bed: Bed): Promise<void> {
  await tx.bedRow.deleteMany({ where: { bedId } });
  await tx.bedRow.createMany({ data: bed.rows.map((row, position) => ({ ...row, bedId, position })) });
}

/** The beds of a job that are not deleted, in order. */
export async function bedsOfJob(jobId: string): Promise<StoredBed[]> {
  const records = await database().bed.findMany({ where: { jobId, deletedAt: null }, include: withRows, orderBy: { position: "asc" } });
  return records.map(storedBed);
}

export async function bedFind(id: string): Promise<StoredBed | null> {
  const record = await database().bed.findFirst({ where: { id, deletedAt: null, job: { deletedAt: null } }, include: withRows });
  return record ? storedBed(record) : null;
}

/** A bed whose rows have new ids, its drawing with them; a picture under the drawing stays with the bed it was laid under. */
function rowsRenamed(bed: Bed): Bed {
  const ids = new Map(bed.rows.map((row) => [row.id, newId()]));
  const drawing = bed.drawing && {
    ...bed.drawing,
    underlay: null,
    plants: bed.drawing.plants.flatMap((plant) => {
      const rowId = ids.get(plant.rowId);
      return rowId ? [{ ...plant, rowId }] : [];
    }),
  };
  return { ...bed, rows: bed.rows.map((row) => ({ ...row, id: ids.get(row.id) ?? row.id })), drawing };
}

/** Adds a bed at the end of the job. Row ids are made new: a bed may be a copy of another. */
export async function bedCreate(jobId: string, bed: Bed, tx?: Transaction): Promise<string> {
  const work = async (t: Transaction) => {
    const id = newId();
    const last = await t.bed.aggregate({ where: { jobId }, _max: { position: true } });
    const fresh = rowsRenamed(bed);
    await t.bed.create({ data: { id, jobId, position: (last._max.position ?? -1) + 1, ...bedFields(fresh) } });
    await rowsReplace(t, id, fresh);
    return id;
  };
  return tx ? work(tx) : database().$transaction(work);
}

export type SaveAnswer =
  | { readonly kind: "saved"; readonly version: number; readonly savedAt: string }
  | { readonly kind: "stale"; readonly theirs: StoredBed }
  | { readonly kind: "gone"; readonly message: string }
  | { readonly kind: "fault"; readonly message: string };

/**
 * Saves a whole bed over version `baseVersion`. When somebody saved in between nothing is written and their bed comes back.
 * @param untrusted a Bed from a screen
 */
export async function bedSave(id: string, baseVersion: number, untrusted: unknown): Promise<SaveAnswer> {
  const parsed = bedInput.safeParse(untrusted);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    return { kind: "fault", message: `${issue?.path.join(" ") || "The bed"}: ${issue?.message ?? "cannot be read"}` };
  }
  return database().$transaction(async (tx): Promise<SaveAnswer> => {
    const found = await tx.bed.findFirst({ where: { id, deletedAt: null }, include: withRows });
    if (!found) return { kind: "gone", message: "This bed was deleted in another window. Undo the deletion on the job's page; your list is kept in this window." };
    if (found.version !== baseVersion) return { kind: "stale", theirs: storedBed(found) };
    const saved = await tx.bed.update({ where: { id }, data: { ...bedFields(parsed.data), version: { increment: 1 } } });
    await rowsReplace(tx, id, parsed.data);
    await tx.job.update({ where: { id: found.jobId }, data: { updatedAt: new Date() } });
    return { kind: "saved", version: saved.version, savedAt: saved.updatedAt.toISOString() };
  });
}

/** Deletes (restorable), restores or moves a bed in its job's order. */
export async function bedDelete(id: string): Promise<void> {
  await database().bed.updateMany({ where: { id }, data: { deletedAt: new Date() } });
}

export async function bedRestore(id: string): Promise<void> {
  await database().bed.updateMany({ where: { id }, data: { deletedAt: null } });
}

export async function bedMove(id: string, step: -1 | 1): Promise<void> {
  await database().$transaction(async (tx) => {
    const bed = await tx.bed.findUnique({ where: { id } });
    if (!bed) return;
    const beds = await tx.bed.findMany({ where: { jobId: bed.jobId, deletedAt: null }, orderBy: { position: "asc" } });
    const at = beds.findIndex((b) => b.id === id);
    const [moved] = beds.splice(at, 1);
    if (!moved) return;
    beds.splice(Math.max(0, Math.min(beds.length, at + step)), 0, moved);
    for (const [position, b] of beds.entries()) await tx.bed.update({ where: { id: b.id }, data: { position } });
  });
}
