// The lines of a list whose plants are known as lots on offer, and against the lots the supplier has now.
import type { MatchedLine } from "../nursery/line-match";
import { type HeldLot, type ListChange, listChange, type OfferedLot, sizeKey } from "../nursery/list-change";
import { readyDate } from "../nursery/ready-read";
import { SIZE_UNKNOWN, sizeFromText } from "../nursery/size-read";
import { database, type Transaction } from "./database";
import type { Lot as LotRecord } from "./generated/client";
import type { TaxaHeld } from "./taxa";
import { today } from "./today";

export type HeldSupplierLot = HeldLot & { readonly size: string; readonly record: LotRecord };

/** Most plants a lot may hold; a larger figure on a list is a slip. */
export const QUANTITY_MAX = 1_000_000;
export const REMARKS_MAX = 500;

/** @param taxonOf the plant a line stands for; null: none, the line is left out */
export function offersMade(held: TaxaHeld, lines: readonly MatchedLine[], taxonOf: (line: MatchedLine) => string | null): OfferedLot[] {
  const now = today().iso;
  return lines.flatMap((line) => {
    const taxon = held.byId.get(taxonOf(line) ?? "");
    if (!taxon) return [];
    const size = sizeFromText(line.sizeText, taxon.kind);
    const readyFrom = line.ready ? readyDate(line.ready, now) : null;
    const words = [
      ...line.remarks,
      ...(line.ready && readyFrom === null && !/^now$/i.test(line.ready) ? [`ready ${line.ready}`] : []),
      ...(line.quantity.orMore ? ["or more"] : []),
    ];
    return [
      {
        taxonId: taxon.id,
        sizeKey: sizeKey(size, line.sizeText),
        sizeText: line.sizeText.slice(0, 80),
        code: line.code.slice(0, 80),
        quantity: line.quantity.count === null ? null : Math.min(line.quantity.count, QUANTITY_MAX),
        priceCents: line.priceCents,
        prices: line.prices,
        readyFrom,
        grade: line.grade.slice(0, 80),
        remarks: words.join("; ").slice(0, REMARKS_MAX),
      },
    ];
  });
}

/** The supplier's lots as `listChange` takes them. */
export async function supplierHeldLots(tx: Pick<Transaction, "lot">, supplierId: string, held: TaxaHeld): Promise<HeldSupplierLot[]> {
  const records = await tx.lot.findMany({ where: { supplierId, deletedAt: null }, orderBy: { id: "asc" } });
  return records.map((record) => ({
    id: record.id,
    taxonId: record.taxonId,
    sizeKey: sizeKey(record.size === "" ? SIZE_UNKNOWN : sizeFromText(record.size, held.byId.get(record.taxonId)?.kind), record.size),
    code: record.code,
    quantity: record.quantity,
    reserved: record.reserved,
    priceCents: record.priceCents,
    size: record.size,
    record,
  }));
}

/** "6 to Clinic entrance garden" by lot, for these lots. */
export async function promisesByLot(tx: Pick<Transaction, "reservation">, lotIds: readonly string[]): Promise<Map<string, string>> {
  const records = await tx.reservation.findMany({
    where: { lotId: { in: lotIds.slice(0, 5000) }, open: { gt: 0 } },
    include: { job: { select: { name: true } } },
    orderBy: { createdAt: "asc" },
  });
  const sums = new Map<string, Map<string, number>>();
  for (const { lotId, job, open } of records) {
    const own = sums.get(lotId) ?? new Map<string, number>();
    sums.set(lotId, own);
    own.set(job.name, (own.get(job.name) ?? 0) + open);
  }
  return new Map([...sums].map(([lotId, jobs]) => [lotId, [...jobs].map(([name, open]) => `${open.toLocaleString("en-US")} to ${name}`).join(", ")]));
}

export type SupplierChange = { readonly change: ListChange<HeldSupplierLot, OfferedLot>; readonly first: boolean; readonly promises: ReadonlyMap<string, string> };

/** What a list would change. `first`: the supplier has no lots yet. */
export async function supplierChange(supplierId: string, offers: readonly OfferedLot[], held: TaxaHeld): Promise<SupplierChange> {
  const lots = await supplierHeldLots(database(), supplierId, held);
  const change = listChange(lots, offers);
  return {
    change,
    first: lots.length === 0,
    promises: await promisesByLot(
      database(),
      change.tooFew.map(({ lot }) => lot.id),
    ),
  };
}
