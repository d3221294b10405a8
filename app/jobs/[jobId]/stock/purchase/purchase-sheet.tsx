"use client";

import Link from "next/link";
import { BotanicalText } from "@/app/parts/botanical-text";
import { plantsText } from "@/lib/nursery/count-words";
import type { PullTaxon } from "@/lib/pulls/pull-list";
import type { PurchaseOrder, PurchaseSupplier } from "@/lib/pulls/purchase-list";
import { ShortBuy } from "../short-buy";
import { StockAnswerLine } from "../stock-answer";
import { useStockAct } from "../use-stock-act";
import { PurchaseOrderPart } from "./purchase-order";

export type ShortPlants = {
  readonly key: string;
  readonly taxonName: string;
  readonly taxon: PullTaxon | null;
  readonly sizeText: string;
  readonly bedName: string;
  readonly count: number;
  readonly why: string;
};

type Props = {
  readonly jobId: string;
  readonly orders: readonly PurchaseOrder[];
  readonly taxa: Readonly<Record<string, PullTaxon>>;
  readonly short: readonly ShortPlants[];
  readonly suppliers: readonly Pick<PurchaseSupplier, "id" | "name">[];
  readonly hasPlantingDate: boolean;
};

/** All orders of a job, and the plants that are on none yet. */
export function PurchaseSheet({ jobId, orders, taxa, short, suppliers, hasPlantingDate }: Props) {
  const { answer, busy, act } = useStockAct();
  return (
    <>
      <StockAnswerLine answer={answer} />
      {orders.length === 0 ? (
        <p>
          Nothing to buy yet. Plants reserved from suppliers' lots on <Link href={`/jobs/${jobId}/stock`}>Plants for this job</Link> appear here, one order a supplier
          {short.length ? "; so do plants that are short, once you say below who to ask for them" : ""}.
        </p>
      ) : null}
      {orders.length && !hasPlantingDate ? (
        <p className="notice screen-only">
          No planting date is set, so nothing is said about when to order. <Link href={`/jobs/${jobId}/stock`}>Set it</Link>
        </p>
      ) : null}
      {orders.map((order) => (
        <PurchaseOrderPart key={order.supplierId} jobId={jobId} order={order} taxa={taxa} busy={busy} act={act} />
      ))}
      {short.length ? (
        <section aria-labelledby="short-title">
          <h2 id="short-title">On no order yet</h2>
          <ul className="card-list">
            {short.map((one) => (
              <li key={one.key}>
                <b>{plantsText(one.count)}</b> {one.taxon ? <BotanicalText taxon={one.taxon} /> : one.taxonName} {one.sizeText}, {one.bedName}.{" "}
                <span className="soft">{one.why}</span>
                <ShortBuy jobId={jobId} groupKey={one.key} name={`${one.taxonName}, ${one.bedName}`} suppliers={suppliers} busy={busy} act={act} />
              </li>
            ))}
          </ul>
        </section>
      ) : null}
    </>
  );
}
