"use client";

import { BotanicalText } from "@/app/parts/botanical-text";
import { centsText, plantsText } from "@/lib/nursery/count-words";
import { isoDateText } from "@/lib/pulls/iso-date";
import type { PullTaxon } from "@/lib/pulls/pull-list";
import type { PurchaseLine, PurchaseOrder } from "@/lib/pulls/purchase-list";
import { purchaseMoveAction } from "../actions";
import type { StockAct } from "../use-stock-act";

const count = (n: number) => n.toLocaleString("en-US");

function extraText({ ordered, wanted, extraCents }: PurchaseLine): string {
  const extra = ordered - wanted;
  if (extra === 0) return "";
  if (extraCents === null) return `${count(extra)} more than wanted`;
  return extraCents < 0 ? `${count(extra)} more than wanted, ${centsText(-extraCents)} less by the price break` : `${count(extra)} more than wanted, ${centsText(extraCents)}`;
}

function orderFacts(order: PurchaseOrder): string[] {
  return [
    order.multiple > 1 ? `sold in multiples of ${count(order.multiple)}` : "",
    order.minimumCents === null ? "" : `least order ${centsText(order.minimumCents)}`,
    order.leadDays === null ? "" : `${count(order.leadDays)} days to delivery`,
  ].filter(Boolean);
}

function PlantName({ name, taxon }: { name: string; taxon: PullTaxon | undefined }) {
  return taxon ? <BotanicalText taxon={taxon} /> : name;
}

type Props = { readonly jobId: string; readonly order: PurchaseOrder; readonly taxa: Readonly<Record<string, PullTaxon>>; readonly busy: boolean; readonly act: StockAct };

/** One supplier's order: its lines, what rounding adds, the least order and the day to order by. */
export function PurchaseOrderPart({ jobId, order, taxa, busy, act }: Props) {
  const titleId = `order-${order.supplierId}`;
  const closing = order.moves.filter((move) => move.gainCents >= order.belowMinimumCents).length;
  return (
    <section aria-labelledby={titleId} className="order">
      <div className="section-head">
        <h2 id={titleId}>{order.supplierName}</h2>
        <span className="small">{[order.contact, ...orderFacts(order)].filter(Boolean).join(" · ")}</span>
      </div>
      {order.orderBy ? (
        <p className={order.late ? "notice alert" : undefined}>
          {order.late
            ? `To be here by the planting date it had to be ordered by ${isoDateText(order.orderBy)}. Call them, or put planting off.`
            : `Order by ${isoDateText(order.orderBy)}.`}
        </p>
      ) : null}
      <table className="order-table">
        <caption className="visually-hidden">Plants to order from {order.supplierName}</caption>
        <thead>
          <tr>
            <th scope="col" className="number">
              Order
            </th>
            <th scope="col">Plant</th>
            <th scope="col">Size</th>
            <th scope="col">Code</th>
            <th scope="col">For</th>
            <th scope="col" className="number">
              Each
            </th>
            <th scope="col" className="number">
              Sum
            </th>
          </tr>
        </thead>
        <tbody>
          {order.lines.map((line) => (
            <tr key={line.lotId}>
              <td className="number order-count">{count(line.ordered)}</td>
              <th scope="row">
                <PlantName name={line.taxonName} taxon={taxa[line.taxonId]} />
                {extraText(line) ? <span className="common"> {extraText(line)}</span> : null}
                {line.remarks ? <span className="common"> {line.remarks}</span> : null}
              </th>
              <td>{line.sizeText || "size not said"}</td>
              <td>{line.code}</td>
              <td className="small">{line.beds.join(", ")}</td>
              <td className="number">{line.centsEach === null ? <span className="soft">ask</span> : centsText(line.centsEach)}</td>
              <td className="number">{line.cents === null ? "" : centsText(line.cents)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <td className="number order-count">{count(order.lines.reduce((sum, line) => sum + line.ordered, 0))}</td>
            <td colSpan={5}>plants{order.unpricedPlants ? `, ${count(order.unpricedPlants)} of them without a price` : ""}</td>
            <td className="number">
              <b>{centsText(order.cents)}</b>
            </td>
          </tr>
        </tfoot>
      </table>
      {order.belowMinimumCents > 0 && order.minimumCents !== null ? (
        <div className="notice alert">
          <p>
            {centsText(order.belowMinimumCents)} below the least order of {centsText(order.minimumCents)}
            {order.unpricedPlants ? "; plants without a price may close it" : ""}.{" "}
            {order.moves.length
              ? "They also have these, which are on other orders now:"
              : "Nothing on the other orders can be had here. Ask for an exception, or add plants for the yard."}
          </p>
          {order.moves.length ? (
            <ul className="others screen-only">
              {order.moves.map((move) => (
                <li key={`${move.fromLotId} ${move.toLotId}`}>
                  <span>
                    {plantsText(move.quantity)} {move.text} <span className="common">from {move.fromSupplierName}</span>
                  </span>
                  <span className="number">
                    adds {centsText(move.gainCents)}
                    {move.moreCents === 0 ? ", the same money" : move.moreCents > 0 ? `, ${centsText(move.moreCents)} more in all` : `, ${centsText(-move.moreCents)} less in all`}
                    {move.leavesBelowCents > 0 ? `; ${move.fromSupplierName} is then ${centsText(move.leavesBelowCents)} below its least order` : ""}
                  </span>
                  <button
                    type="button"
                    disabled={busy}
                    aria-label={`Move ${move.text} to ${order.supplierName}`}
                    onClick={() => act(() => purchaseMoveAction(jobId, move.fromLotId, move.toLotId))}
                  >
                    Move here
                  </button>
                </li>
              ))}
            </ul>
          ) : null}
          {closing ? <p className="small">{closing === 1 ? "One of them meets it alone." : `Each of ${count(closing)} of them meets it alone.`}</p> : null}
        </div>
      ) : null}
    </section>
  );
}
