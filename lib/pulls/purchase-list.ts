// What a job buys, by supplier: lines in the multiples that the supplier sells, its least order, and the last day to order.
import { type Lot, lotFree, lotPriceCents } from "../nursery/lot";
import { sizeSteps } from "../nursery/size-step";
import { isoDaysBefore } from "./iso-date";

/** `minimumCents`: least order, null: none. `multiple`: plants are sold in multiples of it. `leadDays`: days from order to delivery, null: not said. */
export type PurchaseSupplier = {
  readonly id: string;
  readonly name: string;
  readonly contact: string;
  readonly minimumCents: number | null;
  readonly multiple: number;
  readonly leadDays: number | null;
};

/** So many plants of a supplier's lot wanted for one bed. */
export type PurchaseNeed = { readonly lot: Lot; readonly code: string; readonly taxonName: string; readonly bedName: string; readonly quantity: number };

export type PurchaseLine = {
  readonly lotId: string;
  readonly code: string;
  readonly taxonId: string;
  readonly taxonName: string;
  readonly sizeText: string;
  readonly wanted: number;
  /** Rounded up to the supplier's multiple. */
  readonly ordered: number;
  readonly centsEach: number | null;
  readonly cents: number | null;
  /** What the plants beyond `wanted` add to the line; below zero where a price break makes more plants cheaper; null: not priced. */
  readonly extraCents: number | null;
  readonly beds: readonly string[];
  readonly remarks: string;
};

/** A line of another order that this supplier could deliver instead. `gainCents`: what it would add to this order; `moreCents`: what the job would pay more. `leavesBelowCents`: what would then miss to the other supplier's least order. */
export type PurchaseMove = {
  readonly fromSupplierName: string;
  readonly fromLotId: string;
  readonly toLotId: string;
  readonly text: string;
  readonly quantity: number;
  readonly gainCents: number;
  readonly moreCents: number;
  readonly leavesBelowCents: number;
};

export type PurchaseOrder = {
  readonly supplierId: string;
  readonly supplierName: string;
  readonly contact: string;
  readonly lines: readonly PurchaseLine[];
  /** Priced lines only. */
  readonly cents: number;
  readonly unpricedPlants: number;
  readonly minimumCents: number | null;
  /** 0: met, or there is none. */
  readonly belowMinimumCents: number;
  readonly multiple: number;
  readonly leadDays: number | null;
  /** Last day to order for the planting date; null: no planting date or no lead time. */
  readonly orderBy: string | null;
  readonly late: boolean;
  /** Only where the minimum is not met; the cheapest first. */
  readonly moves: readonly PurchaseMove[];
};

/** The least multiple that is no fewer than wanted. A multiple below 1 counts as 1. */
export function multipleUp(wanted: number, multiple: number): number {
  const step = Math.max(1, Math.floor(multiple));
  return Math.ceil(wanted / step) * step;
}

const lineCents = (lot: Lot, quantity: number): number | null => {
  const each = lotPriceCents(lot, quantity);
  return each === null ? null : each * quantity;
};

function purchaseLine(needs: readonly PurchaseNeed[], first: PurchaseNeed, multiple: number): PurchaseLine {
  const wanted = needs.reduce((sum, need) => sum + need.quantity, 0);
  const ordered = multipleUp(wanted, multiple);
  const { lot } = first;
  const cents = lineCents(lot, ordered);
  const without = lineCents(lot, wanted);
  const few = ordered > lot.onHand ? `only ${lot.onHand.toLocaleString("en-US")} on the list` : "";
  return {
    lotId: lot.id,
    code: first.code,
    taxonId: lot.taxonId,
    taxonName: first.taxonName,
    sizeText: lot.sizeText,
    wanted,
    ordered,
    centsEach: lotPriceCents(lot, ordered),
    cents,
    extraCents: cents === null || without === null ? null : cents - without,
    beds: [...new Set(needs.map((need) => need.bedName))],
    remarks: [lot.remarks, few].filter(Boolean).join("; "),
  };
}

/** Lines of other orders that this supplier has too, at the same size, with enough free. */
function purchaseMoves(order: PurchaseOrder, orders: readonly PurchaseOrder[], needs: readonly PurchaseNeed[], offers: readonly Lot[]): readonly PurchaseMove[] {
  const offered = offers.filter(({ owner }) => owner.kind === "supplier" && owner.supplierId === order.supplierId);
  return orders
    .filter((other) => other !== order)
    .flatMap((other) =>
      other.lines.flatMap((line): PurchaseMove[] => {
        const from = needs.find(({ lot }) => lot.id === line.lotId)?.lot;
        if (!from) return [];
        return offered.flatMap((lot): PurchaseMove[] => {
          if (lot.taxonId !== from.taxonId || sizeSteps(from.size, lot.size) !== 0 || lotFree(lot) < line.wanted) return [];
          const there = order.lines.find((own) => own.lotId === lot.id);
          const after = lineCents(lot, multipleUp(line.wanted + (there?.wanted ?? 0), order.multiple));
          if (after === null) return [];
          const gainCents = after - (there?.cents ?? 0);
          const leavesBelowCents = other.lines.length === 1 ? 0 : Math.max(0, (other.minimumCents ?? 0) - other.cents + (line.cents ?? 0));
          const text = [line.taxonName, line.sizeText].filter(Boolean).join(" ");
          return [
            {
              fromSupplierName: other.supplierName,
              fromLotId: from.id,
              toLotId: lot.id,
              text,
              quantity: line.wanted,
              gainCents,
              moreCents: gainCents - (line.cents ?? 0),
              leavesBelowCents,
            },
          ];
        });
      }),
    )
    .sort((a, b) => a.moreCents - b.moreCents || b.gainCents - a.gainCents || a.text.localeCompare(b.text));
}

/**
 * Orders by supplier, by name, their lines by plant. No line orders fewer than is wanted, each is in the supplier's multiple, and all that is wanted is on one line.
 * @param offers all lots of suppliers that might be moved to @param plantingOn ISO date or null @param today ISO date
 */
export function purchaseOrders(
  needs: readonly PurchaseNeed[],
  suppliers: readonly PurchaseSupplier[],
  offers: readonly Lot[],
  plantingOn: string | null,
  today: string,
): readonly PurchaseOrder[] {
  const wanted = needs.filter(({ quantity }) => quantity > 0);
  const orders = suppliers.flatMap((supplier): PurchaseOrder[] => {
    const own = wanted.filter(({ lot }) => lot.owner.kind === "supplier" && lot.owner.supplierId === supplier.id);
    if (!own.length) return [];
    const firsts = [...new Map(own.map((need) => [need.lot.id, need])).values()];
    const lines = firsts
      .map((first) =>
        purchaseLine(
          own.filter(({ lot }) => lot.id === first.lot.id),
          first,
          supplier.multiple,
        ),
      )
      .sort((a, b) => a.taxonName.localeCompare(b.taxonName) || a.sizeText.localeCompare(b.sizeText, "en-US", { numeric: true }) || a.lotId.localeCompare(b.lotId));
    const cents = lines.reduce((sum, line) => sum + (line.cents ?? 0), 0);
    const orderBy = plantingOn !== null && supplier.leadDays !== null ? isoDaysBefore(plantingOn, supplier.leadDays) : null;
    return [
      {
        supplierId: supplier.id,
        supplierName: supplier.name,
        contact: supplier.contact,
        lines,
        cents,
        unpricedPlants: lines.reduce((sum, line) => sum + (line.cents === null ? line.ordered : 0), 0),
        minimumCents: supplier.minimumCents,
        belowMinimumCents: Math.max(0, (supplier.minimumCents ?? 0) - cents),
        multiple: Math.max(1, supplier.multiple),
        leadDays: supplier.leadDays,
        orderBy,
        late: orderBy !== null && orderBy < today,
        moves: [],
      },
    ];
  });
  return orders
    .map((order) => (order.belowMinimumCents > 0 ? { ...order, moves: purchaseMoves(order, orders, wanted, offers) } : order))
    .sort((a, b) => a.supplierName.localeCompare(b.supplierName) || a.supplierId.localeCompare(b.supplierId));
}
