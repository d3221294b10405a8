"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { whoNow } from "@/app/who";
import { importChoose, importUnchoose } from "@/lib/server/list-import";
import { type AcceptAnswer, importAccept } from "@/lib/server/list-import-accept";
import { type SupplierAnswer, supplierDelete, supplierRestore, supplierSave } from "@/lib/server/suppliers";
import { unmatchedDrop, unmatchedResolve } from "@/lib/server/unmatched-lines";

const id = z.string().min(1).max(200);
const name = z.string().min(1).max(400);
const everywhere = () => revalidatePath("/", "layout");

export async function supplierSaveAction(supplierId: string | null, baseVersion: number, input: unknown): Promise<SupplierAnswer> {
  const answer = await supplierSave(id.nullable().parse(supplierId), z.int().parse(baseVersion), input);
  if (answer.kind !== "fault") everywhere();
  return answer;
}

/** @returns why it cannot be deleted; null when it is */
export async function supplierDeleteAction(supplierId: string): Promise<string | null> {
  const refusal = await supplierDelete(id.parse(supplierId));
  if (refusal === null) everywhere();
  return refusal;
}

export async function supplierRestoreAction(supplierId: string): Promise<void> {
  await supplierRestore(id.parse(supplierId));
  everywhere();
}

/** @param taxonId null: none of the plants; undefined: takes the choice back */
export async function importChooseAction(importId: string, written: string, taxonId: string | null | undefined): Promise<boolean> {
  if (taxonId === undefined) return importUnchoose(id.parse(importId), name.parse(written));
  return importChoose(id.parse(importId), name.parse(written), id.nullable().parse(taxonId));
}

export async function importAcceptAction(importId: string): Promise<AcceptAnswer> {
  try {
    const answer = await importAccept(id.parse(importId), await whoNow());
    if (answer.kind === "accepted") everywhere();
    return answer;
  } catch (error) {
    console.error(error);
    return { kind: "fault", message: "The list could not be written; nothing of it was. Wait a moment, then accept again." };
  }
}

/** @returns lots made; null when the plant is no longer there */
export async function unmatchedResolveAction(supplierId: string, key: string, taxonId: string): Promise<number | null> {
  const made = await unmatchedResolve(id.parse(supplierId), name.parse(key), id.parse(taxonId), await whoNow());
  everywhere();
  return made;
}

export async function unmatchedDropAction(supplierId: string, key: string): Promise<void> {
  await unmatchedDrop(id.parse(supplierId), name.parse(key));
  everywhere();
}
