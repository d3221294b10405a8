// Corrects a value of an open-dataset taxon for the user's region, and takes the correction back.
import { correctionRead, isWindowField, windowFeatureIndex } from "../plants/correction";
import { database } from "./database";
import { newId } from "./identity";
import { taxaForget, taxaHeld } from "./taxa";

export type CorrectionAnswer = { readonly kind: "saved" } | { readonly kind: "fault"; readonly field: string; readonly message: string };

const NOTE_MAX = 500;

/** Sets one value. A second correction of the same value replaces the first. @param value untrusted */
export async function correctionSave(taxonId: string, field: string, value: unknown, note: string): Promise<CorrectionAnswer> {
  const { byId, own } = await taxaHeld();
  const taxon = byId.get(taxonId);
  if (!taxon) return { kind: "fault", field, message: "This plant is no longer in the dataset." };
  if (own.has(taxonId)) return { kind: "fault", field, message: "This plant is your own: change it with Edit." };
  if (note.length > NOTE_MAX) return { kind: "fault", field: "note", message: `At most ${NOTE_MAX} characters.` };
  const read = correctionRead(field, value);
  if (read.kind === "fault") return read;
  if (isWindowField(read.field) && windowFeatureIndex(taxon, read.field) < 0) return { kind: "fault", field, message: "The dataset no longer has this feature." };
  const data = { value: read.value as object, note: note.trim(), deletedAt: null };
  await database().correction.upsert({ where: { taxonId_field: { taxonId, field: read.field } }, create: { id: newId(), taxonId, field: read.field, ...data }, update: data });
  taxaForget();
  return { kind: "saved" };
}

/** Takes a correction back so that it can be restored: the dataset's value holds again. */
export async function correctionDelete(id: string): Promise<void> {
  await database().correction.updateMany({ where: { id }, data: { deletedAt: new Date() } });
  taxaForget();
}

export async function correctionRestore(id: string): Promise<void> {
  await database().correction.updateMany({ where: { id }, data: { deletedAt: null } });
  taxaForget();
}
