// A lot: so many plants of one taxon at one size in one place at one price.
import type { LineSize } from "./size-read";

/** Where a lot stands: an own field, an own yard, or with a supplier. */
export type LotOwner = { readonly kind: "own" } | { readonly kind: "supplier"; readonly supplierId: string; readonly supplierName: string };

/** Block, row and bay as painted on the posts; "" where the nursery has none. `step` is the place's turn on the walk, set by hand; null: not yet set. */
export type LotPlace = { readonly block: string; readonly row: string; readonly bay: string; readonly step: number | null };

/** From so many plants on, each costs so much. */
export type PriceBreak = { readonly from: number; readonly cents: number };

export type Lot = {
  readonly id: string;
  readonly taxonId: string;
  readonly sizeText: string;
  readonly size: LineSize;
  readonly owner: LotOwner;
  readonly place: LotPlace;
  /** Whole plants; `reserved` never exceeds `onHand`. */
  readonly onHand: number;
  readonly reserved: number;
  /** ISO date from which the lot may be taken; null: now. */
  readonly readyFrom: string | null;
  /** What one plant costs the job, ascending by `from`; empty: not priced. */
  readonly prices: readonly PriceBreak[];
  readonly grade: string;
  readonly remarks: string;
  /** ISO date of the last count; null: never counted. */
  readonly countedOn: string | null;
};

/** Plants of a lot that nobody has been promised. Never below zero, whatever a hand count says. */
export function lotFree(lot: Pick<Lot, "onHand" | "reserved">): number {
  return Math.max(0, Math.floor(lot.onHand) - Math.max(0, Math.ceil(lot.reserved)));
}

/** Cents for one plant when so many are taken; null where the lot has no price. Below the first break the first price holds. */
export function lotPriceCents(lot: Pick<Lot, "prices">, quantity: number): number | null {
  let cents: number | null = lot.prices[0]?.cents ?? null;
  for (const step of lot.prices) if (quantity >= step.from) cents = step.cents;
  return cents;
}
