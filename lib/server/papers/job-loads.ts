// The loads of a job on the firm's trucks.
import type { Paper } from "../../papers/paper";
import { loadsPaper } from "../../papers/paper-loads";
import { bedsOrdered, loadItems } from "../../pulls/load-items";
import { type LoadPlan, loadsPlanned } from "../../pulls/loads";
import { type PullSheetLine, sheetLines } from "../../pulls/pull-sheet";
import { jobPullSheet } from "../job-pull-sheet";
import { type StoredTruck, truckList } from "../trucks";
import { sheetPaperJob } from "./job-papers";

export type JobLoads = {
  readonly jobName: string;
  readonly trucks: readonly StoredTruck[];
  /** Beds that take anything, in the order of planting. */
  readonly beds: readonly { readonly id: string; readonly name: string }[];
  readonly withBought: boolean;
  readonly hasBought: boolean;
  readonly lines: ReadonlyMap<string, PullSheetLine>;
  readonly plan: LoadPlan;
  readonly paper: Paper;
};

/** What the page's address says: `beds` ids in the order of planting, by commas; `bought` "0": suppliers deliver to the site. */
export async function jobLoads(jobId: string, query: { readonly beds: string | null; readonly bought: string | null }): Promise<JobLoads | null> {
  const [found, trucks] = await Promise.all([jobPullSheet(jobId), truckList()]);
  if (!found) return null;
  const lines = sheetLines(found.sheet);
  const withBought = query.bought !== "0";
  const chosen = (query.beds ?? "").split(",").filter(Boolean);
  const beds = bedsOrdered(found.beds, chosen).filter(({ id }) => lines.some(({ bedId }) => bedId === id));
  const { items, unweighed } = loadItems(
    lines,
    beds.map(({ id }) => id),
    withBought,
  );
  const planned = loadsPlanned(items, trucks);
  const plan: LoadPlan = { loads: planned.loads, left: [...planned.left, ...unweighed] };
  const byId = new Map(lines.map((line) => [line.lineId, line]));
  return {
    jobName: found.job.name,
    trucks,
    beds,
    withBought,
    hasBought: lines.some(({ method }) => method === "buy"),
    lines: byId,
    plan,
    paper: loadsPaper(plan, byId, sheetPaperJob(found, null)),
  };
}
