"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { type LotAnswer, lotAdd, lotChange, lotDelete, lotRestore } from "@/lib/server/lots";

const id = z.string().min(1).max(200);
/** The Plants screen shows what is on hand. */
const everywhere = () => revalidatePath("/", "layout");

export async function lotAddAction(taxonId: string): Promise<LotAnswer> {
  const answer = await lotAdd(id.parse(taxonId));
  if (answer.kind === "saved") everywhere();
  return answer;
}

export async function lotChangeAction(lotId: string, baseVersion: number, change: unknown): Promise<LotAnswer> {
  const answer = await lotChange(id.parse(lotId), z.int().parse(baseVersion), change);
  if (answer.kind !== "fault") everywhere();
  return answer;
}

export async function lotDeleteAction(lotId: string): Promise<void> {
  await lotDelete(id.parse(lotId));
  everywhere();
}

export async function lotRestoreAction(lotId: string): Promise<void> {
  await lotRestore(id.parse(lotId));
  everywhere();
}
