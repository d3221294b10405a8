"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { type CorrectionAnswer, correctionDelete, correctionRestore, correctionSave } from "@/lib/server/corrections";
import { type OwnSaveAnswer, ownTaxonDelete, ownTaxonRestore, ownTaxonSave } from "@/lib/server/own-taxa";

const id = z.string().min(1).max(200);
/** Beds, searches and downloads all show plants. */
const everywhere = () => revalidatePath("/", "layout");

/** Saves a form as one's own plant; null adds one. */
export async function ownTaxonSaveAction(taxonId: string | null, input: unknown): Promise<OwnSaveAnswer> {
  const answer = await ownTaxonSave(taxonId === null ? null : id.parse(taxonId), input);
  if (answer.kind === "saved") everywhere();
  return answer;
}

export async function ownTaxonDeleteAction(taxonId: string): Promise<void> {
  await ownTaxonDelete(id.parse(taxonId));
  everywhere();
}

export async function ownTaxonRestoreAction(taxonId: string): Promise<void> {
  await ownTaxonRestore(id.parse(taxonId));
  everywhere();
}

export async function correctionSaveAction(taxonId: string, field: string, value: unknown, note: string): Promise<CorrectionAnswer> {
  const answer = await correctionSave(id.parse(taxonId), z.string().max(80).parse(field), value, z.string().max(2000).parse(note));
  if (answer.kind === "saved") everywhere();
  return answer;
}

export async function correctionDeleteAction(correctionId: string): Promise<void> {
  await correctionDelete(id.parse(correctionId));
  everywhere();
}

export async function correctionRestoreAction(correctionId: string): Promise<void> {
  await correctionRestore(id.parse(correctionId));
  everywhere();
}
