// Plants that came up short, damaged or swapped in the field: what each costs its bed, and what could stand there instead.
import type { Bed } from "../ground/bed";
import { taxonSuits } from "../papers/bed-fill";
import { type BedView, bedView, type PlacedTaxon } from "../papers/bed-view";
import type { Taxon } from "../plants/taxon";
import { bedSubstituted, type Substitution } from "../pulls/bed-substituted";
import { type LineProgress, lineMissing, pullProgress } from "../pulls/pull-progress";
import type { PullSheetLine } from "../pulls/pull-sheet";
import { type Substitute, substitutesRanked } from "../pulls/substitute";
import { type BedContext, bedContexts } from "./bed-context";
import { bedFind, bedSave } from "./beds";
import { database } from "./database";
import { newId } from "./identity";
import { type JobContext, jobContext } from "./job-context";
import { jobPullSheet } from "./job-pull-sheet";
import { pullEventsOfJob, pullEventsReceive } from "./pull-events";
import { taxaHeld } from "./taxa";

export type ShortOffer = {
  readonly substitute: Substitute;
  readonly taxon: Pick<Taxon, "id" | "name" | "botanical" | "cultivar" | "group" | "tradeDesignation" | "commonNames">;
  /** Plants of it that are free in the firm's own nursery, and on suppliers' lists. */
  readonly ownFree: number;
  readonly supplierFree: number;
  /** The bed's year score with it, 0–1, and the half-months that would become bare. */
  readonly score: number;
  readonly newlyBare: readonly string[];
};

export type ShortLine = {
  readonly line: PullSheetLine;
  readonly progress: LineProgress;
  readonly missing: number;
  /** The bed's year score now, and without the missing plants, 0–1; the half-months that would become bare without them. */
  readonly scoreNow: number;
  readonly scoreWithout: number;
  readonly bareWithout: readonly string[];
  readonly offers: readonly ShortOffer[];
};
export type JobShorts = {
  readonly job: JobContext;
  readonly shorts: readonly ShortLine[];
  readonly conflicts: readonly { readonly line: PullSheetLine; readonly progress: LineProgress }[];
};

/** A plant that keeps less of the lost one's season is no substitute (judgement, no source). */
const SEASON_KEPT_MIN = 0.25;
const OFFERS_IN_STOCK = 5;
const OFFERS_ELSEWHERE = 3;
/** How much more a half-month counts that is bare or nearly so than one that has plenty (judgement, no source). */
const NEED_MORE = 3;

type Free = ReadonlyMap<string, { own: number; supplier: number }>;

async function freeByTaxon(): Promise<Free> {
  const lots = await database().lot.findMany({ where: { deletedAt: null, quantity: { gt: 0 } }, select: { taxonId: true, supplierId: true, quantity: true, reserved: true } });
  const free = new Map<string, { own: number; supplier: number }>();
  for (const lot of lots) {
    const so = free.get(lot.taxonId) ?? { own: 0, supplier: 0 };
    const more = Math.max(0, lot.quantity - lot.reserved);
    free.set(lot.taxonId, lot.supplierId === null ? { ...so, own: so.own + more } : { ...so, supplier: so.supplier + more });
  }
  return free;
}

const bareNow = (view: BedView) => new Set(view.season.gaps.map((gap) => gap.index));
const newlyBare = (before: BedView, after: BedView) => after.season.gaps.filter((gap) => !bareNow(before).has(gap.index)).map((gap) => gap.label);

/** The bed with so many plants of a row fewer. */
function bedWithout(bed: Bed, rowId: string, left: number): Bed {
  return {
    ...bed,
    rows: bed.rows.flatMap((row) => (row.id !== rowId ? [row] : left > 0 ? [{ ...row, quantity: { by: "count" as const, count: left } }] : [])),
    drawing: null,
  };
}

function substitution(line: PullSheetLine, present: number, quantity: number, taxon: Pick<Taxon, "id" | "name">): Substitution {
  return { rowId: line.rowId, quantity, present, taxonId: taxon.id, taxonName: taxon.name, size: line.sizeText, newRowId: newId() };
}

function offersOf(context: BedContext, line: PullSheetLine, present: number, missing: number, swappedTo: string | null, taxa: readonly Taxon[], free: Free): ShortOffer[] {
  const { stored, job, placed, view } = context;
  const lost = placed[line.taxon.id];
  if (!lost) return [];
  const suited = taxa
    .filter((taxon) => taxon.kind === lost.taxon.kind && taxonSuits(taxon, stored.bed.site, job.viewPlace))
    .map((taxon): PlacedTaxon => ({ taxon, season: job.seasonOf(taxon) }));
  const byId = new Map(suited.map((candidate) => [candidate.taxon.id, candidate]));
  const need = view.season.halfMonths.map(({ interest, target }) => 1 + NEED_MORE * Math.max(0, 1 - interest / Math.max(target, 1e-9)));
  const growing = { lastFreezeDay: job.viewPlace.lastFreezeDay, firstFreezeDay: job.viewPlace.firstFreezeDay };
  const ranked = substitutesRanked(lost, suited, growing, need);
  const freeOf = (id: string) => free.get(id) ?? { own: 0, supplier: 0 };
  const inStock = (s: Substitute) => freeOf(s.taxonId).own + freeOf(s.taxonId).supplier >= missing;
  const crewTook = (s: Substitute) => s.taxonId === swappedTo;
  const rest = ranked.filter((s) => !crewTook(s) && s.seasonShare >= SEASON_KEPT_MIN);
  const chosen = [...ranked.filter(crewTook), ...rest.filter(inStock).slice(0, OFFERS_IN_STOCK), ...rest.filter((s) => !inStock(s)).slice(0, OFFERS_ELSEWHERE)];
  return chosen.flatMap((substitute): ShortOffer[] => {
    const candidate = byId.get(substitute.taxonId);
    const bed = candidate && bedSubstituted(stored.bed, substitution(line, present, missing, candidate.taxon));
    if (!candidate || !bed) return [];
    const after = bedView(bed, { ...placed, [candidate.taxon.id]: candidate }, job.viewPlace, job.job.targets);
    const { id, name, botanical, cultivar, group, tradeDesignation, commonNames } = candidate.taxon;
    const { own, supplier } = freeOf(id);
    return [
      {
        substitute,
        taxon: { id, name, botanical, cultivar, group, tradeDesignation, commonNames },
        ownFree: own,
        supplierFree: supplier,
        score: after.season.score,
        newlyBare: newlyBare(view, after),
      },
    ];
  });
}

/** Everything of a job that is short, damaged, swapped or in conflict; null when the job is gone. */
export async function jobShorts(jobId: string): Promise<JobShorts | null> {
  const [job, sheet] = await Promise.all([jobContext(jobId), jobPullSheet(jobId)]);
  if (!job || !sheet) return null;
  const progress = pullProgress(await pullEventsOfJob(jobId));
  const lines = sheet.sheet.stops.flatMap((stop) => stop.lines);
  const touched = lines.flatMap((line) => {
    const done = progress.get(line.lineId);
    return done ? [{ line, progress: done }] : [];
  });
  const conflicts = touched.filter((one) => one.progress.conflict);
  const missing = touched.filter((one) => lineMissing(one.progress) > 0);
  if (missing.length === 0) return { job, shorts: [], conflicts };
  const [contexts, held, free] = await Promise.all([bedContexts(job), taxaHeld(), freeByTaxon()]);
  const shorts = missing.flatMap(({ line, progress: done }): ShortLine[] => {
    const context = contexts.find(({ stored }) => stored.id === line.bedId);
    const row = context?.view.rows.find((r) => r.row.id === line.rowId);
    if (!context || !row) return [];
    const lacks = lineMissing(done);
    const without = bedView(bedWithout(context.stored.bed, line.rowId, row.quantity - lacks), context.placed, job.viewPlace, job.job.targets);
    return [
      {
        line,
        progress: done,
        missing: lacks,
        scoreNow: context.view.season.score,
        scoreWithout: without.season.score,
        bareWithout: newlyBare(context.view, without),
        offers: offersOf(context, line, row.quantity, lacks, done.swappedTo, held.taxa, free),
      },
    ];
  });
  return { job, shorts, conflicts };
}

export type SubstituteAnswer =
  | { readonly kind: "done"; readonly bedId: string; readonly score: number; readonly newlyBare: readonly string[] }
  | { readonly kind: "fault"; readonly message: string };

/**
 * Puts a substitute into the bed's design for the plants that are missing on a line, and settles them. The bed's year and findings follow from its plants.
 * @returns the bed's year score after it, or why nothing was done
 */
export async function substituteAccept(jobId: string, lineId: string, taxonId: string, quantity: number, who: string): Promise<SubstituteAnswer> {
  const [shorts, held] = await Promise.all([jobShorts(jobId), taxaHeld()]);
  const short = shorts?.shorts.find(({ line }) => line.lineId === lineId);
  const taxon = held.byId.get(taxonId);
  if (!shorts || !short || !taxon) return { kind: "fault", message: "This line is no longer short, or the plant has left the dataset. Reload the page." };
  if (quantity > short.missing) return { kind: "fault", message: `Only ${short.missing} are missing on this line.` };
  const { line } = short;
  const before = (await bedContexts(shorts.job)).find(({ stored }) => stored.id === line.bedId);
  const stored = await bedFind(line.bedId);
  const present = before?.view.rows.find((r) => r.row.id === line.rowId)?.quantity ?? 0;
  const bed = stored && bedSubstituted(stored.bed, substitution(line, present, quantity, taxon));
  if (!stored || !bed || !before) return { kind: "fault", message: "The bed was changed meanwhile. Reload the page and look again." };
  const saved = await bedSave(stored.id, stored.version, bed);
  if (saved.kind !== "saved")
    return { kind: "fault", message: saved.kind === "stale" ? "The bed was changed in another window meanwhile. Look again; nothing was changed here." : saved.message };
  const told = await pullEventsReceive(jobId, [
    {
      id: newId(),
      lineId,
      kind: "substituted",
      quantity,
      data: taxonId,
      note: `${quantity} ${taxon.name} instead`,
      who,
      doneAt: new Date().toISOString(),
      knew: short.progress.events,
    },
  ]);
  if (told.kind === "fault") return told;
  const after = (await bedContexts(before.job)).find(({ stored: s }) => s.id === line.bedId);
  return after
    ? { kind: "done", bedId: line.bedId, score: after.view.season.score, newlyBare: newlyBare(before.view, after.view) }
    : { kind: "fault", message: "The bed is gone." };
}
