// The papers of a job, each made from what is stored: one place for screens and downloads.
import type { Paper } from "../../papers/paper";
import { digPaper } from "../../papers/paper-dig";
import { kindPaper } from "../../papers/paper-kind";
import { type PaperJob, pullPaper } from "../../papers/paper-pull";
import { purchasePaper } from "../../papers/paper-purchase";
import { plantingSchedule } from "../../papers/planting-schedule";
import { placeLabel } from "../../place/place";
import { isoDateText } from "../../pulls/iso-date";
import type { PullTaxon } from "../../pulls/pull-list";
import { sheetLines } from "../../pulls/pull-sheet";
import { bedContexts } from "../bed-context";
import { type JobContext, jobContext } from "../job-context";
import { type JobPullSheet, jobPullSheet } from "../job-pull-sheet";
import { jobRules } from "../job-rules";
import { jobPurchaseList } from "../job-stock";
import { jobPull } from "../pull";
import { reservationsOfJob } from "../reservations";
import { taxaHeld } from "../taxa";
import { today } from "../today";

/** Papers of the pull page: by place, to dig, to buy, totals by kind. */
export const PULL_VIEWS = ["place", "dig", "buy", "kind"] as const;
export type PullView = (typeof PULL_VIEWS)[number];

/** `bedName` null: the whole job. */
export type JobPaper = { readonly jobName: string; readonly bedName: string | null; readonly paper: Paper };

type Beds = readonly { readonly id: string; readonly name: string }[];

/** Head and foot of a job's paper. */
export function paperJob(context: JobContext, beds: Beds, bedId: string | null, plantingOn: string | null): PaperJob {
  return {
    jobName: context.job.name,
    bedName: bedId === null ? null : (beds.find(({ id }) => id === bedId)?.name ?? null),
    place: placeLabel(context.place),
    date: today().text,
    plantingText: plantingOn === null ? "" : isoDateText(plantingOn),
  };
}

/** Head and foot of the paper of a pull sheet. */
export const sheetPaperJob = (sheet: JobPullSheet, bedId: string | null): PaperJob => paperJob(sheet.context, sheet.beds, bedId, sheet.plantingOn);

const withJob = (job: PaperJob, paper: Paper): JobPaper => ({ jobName: job.jobName, bedName: job.bedName, paper });

async function kindView(jobId: string, bedId: string | null): Promise<JobPaper | null> {
  const pull = await jobPull(jobId, bedId);
  if (!pull) return null;
  const rules = await jobRules(jobId);
  const beds = pull.list.beds.map(({ bedId: id, bedName: name }) => ({ id, name }));
  const job = { ...paperJob(pull.job, beds, null, rules?.plantingOn ?? null), bedName: pull.bedName };
  const paper = kindPaper(pull.list, job);
  const gone = pull.unknown.length > 0 ? [`No longer in the dataset, to be pulled by hand: ${pull.unknown.join("; ")}.`] : [];
  return withJob(job, { ...paper, notes: [...gone, ...paper.notes] });
}

async function purchaseView(jobId: string, sheet: JobPullSheet): Promise<JobPaper | null> {
  const [list, reservations, { byId }] = await Promise.all([jobPurchaseList(jobId), reservationsOfJob(jobId), taxaHeld()]);
  if (!list) return null;
  const taxonOf = (lotId: string): PullTaxon | null => byId.get(reservations.find(({ lot }) => lot.id === lotId)?.lot.taxonId ?? "") ?? null;
  const job = sheetPaperJob(sheet, null);
  return withJob(job, purchasePaper(list.suppliers, taxonOf, job));
}

/** Which view a pull page opens with: by place once anything is reserved, else the totals by kind. */
export function pullViewChosen(wanted: string | null, sheet: JobPullSheet): PullView {
  const known = PULL_VIEWS.find((view) => view === wanted);
  return known ?? (sheetLines(sheet.sheet).some(({ reservationId }) => reservationId !== null) ? "place" : "kind");
}

/** A paper of the pull page; null when job or bed is gone. Orders go to suppliers for the whole job, whatever the bed. */
export async function pullViewPaper(jobId: string, bedId: string | null, wanted: string | null): Promise<(JobPaper & { readonly view: PullView }) | null> {
  const sheet = await jobPullSheet(jobId, bedId);
  if (!sheet || (bedId !== null && !sheet.beds.some(({ id }) => id === bedId))) return null;
  const view = pullViewChosen(wanted, sheet);
  const job = sheetPaperJob(sheet, bedId);
  const paper =
    view === "kind"
      ? await kindView(jobId, bedId)
      : view === "buy"
        ? await purchaseView(jobId, sheet)
        : withJob(job, view === "dig" ? digPaper(sheet.sheet, job) : pullPaper(sheet.sheet, job));
  return paper && { ...paper, view };
}

/** The planting schedule of a job or one of its beds, with the beds there are; null when job or bed is gone. */
export async function schedulePaper(jobId: string, bedId: string | null): Promise<(JobPaper & { readonly beds: Beds }) | null> {
  const context = await jobContext(jobId);
  if (!context) return null;
  const [contexts, rules] = await Promise.all([bedContexts(context), jobRules(jobId)]);
  const beds = contexts.map(({ stored }) => ({ id: stored.id, name: stored.bed.name }));
  if (bedId !== null && !beds.some(({ id }) => id === bedId)) return null;
  const gone: string[] = [];
  const rows = contexts
    .filter(({ stored }) => bedId === null || stored.id === bedId)
    .flatMap(({ stored, view }) =>
      view.rows.flatMap(({ row, placed, letter, quantity, spacingFt }) => {
        if (!placed) {
          gone.push(`${letter}: ${quantity || "?"} ${row.taxonName} ${row.size} (${stored.bed.name})`);
          return [];
        }
        const { size: sizeText, existing, remarks } = row;
        return [{ bedId: stored.id, bedName: stored.bed.name, letter, taxon: placed.taxon, sizeText, quantity, spacingFt, existing, remarks }];
      }),
    );
  const job = paperJob(context, beds, bedId, rules?.plantingOn ?? null);
  const paper = plantingSchedule(rows, job);
  const lost = gone.length > 0 ? [`No longer in the dataset, and not in the table: ${gone.join("; ")}.`] : [];
  return { ...withJob(job, { ...paper, notes: [...lost, ...paper.notes] }), beds };
}
