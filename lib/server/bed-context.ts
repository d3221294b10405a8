// A bed with its job, its taxa dated at the place, and its view: one loading for sheet, downloads and fill.
import { type BedView, bedView, type PlacedTaxon } from "../papers/bed-view";
import { bedFind, bedsOfJob, type StoredBed } from "./beds";
import { type JobContext, jobContext } from "./job-context";
import { taxaHeld } from "./taxa";

export type BedContext = { readonly stored: StoredBed; readonly job: JobContext; readonly placed: Readonly<Record<string, PlacedTaxon>>; readonly view: BedView };

async function withView(stored: StoredBed, job: JobContext, year?: number): Promise<BedContext> {
  const { byId } = await taxaHeld();
  const placed: Record<string, PlacedTaxon> = {};
  for (const { taxonId } of stored.bed.rows) {
    const taxon = byId.get(taxonId);
    if (taxon) placed[taxonId] = { taxon, season: job.seasonOf(taxon) };
  }
  return { stored, job, placed, view: bedView(stored.bed, placed, job.viewPlace, job.job.targets, year) };
}

/** A bed in context; null when it, or its job, is gone. @param year years after planting for the interest */
export async function bedContext(bedId: string, year?: number): Promise<BedContext | null> {
  const stored = await bedFind(bedId);
  const job = stored ? await jobContext(stored.jobId) : null;
  return stored && job ? withView(stored, job, year) : null;
}

/** All beds of a job in context. */
export async function bedContexts(job: JobContext): Promise<BedContext[]> {
  const beds = await bedsOfJob(job.job.id);
  return Promise.all(beds.map((stored) => withView(stored, job)));
}
