"use client";

import { useId, useState } from "react";
import { centsText, plantsText } from "@/lib/nursery/count-words";
import type { PurchaseSupplier } from "@/lib/pulls/purchase-list";
import { jobSellAction, stockReleaseAction, stockReserveAction } from "./actions";
import { StockAnswerLine } from "./stock-answer";
import { StockGroupRows } from "./stock-group";
import type { StockView } from "./stock-view";
import { useStockAct } from "./use-stock-act";

type Props = {
  readonly view: StockView;
  readonly chosen: readonly string[];
  readonly suppliers: readonly Pick<PurchaseSupplier, "id" | "name">[];
  /** Not sold yet: selling and reserving are one press. */
  readonly unsold: boolean;
  readonly today: string;
};

/** What is promised and proposed for every bed, and what one press does about all of it. */
export function StockSheet({ view, chosen, suppliers, unsold, today }: Props) {
  const id = useId();
  const { jobId, picks, releases, astray } = view;
  const { answer, busy, act } = useStockAct();
  const [soldOn, setSoldOn] = useState(today);
  const [asking, setAsking] = useState(false);
  const shown = { jobId, keys: null, chosen, picks };
  const money = view.proposedCents > 0 ? `, ${centsText(view.proposedCents)}` : "";
  return (
    <>
      <div className="row stock-acts screen-only">
        {unsold ? (
          <>
            <label htmlFor={`${id}-sold`}>Sold on</label>
            <input id={`${id}-sold`} type="date" value={soldOn} max={today} onChange={(event) => setSoldOn(event.target.value)} />
            <button type="button" className="primary" disabled={busy} onClick={() => act(() => jobSellAction({ ...shown, on: soldOn }))}>
              {view.proposed ? `Sell and reserve ${plantsText(view.proposed)}${money}` : "Sold"}
            </button>
          </>
        ) : null}
        {view.proposed || releases ? (
          <button type="button" className={unsold ? undefined : "primary"} disabled={busy} onClick={() => act(() => stockReserveAction(shown))}>
            {releases ? "Put all right" : "Reserve all"}
            {unsold || !view.proposed ? "" : `: ${plantsText(view.proposed)}${money}`}
          </button>
        ) : null}
        {view.promisedOpen ? (
          asking ? (
            <span className="row">
              <span>Release all {plantsText(view.promisedOpen)} of this job? Other jobs can take them then.</span>
              <button
                type="button"
                disabled={busy}
                onClick={() =>
                  act(
                    () => stockReleaseAction(jobId, null),
                    () => setAsking(false),
                  )
                }
              >
                Release all
              </button>
              <button type="button" className="plain" onClick={() => setAsking(false)}>
                Keep them
              </button>
            </span>
          ) : (
            <button type="button" className="plain" disabled={busy} onClick={() => setAsking(true)}>
              Release all …
            </button>
          )
        ) : null}
      </div>
      <StockAnswerLine answer={answer} />
      {releases ? (
        <p className="notice alert">
          The design or the planting date was changed after plants were reserved: {plantsText(releases)} no longer {releases === 1 ? "fits" : "fit"}. “Put all right” gives them
          back
          {view.proposed ? ` and reserves ${plantsText(view.proposed)} that do` : ""}.
        </p>
      ) : null}
      {astray.length ? (
        <ul className="astray">
          {astray.map((line) => (
            <li key={line.reservationId}>
              {plantsText(line.open)} of {line.where} {line.sizeText}: {line.why}.{" "}
              <button
                type="button"
                className="plain screen-only"
                disabled={busy}
                aria-label={`Release ${line.where} ${line.sizeText}`}
                onClick={() => act(() => stockReleaseAction(jobId, line.reservationId))}
              >
                Release
              </button>
            </li>
          ))}
        </ul>
      ) : null}
      <table className="stock-table">
        <caption className="visually-hidden">Plants of each bed with the lots that are reserved or proposed for them</caption>
        <thead>
          <tr>
            <th scope="col">
              <span className="visually-hidden">Key</span>
            </th>
            <th scope="col">Plant</th>
            <th scope="col">Wanted</th>
            <th scope="col">From</th>
            <th scope="col" className="number">
              Plants
            </th>
            <th scope="col" className="number">
              Each
            </th>
            <th scope="col" className="number">
              Sum
            </th>
            <th scope="col">
              <span className="visually-hidden">State</span>
            </th>
          </tr>
        </thead>
        {view.beds.map((bed) => [
          <tbody key={bed.bedId} className="bed-head">
            <tr>
              <th scope="rowgroup" colSpan={8}>
                {bed.bedName}
              </th>
            </tr>
          </tbody>,
          ...bed.groups.map((group) => (
            <StockGroupRows key={group.key} jobId={jobId} bedName={bed.bedName} group={group} chosen={chosen} suppliers={suppliers} busy={busy} act={act} />
          )),
        ])}
      </table>
    </>
  );
}
