// The order in which a yard is walked: places as they were set by hand, others by block, row and bay; suppliers after the own places.
import type { Lot } from "../nursery/lot";
import { placeText as ownPlaceText } from "../nursery/lot-place";

type Placed = Pick<Lot, "owner" | "place">;

const collator = new Intl.Collator("en-US", { numeric: true, sensitivity: "base" });
const textOrder = (a: string, b: string): number => collator.compare(a, b) || (a < b ? -1 : a > b ? 1 : 0);

const ownerName = (lot: Placed): string => (lot.owner.kind === "own" ? "" : lot.owner.supplierName);

/** Compares two lots by where they stand: own before suppliers, steps set by hand before places without one, then block, row, bay ("Row 2" before "Row 10"). */
export function placeOrder(a: Placed, b: Placed): number {
  const own = Number(a.owner.kind !== "own") - Number(b.owner.kind !== "own") || textOrder(ownerName(a), ownerName(b));
  const step = (a.place.step ?? Number.POSITIVE_INFINITY) - (b.place.step ?? Number.POSITIVE_INFINITY);
  return own || (Number.isNaN(step) ? 0 : step) || textOrder(a.place.block, b.place.block) || textOrder(a.place.row, b.place.row) || textOrder(a.place.bay, b.place.bay);
}

/** A place as it is called: "Block A, row 3, bay 12"; a supplier by name. */
export function placeText({ owner, place }: Placed): string {
  const parts = ownPlaceText(place);
  return owner.kind === "own" ? parts || "Yard" : [owner.supplierName, parts].filter(Boolean).join(", ");
}

export type WalkStop<T> = { readonly place: string; readonly items: readonly T[] };

/** Items by the place where they stand, places in walking order; items of one place keep their order. Nothing is lost or added. */
export function walkStops<T>(items: readonly T[], lotOf: (item: T) => Placed): WalkStop<T>[] {
  const stops = new Map<string, { lot: Placed; items: T[] }>();
  for (const item of items) {
    const lot = lotOf(item);
    const key = JSON.stringify([lot.owner, lot.place.block, lot.place.row, lot.place.bay]);
    const stop = stops.get(key);
    if (stop) stop.items.push(item);
    else stops.set(key, { lot, items: [item] });
  }
  return [...stops.values()].sort((a, b) => placeOrder(a.lot, b.lot)).map(({ lot, items: own }) => ({ place: placeText(lot), items: own }));
}
