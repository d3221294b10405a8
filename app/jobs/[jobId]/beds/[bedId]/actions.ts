"use server";

import { revalidatePath } from "next/cache";
import type { PlacedTaxon } from "@/lib/papers/bed-view";
import { bedContext } from "@/lib/server/bed-context";
import { bedSave, type SaveAnswer } from "@/lib/server/beds";

/** Saves a bed from the sheet. */
export async function bedSaveAction(id: string, baseVersion: number, bed: unknown): Promise<SaveAnswer> {
  const answer = await bedSave(id, baseVersion, bed);
  if (answer.kind === "saved") revalidatePath("/jobs/[jobId]", "page");
  return answer;
}

/** The plants of a bed as saved, dated at its place; nothing when the bed is gone. */
export async function placedTaxaAction(bedId: string): Promise<Readonly<Record<string, PlacedTaxon>>> {
  return (await bedContext(bedId))?.placed ?? {};
}
