"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { whoNow } from "@/app/who";
import { choicesRead } from "@/lib/server/job-stock";
import { jobPurchaseMove, jobSell, jobShortBuy, jobStockRelease, jobStockReserve, type StockAnswer } from "@/lib/server/job-stock-write";

const id = z.string().min(1).max(64);
const key = z.string().min(3).max(140);
const picks = z.array(z.object({ lotId: id, bedId: id, rowId: id, quantity: z.int().min(1).max(1_000_000), steps: z.int().min(-20).max(20) })).max(2000);
const shown = z.object({ jobId: id, keys: z.array(key).max(2000).nullable(), chosen: z.array(z.string().max(220)).max(2000), picks });
const sold = shown.extend({ on: z.string().max(10) });

const UNREADABLE: StockAnswer = { kind: "fault", message: "What was chosen cannot be read. Reload the page." };

/** Shows the stock anew, also where somebody else changed it. */
function told(answer: StockAnswer): StockAnswer {
  if (answer.kind !== "fault") revalidatePath("/jobs/[jobId]", "layout");
  return answer;
}

export async function stockReserveAction(untrusted: unknown): Promise<StockAnswer> {
  const parsed = shown.safeParse(untrusted);
  if (!parsed.success) return UNREADABLE;
  const { jobId, keys, chosen, picks } = parsed.data;
  return told(await jobStockReserve(jobId, { keys, chosen: choicesRead(chosen), picks }, await whoNow()));
}

export async function jobSellAction(untrusted: unknown): Promise<StockAnswer> {
  const parsed = sold.safeParse(untrusted);
  if (!parsed.success) return UNREADABLE;
  const { jobId, keys, chosen, picks, on } = parsed.data;
  return told(await jobSell(jobId, { keys, chosen: choicesRead(chosen), picks }, on, await whoNow()));
}

/** @param reservationId null: all of the job */
export async function stockReleaseAction(jobId: string, reservationId: string | null): Promise<StockAnswer> {
  return told(await jobStockRelease(jobId, reservationId, await whoNow()));
}

export async function shortBuyAction(jobId: string, group: string, supplierId: string): Promise<StockAnswer> {
  return told(await jobShortBuy(jobId, group, supplierId, await whoNow()));
}

export async function purchaseMoveAction(jobId: string, fromLotId: string, toLotId: string): Promise<StockAnswer> {
  return told(await jobPurchaseMove(jobId, fromLotId, toLotId, await whoNow()));
}
