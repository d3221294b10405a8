// The plants of a job against the stock: what is promised, what is proposed, what is bought.
import type { Lot } from "../nursery/lot";
import { SIZE_UNKNOWN, sizeFromText } from "../nursery/size-read";
import type { PullTaxon } from "../pulls/pull-list";
import { pullProgress } from "../pulls/pull-progress";
import { type PurchaseOrder, type PurchaseSupplier, purchaseOrders } from "../pulls/purchase-list";
import { groupKey, type HeldPlants, heldJudged, type JobRules, type StockGroup } from "../pulls/stock-group";
import { type StockPlan, stockPlan } from "../pulls/stock-plan";
import { bedContexts } from "./bed-context";
import { database } from "./database";
import { type JobContext, jobContext } from "./job-context";
import { jobRules } from "./job-rules";
import type { StoredJob } from "./jobs";
import { pullEventsOfJob } from "./pull-events";
import { reservationsOfJob, type StoredReservation } from "./reservations";
import { stockLots } from "./stock-lots";
import { today } from "./today";

export type JobStock = {
  readonly context: JobContext;
  readonly rules: JobRules;
  readonly plan: StockPlan;
  readonly taxa: ReadonlyMap<string, PullTaxon>;
  /** Rows whose plant has left the dataset: they cannot be matched with lots. */
  readonly unknown: readonly string[];
};

/** Chosen lots by group key, as the page's address has them: "bed:row~lot". Texts that are none are passed over. */
export function choicesRead(texts: readonly string[]): ReadonlyMap<string, string> {
  return new Map(texts.flatMap((text): [string, string][] => (/^[^~]+~[^~]+$/.test(text) ? [[text.split("~")[0] ?? "", text.split("~")[1] ?? ""]] : [])));
}

async function stockGroups(context: JobContext): Promise<{ groups: StockGroup[]; taxa: Map<string, PullTaxon>; unknown: string[] }> {
  const [contexts, events] = await Promise.all([bedContexts(context), pullEventsOfJob(context.job.id)]);
  const progress = pullProgress(events);
  const taxa = new Map<string, PullTaxon>();
  const unknown: string[] = [];
  const groups = contexts.flatMap(({ stored, view }) =>
    view.rows.flatMap(({ row, letter, placed, quantity }): StockGroup[] => {
      if (row.existing) return [];
      if (!placed) {
        unknown.push(`${quantity || "?"} ${row.taxonName} ${row.size} (${stored.bed.name})`);
        return [];
      }
      const { taxon } = placed;
      taxa.set(taxon.id, taxon);
      const key = groupKey(stored.id, row.id);
      return [
        {
          key,
          bedId: stored.id,
          bedName: stored.bed.name,
          rowId: row.id,
          letter,
          taxonId: taxon.id,
          taxonName: taxon.name,
          sizeText: row.size,
          size: row.size.trim() === "" ? SIZE_UNKNOWN : sizeFromText(row.size, taxon.kind),
          wanted: quantity,
          received: progress.get(key)?.pulled ?? 0,
          remarks: row.remarks,
        },
      ];
    }),
  );
  return { groups, taxa, unknown };
}

/** What is promised to each group of a job, judged by the design as it is now, without looking at the stock; null when the job is gone. */
export async function jobHeld(jobId: string): Promise<{ readonly group: StockGroup; readonly held: readonly HeldPlants[] }[] | null> {
  const [context, rules] = await Promise.all([jobContext(jobId), jobRules(jobId)]);
  if (!context || !rules) return null;
  const [{ groups }, promised] = await Promise.all([stockGroups(context), reservationsOfJob(jobId)]);
  return groups.map((group) => ({
    group,
    held: heldJudged(
      group,
      promised.filter((one) => groupKey(one.bedId, one.rowId) === group.key),
      rules,
    ),
  }));
}

/** The plan of a job's plants; null when the job is gone. @param chosen lots chosen by hand, by group key */
export async function jobStock(jobId: string, chosen: ReadonlyMap<string, string> = new Map()): Promise<JobStock | null> {
  const [context, rules] = await Promise.all([jobContext(jobId), jobRules(jobId)]);
  if (!context || !rules) return null;
  const { groups, taxa, unknown } = await stockGroups(context);
  const wanted = groups.filter((group) => group.wanted > 0);
  const [promised, lots] = await Promise.all([reservationsOfJob(jobId), stockLots([...taxa.keys()])]);
  return { context, rules, plan: stockPlan(wanted, promised, lots, rules, chosen), taxa, unknown };
}

/** Suppliers that are not deleted, as orders take them. */
export async function purchaseSuppliers(): Promise<PurchaseSupplier[]> {
  const records = await database().supplier.findMany({ where: { deletedAt: null }, orderBy: { name: "asc" } });
  return records.map(({ id, name, contact, minimumCents, multiple, leadDays }) => ({ id, name, contact, minimumCents, multiple, leadDays }));
}

const isSuppliers = ({ lot }: { readonly lot: Lot }): boolean => lot.owner.kind === "supplier";

/** What a job buys and what it still has to find; `short`: plants that no lot is promised for yet. */
export type JobPurchaseList = {
  readonly job: StoredJob;
  readonly plantingOn: string | null;
  readonly suppliers: readonly PurchaseOrder[];
  readonly short: readonly {
    readonly key: string;
    readonly taxonId: string;
    readonly taxonName: string;
    readonly sizeText: string;
    readonly bedName: string;
    readonly count: number;
    readonly why: string;
  }[];
  readonly taxa: ReadonlyMap<string, PullTaxon>;
};

/** The purchase list of a job: what is promised from suppliers' lots and not yet received, by supplier; null when the job is gone. */
export async function jobPurchaseList(jobId: string): Promise<JobPurchaseList | null> {
  const stock = await jobStock(jobId);
  if (!stock) return null;
  const { plan, rules, context, taxa } = stock;
  const bought: StoredReservation[] = (await reservationsOfJob(jobId)).filter(isSuppliers);
  const ids = bought.map(({ lot }) => lot.id);
  const [records, suppliers, offers] = await Promise.all([
    database().lot.findMany({ where: { id: { in: ids } }, select: { id: true, code: true } }),
    purchaseSuppliers(),
    stockLots([...new Set(bought.map(({ lot }) => lot.taxonId))]),
  ]);
  const codes = new Map(records.map(({ id, code }) => [id, code]));
  const bedNames = new Map(plan.groups.map(({ group }) => [group.bedId, group.bedName]));
  const needs = bought.map(({ lot, lotTaxonName, bedId, open }) => ({
    lot,
    code: codes.get(lot.id) ?? "",
    taxonName: lotTaxonName,
    bedName: bedNames.get(bedId) ?? "a bed that is gone",
    quantity: open,
  }));
  return {
    job: context.job,
    plantingOn: rules.plantingOn,
    suppliers: purchaseOrders(needs, suppliers, offers, rules.plantingOn, today().iso),
    short: plan.groups.flatMap(({ group, short, why }) =>
      short > 0 ? [{ key: group.key, taxonId: group.taxonId, taxonName: group.taxonName, sizeText: group.sizeText, bedName: group.bedName, count: short, why }] : [],
    ),
    taxa,
  };
}
