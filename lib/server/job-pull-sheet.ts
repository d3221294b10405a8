// The pull sheet of a job, from its beds, what is reserved for them, and what was done in the field.
import type { Taxon } from "../plants/taxon";
import type { DigPlant } from "../pulls/dig-method";
import type { PullTaxon } from "../pulls/pull-list";
import { pullProgress } from "../pulls/pull-progress";
import { type PullSheet, pullSheet, type SheetPromise, type SheetRow } from "../pulls/pull-sheet";
import { type BedContext, bedContexts } from "./bed-context";
import { type JobContext, jobContext } from "./job-context";
import { jobRules } from "./job-rules";
import { pullEventsOfJob } from "./pull-events";
import { reservationsOfJob } from "./reservations";
import { taxaHeld } from "./taxa";

export type JobPullSheet = {
  readonly job: { readonly id: string; readonly name: string; readonly client: string; readonly address: string };
  readonly context: JobContext;
  /** In the order of the job: the order of planting unless another is chosen. */
  readonly beds: readonly { readonly id: string; readonly name: string }[];
  /** ISO date on which planting is to begin; null: not set. */
  readonly plantingOn: string | null;
  readonly sheet: PullSheet;
};

/** A plant that is no longer in the dataset, by the name it was added with. */
function taxonNamed(id: string, name: string): PullTaxon {
  return { id, name, genus: name.split(" ")[0] ?? name, botanical: name, cultivar: null, group: null, tradeDesignation: null, commonNames: [], kind: "perennial" };
}
const PLANT_UNKNOWN: DigPlant = { flags: [], leaves: null };

const plantOf = (taxon: Taxon | undefined, job: JobContext): DigPlant => (taxon ? { flags: taxon.flags, leaves: job.seasonOf(taxon).leaves } : PLANT_UNKNOWN);

function sheetRows({ stored, view, job }: BedContext): SheetRow[] {
  return view.rows.map(({ row, placed, letter, quantity }) => ({
    bedId: stored.id,
    bedName: stored.bed.name,
    rowId: row.id,
    letter,
    taxon: placed?.taxon ?? taxonNamed(row.taxonId, row.taxonName),
    plant: plantOf(placed?.taxon, job),
    sizeText: row.size,
    quantity: placed || row.quantity.by !== "area" ? quantity : 0,
    existing: row.existing,
    remarks: row.remarks,
  }));
}

/** The pull sheet of a job; null when the job is gone. @param bedId one bed's lines alone */
export async function jobPullSheet(jobId: string, bedId: string | null = null): Promise<JobPullSheet | null> {
  const context = await jobContext(jobId);
  if (!context) return null;
  const [contexts, reservations, events, { byId }, rules] = await Promise.all([
    bedContexts(context),
    reservationsOfJob(jobId),
    pullEventsOfJob(jobId),
    taxaHeld(),
    jobRules(jobId),
  ]);
  const wanted = (id: string): boolean => bedId === null || id === bedId;
  const promises = reservations
    .filter((one) => wanted(one.bedId))
    .map((one): SheetPromise => {
      const taxon = byId.get(one.lot.taxonId);
      return { ...one, taxon: taxon ?? taxonNamed(one.lot.taxonId, one.lotTaxonName), plant: plantOf(taxon, context) };
    });
  const plantingOn = rules?.plantingOn ?? null;
  const { id, name, client, address } = context.job;
  return {
    job: { id, name, client, address },
    context,
    beds: contexts.map(({ stored }) => ({ id: stored.id, name: stored.bed.name })),
    plantingOn,
    sheet: pullSheet(contexts.filter(({ stored }) => wanted(stored.id)).flatMap(sheetRows), promises, {
      digOn: plantingOn,
      lastFreezeDay: context.viewPlace.lastFreezeDay,
      progress: pullProgress(events),
    }),
  };
}
