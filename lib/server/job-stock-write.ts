// Reserving, releasing, selling and buying the plants of a job. What is written is what the screen showed: where the stock or the design changed meanwhile nothing
// is written, and the words say what changed.
import { plantsText } from "../nursery/count-words";
import { isIsoDate } from "../pulls/iso-date";
import { stageIndex, stageMoveFault, stageNow } from "../pulls/job-stage";
import { type PlanPick, planPicks, planReleases, type StockPlan } from "../pulls/stock-plan";
import { database } from "./database";
import { newId } from "./identity";
import { jobStageRows, jobStageView, stageRowAdd } from "./job-stages";
import { jobStock } from "./job-stock";
import { lotEventsWrite } from "./lot-events";
import { reservationFree, reservationsMake } from "./reservations";
import { stockTransaction } from "./stock-transaction";
import { today } from "./today";

export type StockAnswer =
  | { readonly kind: "done"; readonly message: string }
  /** Somebody else changed stock or design meanwhile: nothing was written, look at what is proposed now. */
  | { readonly kind: "changed"; readonly message: string }
  | { readonly kind: "fault"; readonly message: string };

/** What the screen showed. `keys`: the groups meant; null: all. `picks`: their proposed lots. */
export type ShownPlan = { readonly keys: readonly string[] | null; readonly chosen: ReadonlyMap<string, string>; readonly picks: readonly PlanPick[] };

const GONE: StockAnswer = { kind: "fault", message: "This job is no longer there." };
const pickText = ({ lotId, bedId, rowId, quantity }: PlanPick): string => `${bedId}:${rowId}~${lotId}:${quantity}`;
const sameTexts = (a: readonly string[], b: readonly string[]): boolean => [...a].sort().join(" ") === [...b].sort().join(" ");

/** Who took plants of the lots that the screen proposed and that have too few free now. */
async function takenWords(jobId: string, shown: readonly PlanPick[]): Promise<string> {
  const wanted = new Map<string, number>();
  for (const pick of shown) wanted.set(pick.lotId, (wanted.get(pick.lotId) ?? 0) + pick.quantity);
  const lots = await database().lot.findMany({
    where: { id: { in: [...wanted.keys()] } },
    include: { reservations: { where: { jobId: { not: jobId }, open: { gt: 0 } }, include: { job: { select: { name: true } } }, orderBy: { updatedAt: "desc" } } },
  });
  const sentences = lots.flatMap((lot) => {
    const want = wanted.get(lot.id) ?? 0;
    const free = lot.deletedAt ? 0 : lot.quantity - lot.reserved;
    if (free >= want) return [];
    const latest = lot.reservations[0];
    const whose = latest ? `; ${latest.open.toLocaleString("en-US")} promised to ${latest.job.name}` : "";
    return [
      `${[lot.taxonName, lot.size].filter(Boolean).join(" ")}: ${want.toLocaleString("en-US")} wanted, ${free > 0 ? `only ${free.toLocaleString("en-US")}` : "none"} free now${whose}.`,
    ];
  });
  return sentences.join(" ");
}

async function changedAnswer(jobId: string, shown: readonly PlanPick[]): Promise<StockAnswer> {
  const taken = await takenWords(jobId, shown);
  return { kind: "changed", message: `${taken || "The stock or a bed was changed meanwhile."} Nothing was reserved. What is proposed now is shown; look at it and press again.` };
}

/** Gives back what no longer fits, and takes away again what was only asked for. @returns plants given back */
async function planGivenBack(plan: StockPlan, keys: readonly string[] | null, who: string, why: string): Promise<number> {
  const releases = planReleases(plan, keys);
  if (!releases.length) return 0;
  return stockTransaction(async (tx) => {
    let count = 0;
    for (const { promised, release } of releases) count += await releasedIn(tx, promised.id, release, who, why);
    return count;
  });
}

type Tx = Parameters<Parameters<typeof stockTransaction>[0]>[0];

/** Releases so many plants of a reservation (null: all open). Plants asked of a supplier are on no list: with the promise they vanish. */
async function releasedIn(tx: Tx, id: string, quantity: number | null, who: string, why: string): Promise<number> {
  const found = await tx.reservation.findUnique({ where: { id }, include: { lot: true } });
  if (!found) return 0;
  const count = await reservationFree(tx, found, quantity ?? found.open, who, why);
  if (count > 0 && isAskedFor(found.lot)) {
    const left = found.lot.quantity - count;
    await tx.lot.update({ where: { id: found.lotId }, data: { quantity: left, version: { increment: 1 }, ...(left === 0 ? { deletedAt: new Date() } : {}) } });
    await lotEventsWrite(tx, [{ lotId: found.lotId, kind: "change", who, why: "no longer asked for", before: { quantity: found.lot.quantity }, after: { quantity: left } }]);
  }
  return count;
}

/** Reserves what the screen showed, all or nothing, after giving back what no longer fits. */
export async function jobStockReserve(jobId: string, shown: ShownPlan, who: string): Promise<StockAnswer> {
  const stock = await jobStock(jobId, shown.chosen);
  if (!stock) return GONE;
  const { plan } = stock;
  const picks = planPicks(plan, shown.keys);
  if (!sameTexts(picks.map(pickText), shown.picks.map(pickText))) return changedAnswer(jobId, shown.picks);
  const back = await planGivenBack(plan, shown.keys, who, `${stock.context.job.name}: the design was changed`);
  const backWords = back ? `${plantsText(back)} that no longer fit given back. ` : "";
  if (!picks.length) return back ? { kind: "done", message: backWords.trim() } : { kind: "fault", message: "There is nothing to reserve: no lot is proposed." };
  const answer = await reservationsMake(jobId, picks, who);
  switch (answer.kind) {
    case "reserved":
      return { kind: "done", message: `${backWords}${plantsText(answer.count)} reserved.` };
    case "short": {
      const changed = await changedAnswer(jobId, picks);
      return { ...changed, message: `${backWords}${changed.message}` };
    }
    case "fault":
      return { kind: "changed", message: `${backWords}${answer.message}` };
  }
}

/** Releases plants of one reservation of the job, or of all where `id` is null. What was pulled stays pulled. */
export async function jobStockRelease(jobId: string, id: string | null, who: string): Promise<StockAnswer> {
  const found = await database().reservation.findMany({
    where: { jobId, open: { gt: 0 }, ...(id === null ? {} : { id }) },
    include: { job: { select: { name: true } } },
    orderBy: { id: "asc" },
  });
  if (!found.length) return { kind: "changed", message: "This was released or pulled already. What is promised now is shown." };
  const count = await stockTransaction(async (tx) => {
    let sum = 0;
    for (const one of found) sum += await releasedIn(tx, one.id, null, who, `${one.job.name}: released`);
    return sum;
  });
  return { kind: "done", message: `${plantsText(count)} released and free again.` };
}

/** Sells the job: stage sold, what is proposed reserved, and stage reserved when nothing is short. @param on ISO date of the sale */
export async function jobSell(jobId: string, shown: ShownPlan, on: string, who: string): Promise<StockAnswer> {
  const view = await jobStageView(jobId);
  if (!view) return GONE;
  if (stageIndex(stageNow(view.rows)) >= stageIndex("sold")) return { kind: "changed", message: "This job was sold already. Reserve what is still open." };
  const dateFault = isIsoDate(on) ? stageMoveFault(view.rows, "sold", on, "", view.plants, today().iso) : "A date, such as 2027-04-15.";
  if (dateFault) return { kind: "fault", message: dateFault };
  const reserved: StockAnswer = shown.picks.length ? await jobStockReserve(jobId, { ...shown, keys: null }, who) : { kind: "done", message: "Nothing to reserve yet." };
  if (reserved.kind !== "done") return reserved;
  const after = await jobStageView(jobId);
  const missing = after ? after.plants.wanted - after.plants.promised : 0;
  await database().$transaction(async (tx) => {
    const rows = await jobStageRows(jobId, tx);
    if (stageIndex(stageNow(rows)) >= stageIndex("sold")) return;
    await stageRowAdd(tx, jobId, "sold", on, who);
    if (missing === 0 && (after?.plants.promised ?? 0) > 0) await stageRowAdd(tx, jobId, "reserved", today().iso, who);
  });
  return { kind: "done", message: `Sold. ${reserved.message}${missing > 0 ? ` ${plantsText(missing)} still to be found; they are named below.` : ""}` };
}

/** Marks a supplier's lot that is on no list: so many plants were asked for, for a job. */
const ASKED_FOR = "asked for, not on a list";
const isAskedFor = (lot: { readonly supplierId: string | null; readonly listId: string | null; readonly remarks: string }): boolean =>
  lot.supplierId !== null && lot.listId === null && lot.remarks === ASKED_FOR;

/** Puts the plants that a group is short of on a supplier's order, though they are on no list of the supplier: a lot of just so many, promised to the group. */
export async function jobShortBuy(jobId: string, key: string, supplierId: string, who: string): Promise<StockAnswer> {
  const stock = await jobStock(jobId);
  const own = stock?.plan.groups.find(({ group }) => group.key === key);
  if (!stock || !own || own.short === 0) return { kind: "changed", message: "This is not short any more. What is short now is shown." };
  const supplier = await database().supplier.findFirst({ where: { id: supplierId, deletedAt: null } });
  if (!supplier) return { kind: "fault", message: "This supplier was removed. Choose another." };
  const { group, short } = own;
  const lotId = newId();
  await stockTransaction(async (tx) => {
    await tx.lot.create({ data: { id: lotId, taxonId: group.taxonId, taxonName: group.taxonName, size: group.sizeText, supplierId, quantity: short, remarks: ASKED_FOR } });
    await lotEventsWrite(tx, [{ lotId, kind: "add", who, why: `asked for, ${stock.context.job.name}`, before: {}, after: { quantity: short } }]);
  });
  const answer = await reservationsMake(jobId, [{ lotId, bedId: group.bedId, rowId: group.rowId, quantity: short, steps: 0 }], who);
  if (answer.kind === "reserved") return { kind: "done", message: `${plantsText(short)} of ${group.taxonName} put on the order to ${supplier.name}. Ask for price and delivery.` };
  await database().lot.updateMany({ where: { id: lotId, reserved: 0 }, data: { deletedAt: new Date(), quantity: 0 } });
  return { kind: "changed", message: answer.message };
}

/** Moves a line of one supplier's order to a lot of another: the new plants are promised first, then the old ones given back. */
export async function jobPurchaseMove(jobId: string, fromLotId: string, toLotId: string, who: string): Promise<StockAnswer> {
  const found = await database().reservation.findMany({ where: { jobId, lotId: fromLotId, open: { gt: 0 } } });
  if (!found.length) return { kind: "changed", message: "This line is no longer on the order. The orders as they are now are shown." };
  const answer = await reservationsMake(
    jobId,
    found.map(({ bedId, rowId, open, steps }) => ({ lotId: toLotId, bedId, rowId, quantity: open, steps })),
    who,
  );
  if (answer.kind !== "reserved") return { kind: "changed", message: answer.message };
  await stockTransaction(async (tx) => {
    for (const { id, open } of found) await releasedIn(tx, id, open, who, "bought elsewhere");
  });
  return { kind: "done", message: `${plantsText(answer.count)} moved.` };
}
