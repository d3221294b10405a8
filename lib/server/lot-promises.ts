// What of a lot is promised to which jobs, and how promises are let go when there are too few plants.
import { plantsText } from "../nursery/count-words";
import { database, type Transaction } from "./database";
import { reservationFree } from "./reservations";

/** So many plants of a lot still promised to a job. */
export type LotPromise = { readonly jobId: string; readonly jobName: string; readonly open: number };

/** Promises of a lot by job, the oldest first. */
export async function lotPromises(tx: Transaction, lotId: string): Promise<LotPromise[]> {
  const records = await tx.reservation.findMany({
    where: { lotId, open: { gt: 0 } },
    include: { job: { select: { name: true } } },
    orderBy: [{ createdAt: "asc" }, { id: "asc" }],
  });
  const byJob = new Map<string, LotPromise>();
  for (const { jobId, job, open } of records) byJob.set(jobId, { jobId, jobName: job.name, open: (byJob.get(jobId)?.open ?? 0) + open });
  return [...byJob.values()];
}

/** "6 to Clinic entrance garden, 2 to Library court". */
export function promisesText(promises: readonly LotPromise[]): string {
  return promises.map(({ jobName, open }) => `${open.toLocaleString("en-US")} to ${jobName}`).join(", ");
}

/** Why only so many plants cannot be left in a lot, in words that name the jobs. @param left plants that would be on hand */
export function promisedMessage(left: number, reserved: number, promises: readonly LotPromise[]): string {
  return `${plantsText(reserved)} of this lot promised: ${promisesText(promises)}. With ${left ? `only ${left.toLocaleString("en-US")}` : "none"} on hand, ${plantsText(reserved - left)} would be missing.`;
}

/** Lets the newest promises go until no more than `left` plants are promised. @returns the jobs that lost plants, as "Clinic entrance garden (3 plants)" */
export async function promisesRelease(tx: Transaction, lotId: string, left: number, who: string, why: string): Promise<string[]> {
  const records = await tx.reservation.findMany({
    where: { lotId, open: { gt: 0 } },
    include: { job: { select: { name: true } } },
    orderBy: [{ createdAt: "desc" }, { id: "desc" }],
  });
  let over = records.reduce((sum, record) => sum + record.open, 0) - left;
  const lost = new Map<string, number>();
  for (const record of records) {
    if (over <= 0) break;
    const count = await reservationFree(tx, record, Math.min(over, record.open), who, `${why}: ${record.job.name} goes short`);
    over -= count;
    lost.set(record.job.name, (lost.get(record.job.name) ?? 0) + count);
  }
  return [...lost].map(([name, count]) => `${name} (${plantsText(count)})`);
}

/** As `lotPromises`, outside a transaction. */
export async function lotPromisesOf(lotId: string): Promise<LotPromise[]> {
  return lotPromises(database(), lotId);
}
