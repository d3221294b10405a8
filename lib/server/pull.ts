import { type PullList, type PullRow, pullList } from "../pulls/pull-list";
import { bedContexts } from "./bed-context";
import { type JobContext, jobContext } from "./job-context";

export type JobPull = { readonly job: JobContext; readonly bedName: string | null; readonly list: PullList; readonly unknown: readonly string[] };

/** The pull list of a job, or of one of its beds. Null when job or bed is gone. `unknown`: plants that left the dataset, still to be pulled by hand. */
export async function jobPull(jobId: string, bedId: string | null): Promise<JobPull | null> {
  const job = await jobContext(jobId);
  if (!job) return null;
  const contexts = (await bedContexts(job)).filter(({ stored }) => bedId === null || stored.id === bedId);
  if (bedId !== null && contexts.length === 0) return null;
  const unknown: string[] = [];
  const rows = contexts.flatMap(({ stored, view }) =>
    view.rows.flatMap(({ row, placed, quantity }): PullRow[] => {
      if (placed) return [{ bedId: stored.id, bedName: stored.bed.name, taxon: placed.taxon, sizeText: row.size, quantity, existing: row.existing, remarks: row.remarks }];
      if (!row.existing) unknown.push(`${quantity || "?"} ${row.taxonName} ${row.size} (${stored.bed.name})`);
      return [];
    }),
  );
  return { job, bedName: bedId === null ? null : (contexts[0]?.stored.bed.name ?? null), list: pullList(rows), unknown };
}
