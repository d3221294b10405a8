// The stages of a job in the database, its planting date, and how far its plants are.
import { z } from "zod";
import { JOB_STAGES, type JobStage, type StagePlants, type StageRow, stageDateFault, stageMoveFault } from "../pulls/job-stage";
import { heldCount, type JobRules } from "../pulls/stock-group";
import { database, type Transaction } from "./database";
import { newId } from "./identity";
import { jobRules } from "./job-rules";
import { jobHeld } from "./job-stock";
import { today } from "./today";

const stages = z.enum(JOB_STAGES);
const NOTE_MAX = 300;

export type StageAnswer = { readonly kind: "done" } | { readonly kind: "fault"; readonly message: string };

export type JobStageView = { readonly rows: readonly StageRow[]; readonly plants: StagePlants; readonly rules: JobRules; readonly today: string };

const GONE: StageAnswer = { kind: "fault", message: "This job is no longer there." };

/** What was said of a job's stages, in the order in which it was said. */
export async function jobStageRows(jobId: string, tx: Transaction = database()): Promise<StageRow[]> {
  const records = await tx.jobStage.findMany({ where: { jobId }, orderBy: [{ createdAt: "asc" }, { id: "asc" }] });
  return records.map(({ id, stage, on, who, note }) => ({ id, stage: stages.parse(stage), on, who, note }));
}

/** Plants that the design wants, of these promised and still fitting, and pulled. */
async function stagePlants(jobId: string): Promise<StagePlants | null> {
  const found = await jobHeld(jobId);
  if (!found) return null;
  const sums = found.map(({ group, held }) => {
    const pulled = group.received + held.reduce((sum, one) => sum + (one.serves > 0 ? one.promised.pulled : 0), 0);
    return { wanted: group.wanted, promised: Math.min(group.wanted, group.received + heldCount(held)), pulled: Math.min(group.wanted, pulled) };
  });
  const total = (field: keyof StagePlants) => sums.reduce((sum, one) => sum + one[field], 0);
  return { wanted: total("wanted"), promised: total("promised"), pulled: total("pulled") };
}

/** All that the line of stages shows; null when the job is gone. */
export async function jobStageView(jobId: string): Promise<JobStageView | null> {
  const [plants, rules, rows] = await Promise.all([stagePlants(jobId), jobRules(jobId), jobStageRows(jobId)]);
  return plants && rules && { rows, plants, rules, today: today().iso };
}

/** Adds a row without asking; in a transaction. */
export async function stageRowAdd(tx: Transaction, jobId: string, stage: JobStage, on: string, who: string, note = ""): Promise<void> {
  // Two rows of one transaction could share a millisecond, and their order is what counts.
  const last = await tx.jobStage.findFirst({ where: { jobId }, orderBy: { createdAt: "desc" }, select: { createdAt: true } });
  const createdAt = new Date(Math.max(Date.now(), (last?.createdAt.getTime() ?? 0) + 1));
  await tx.jobStage.create({ data: { id: newId(), jobId, stage, on, who, note: note.slice(0, NOTE_MAX), createdAt } });
  await tx.job.update({ where: { id: jobId }, data: { updatedAt: new Date() } });
}

/** Says that a job has reached a stage, or has gone back to one (with the reason in `note`). @param on ISO date */
export async function jobStageSet(jobId: string, to: JobStage, on: string, who: string, note: string): Promise<StageAnswer> {
  const plants = await stagePlants(jobId);
  if (!plants) return GONE;
  return database().$transaction(async (tx): Promise<StageAnswer> => {
    const message = stageMoveFault(await jobStageRows(jobId, tx), to, on, note, plants, today().iso);
    if (message) return { kind: "fault", message };
    await stageRowAdd(tx, jobId, to, on, who, note.trim());
    return { kind: "done" };
  });
}

/** Puts the day of a stage right. */
export async function jobStageDate(jobId: string, rowId: string, on: string): Promise<StageAnswer> {
  return database().$transaction(async (tx): Promise<StageAnswer> => {
    const rows = await jobStageRows(jobId, tx);
    const row = rows.find(({ id }) => id === rowId);
    if (!row) return { kind: "fault", message: "This stage is no longer there. Reload the page." };
    const message = stageDateFault(rows, row.stage, on, today().iso);
    if (message) return { kind: "fault", message };
    await tx.jobStage.update({ where: { id: rowId }, data: { on } });
    return { kind: "done" };
  });
}
