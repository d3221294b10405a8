"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { whoNow } from "@/app/who";
import { lotMove, lotWriteOff } from "@/lib/server/lot-move";
import { type LotAnswer, lotAdd, lotChange, lotDelete, lotRestore } from "@/lib/server/lots";

const id = z.string().min(1).max(200);
const version = z.int();
/** The Plants screen shows what is on hand. */
const everywhere = () => revalidatePath("/", "layout");
const by = async () => ({ who: await whoNow() });

function told(answer: LotAnswer): LotAnswer {
  if (answer.kind === "saved" || answer.kind === "stale" || answer.kind === "gone") everywhere();
  return answer;
}

export async function lotAddAction(taxonId: string): Promise<LotAnswer> {
  return told(await lotAdd(id.parse(taxonId), {}, await by()));
}

/** @param anyway a count below what is promised lets promises go */
export async function lotChangeAction(lotId: string, baseVersion: number, change: unknown, anyway = false): Promise<LotAnswer> {
  return told(await lotChange(id.parse(lotId), version.parse(baseVersion), change, await by(), { anyway: z.boolean().parse(anyway) }));
}

/** A count in the field. Nothing is drawn anew for it: the next lot is on the screen already. */
export async function lotCountAction(lotId: string, baseVersion: number, quantity: number, anyway: boolean): Promise<LotAnswer> {
  return lotChange(id.parse(lotId), version.parse(baseVersion), { quantity }, await by(), { anyway: z.boolean().parse(anyway) });
}

export async function lotMoveAction(lotId: string, baseVersion: number, move: unknown): Promise<LotAnswer> {
  return told(await lotMove(id.parse(lotId), version.parse(baseVersion), move, await by()));
}

export async function lotWriteOffAction(lotId: string, baseVersion: number, what: unknown, anyway: boolean): Promise<LotAnswer> {
  return told(await lotWriteOff(id.parse(lotId), version.parse(baseVersion), what, await by(), { anyway: z.boolean().parse(anyway) }));
}

/** @returns why it cannot be deleted; null when it is */
export async function lotDeleteAction(lotId: string): Promise<string | null> {
  const refusal = await lotDelete(id.parse(lotId), await by());
  if (refusal === null) everywhere();
  return refusal;
}

export async function lotRestoreAction(lotId: string): Promise<void> {
  await lotRestore(id.parse(lotId), await by());
  everywhere();
}
