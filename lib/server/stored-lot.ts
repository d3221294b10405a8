// A lot of the firm's own as the screens have it.
import { placeText } from "../nursery/lot-place";
import type { Transaction } from "./database";
import type { Lot as LotRecord, StockPlace } from "./generated/client";

/** A lot as stored. `version` grows by one whenever its plants or its fields change (not by a promise); `countedAt` is an ISO instant, null: never counted. */
export type StoredLot = {
  readonly id: string;
  readonly taxonId: string;
  readonly taxonName: string;
  readonly size: string;
  /** Where it stands, in words: "North field, row 4"; "" where it is not said. */
  readonly place: string;
  readonly block: string;
  /** The place's turn on the walk; null: no place. */
  readonly step: number | null;
  /** Whole plants, never negative, and of these promised to jobs. */
  readonly quantity: number;
  readonly reserved: number;
  /** ISO date from which it may be taken; null: now. */
  readonly readyFrom: string | null;
  /** Cents a plant; null: not priced, not known. */
  readonly priceCents: number | null;
  readonly costCents: number | null;
  readonly grade: string;
  readonly remarks: string;
  readonly countedAt: string | null;
  readonly version: number;
};

export type LotAnswer =
  | { readonly kind: "saved"; readonly lot: StoredLot /** The jobs whose promises were let go for it. */; readonly released?: readonly string[] }
  | { readonly kind: "stale"; readonly theirs: StoredLot }
  | { readonly kind: "gone"; readonly message: string }
  | { readonly kind: "fault"; readonly field: string; readonly message: string }
  /** Too few would be left for what is promised; it can be done all the same. */
  | { readonly kind: "promised"; readonly message: string };

export const withPlace = { place: true } as const;
export type LotWithPlace = LotRecord & { place: StockPlace | null };

export function storedLot(record: LotWithPlace): StoredLot {
  const { id, taxonId, taxonName, size, place, quantity, reserved, readyFrom, priceCents, costCents, grade, remarks, countedAt, version } = record;
  return {
    id,
    taxonId,
    taxonName,
    size,
    place: place ? placeText(place) : "",
    block: place?.block ?? "",
    step: place?.position ?? null,
    quantity,
    reserved,
    readyFrom,
    priceCents,
    costCents,
    grade,
    remarks,
    countedAt: countedAt?.toISOString() ?? null,
    version,
  };
}

const GONE = "This lot was deleted in another window. Undo the deletion there, then change it again.";

/** A lot of the firm's own as it stands at version `baseVersion`, to be changed in this transaction; else the answer why it cannot be. */
export async function lotAtVersion(tx: Transaction, id: string, baseVersion: number): Promise<{ readonly record: LotWithPlace } | { readonly answer: LotAnswer }> {
  const record = await tx.lot.findFirst({ where: { id, deletedAt: null, supplierId: null }, include: withPlace });
  if (!record) return { answer: { kind: "gone", message: GONE } };
  return record.version === baseVersion ? { record } : { answer: { kind: "stale", theirs: storedLot(record) } };
}
