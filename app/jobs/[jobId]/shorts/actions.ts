"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { whoNow } from "@/app/who";
import { type SubstituteAnswer, substituteAccept } from "@/lib/server/job-shorts";
import { pullConflictSettle } from "@/lib/server/pull-events";

const accepted = z.object({ jobId: z.string().max(64), lineId: z.string().max(140), taxonId: z.string().max(200), quantity: z.int().min(1).max(10_000) });

/** Puts a substitute into the bed for plants that are missing. */
export async function substituteAcceptAction(untrusted: unknown): Promise<SubstituteAnswer> {
  const parsed = accepted.safeParse(untrusted);
  if (!parsed.success) return { kind: "fault", message: "What was chosen cannot be read. Reload the page." };
  const { jobId, lineId, taxonId, quantity } = parsed.data;
  const answer = await substituteAccept(jobId, lineId, taxonId, quantity, await whoNow());
  if (answer.kind === "done") revalidatePath("/jobs/[jobId]", "layout");
  return answer;
}

/** Marks a conflict on a line as looked at. */
export async function conflictSettleAction(jobId: string, lineId: string): Promise<void> {
  await pullConflictSettle(jobId, lineId);
  revalidatePath("/jobs/[jobId]/shorts", "page");
}
