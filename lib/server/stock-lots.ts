// Lots as the engine of the nursery takes them (lib/nursery/lot.ts): the firm's own and its suppliers'.
import { z } from "zod";
import type { Lot, PriceBreak } from "../nursery/lot";
import { SIZE_UNKNOWN, sizeFromText } from "../nursery/size-read";
import { database } from "./database";
import type { Lot as LotRecord, StockPlace, Supplier } from "./generated/client";
import { type TaxaHeld, taxaHeld } from "./taxa";
import { today } from "./today";

export type LotWithOwner = LotRecord & { place: StockPlace | null; supplier: Pick<Supplier, "id" | "name"> | null };

/** What `lotDomain` needs of a lot's record. */
export const withOwner = { place: true, supplier: { select: { id: true, name: true } } } as const;

const breaks = z.array(z.object({ from: z.number(), cents: z.number() })).catch([]);

/** Price breaks of a lot, ascending; a single price holds from one plant on; empty: not priced. */
export function lotPrices(lot: Pick<LotRecord, "prices" | "priceCents">): PriceBreak[] {
  const several = breaks.parse(lot.prices);
  if (several.length) return several.sort((a, b) => a.from - b.from);
  return lot.priceCents === null ? [] : [{ from: 1, cents: lot.priceCents }];
}

/** A record as a lot of the engine. */
export function lotDomain(record: LotWithOwner, byId: TaxaHeld["byId"]): Lot {
  const { place, supplier } = record;
  return {
    id: record.id,
    taxonId: record.taxonId,
    sizeText: record.size,
    size: record.size === "" ? SIZE_UNKNOWN : sizeFromText(record.size, byId.get(record.taxonId)?.kind),
    owner: supplier ? { kind: "supplier", supplierId: supplier.id, supplierName: supplier.name } : { kind: "own" },
    place: { block: place?.block ?? "", row: place?.row ?? "", bay: place?.bay ?? "", step: place?.position ?? null },
    onHand: record.quantity,
    reserved: record.reserved,
    readyFrom: record.readyFrom,
    prices: lotPrices(record),
    grade: record.grade,
    remarks: record.remarks,
    countedOn: record.countedAt && today(record.countedAt).iso,
  };
}

/** Lots of these taxa, own and suppliers', that are not deleted; also those of which none is free. In no order that means anything, but always the same. */
export async function stockLots(taxonIds: readonly string[]): Promise<Lot[]> {
  if (!taxonIds.length) return [];
  const [records, held] = await Promise.all([
    database().lot.findMany({
      where: { taxonId: { in: [...new Set(taxonIds)] }, deletedAt: null, OR: [{ supplierId: null }, { supplier: { deletedAt: null } }] },
      include: withOwner,
      orderBy: { id: "asc" },
    }),
    taxaHeld(),
  ]);
  return records.map((record) => lotDomain(record, held.byId));
}
