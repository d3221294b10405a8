// When a job is planted, and how strict it is about sizes: both decide which lots serve it.
import { isIsoDate } from "../pulls/iso-date";
import type { JobRules } from "../pulls/stock-group";
import { database } from "./database";

export type RulesAnswer = { readonly kind: "done" } | { readonly kind: "fault"; readonly message: string };

/** Planting date and size steps of a job; null when it is gone. */
export async function jobRules(jobId: string): Promise<JobRules | null> {
  const record = await database().job.findFirst({ where: { id: jobId, deletedAt: null }, select: { plantingOn: true, stepsAllowed: true } });
  return record && { plantingOn: record.plantingOn, stepsAllowed: record.stepsAllowed === 1 ? 1 : 0 };
}

/** Sets the planting date (null: not set) and whether plants one size up or down may be pulled. */
export async function jobRulesSet(jobId: string, change: Partial<JobRules>): Promise<RulesAnswer> {
  if (change.plantingOn && !isIsoDate(change.plantingOn)) return { kind: "fault", message: "A date, such as 2027-04-15." };
  const changed = await database().job.updateMany({ where: { id: jobId, deletedAt: null }, data: { ...change, version: { increment: 1 } } });
  return changed.count ? { kind: "done" } : { kind: "fault", message: "This job is no longer there." };
}
