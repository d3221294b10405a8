"use client";

import Link from "next/link";
import type { PurchaseSupplier } from "@/lib/pulls/purchase-list";
import { shortBuyAction } from "./actions";
import type { StockAct } from "./use-stock-act";

type Props = {
  readonly jobId: string;
  readonly groupKey: string;
  readonly name: string;
  readonly suppliers: readonly Pick<PurchaseSupplier, "id" | "name">[];
  readonly busy: boolean;
  readonly act: StockAct;
};

/** Puts what is short on a supplier's order, though the plant is on no list of the supplier. */
export function ShortBuy({ jobId, groupKey, name, suppliers, busy, act }: Props) {
  if (!suppliers.length)
    return (
      <span className="small screen-only">
        To buy them, <Link href="/nursery/suppliers">enter a supplier</Link> first.
      </span>
    );
  return (
    <form
      className="short-buy small screen-only"
      onSubmit={(event) => {
        event.preventDefault();
        const supplierId = String(new FormData(event.currentTarget).get("supplier"));
        act(() => shortBuyAction(jobId, groupKey, supplierId));
      }}
    >
      <select name="supplier" aria-label={`Supplier to ask for ${name}`}>
        {suppliers.map(({ id, name: supplier }) => (
          <option key={id} value={id}>
            {supplier}
          </option>
        ))}
      </select>
      <button type="submit" disabled={busy} aria-label={`Put ${name} on the order`}>
        Put on the order
      </button>
    </form>
  );
}
