"use server";

import { revalidatePath } from "next/cache";
import { z } from "zod";
import { whoNow } from "@/app/who";
import { JOB_STAGES } from "@/lib/pulls/job-stage";
import { jobRulesSet } from "@/lib/server/job-rules";
import { jobStageDate, jobStageSet, type StageAnswer } from "@/lib/server/job-stages";

const UNREADABLE: StageAnswer = { kind: "fault", message: "What was entered cannot be read. Reload the page." };
const move = z.object({ jobId: z.string().max(64), to: z.enum(JOB_STAGES), on: z.string().max(10), note: z.string().max(300, "At most 300 characters.") });
const rules = z.object({ plantingOn: z.string().max(10).nullable(), stepsAllowed: z.union([z.literal(0), z.literal(1)]) }).partial();

function told(answer: StageAnswer): StageAnswer {
  if (answer.kind === "done") revalidatePath("/jobs/[jobId]", "layout");
  return answer;
}

/** Says that a job has reached a stage or gone back to one. */
export async function stageSetAction(untrusted: unknown): Promise<StageAnswer> {
  const parsed = move.safeParse(untrusted);
  if (!parsed.success) return UNREADABLE;
  const { jobId, to, on, note } = parsed.data;
  return told(await jobStageSet(jobId, to, on, await whoNow(), note));
}

/** Puts the day of a stage right. */
export async function stageDateAction(jobId: string, rowId: string, on: string): Promise<StageAnswer> {
  return told(await jobStageDate(jobId, rowId, on));
}

/** Sets the planting date and the size steps that are allowed. */
export async function jobRulesAction(jobId: string, untrusted: unknown): Promise<StageAnswer> {
  const parsed = rules.safeParse(untrusted);
  if (!parsed.success) return UNREADABLE;
  return told(await jobRulesSet(jobId, parsed.data));
}
