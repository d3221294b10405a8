"use client";

import { useEffect, useRef, useState } from "react";
import { BotanicalText } from "@/app/parts/botanical-text";
import { YearStripSvg } from "@/app/parts/year-strip-svg";
import { halfMonthRuns } from "@/lib/season/half-months";
import type { FillAnswer } from "./fill/route";

type State = { kind: "looking" } | { kind: "failed" } | { kind: "found"; answer: FillAnswer };
const share = (value: number) => `${Math.round(value * 100)} %`;

/** Plants that would fill bare half-months here, the best first. Works on the bed as last saved. */
export function FillPanel({
  path,
  halfMonths,
  year,
  freezeDays,
  add,
  close,
}: {
  path: string;
  halfMonths: readonly number[];
  year: number;
  freezeDays: readonly (number | null)[];
  add: (offer: FillAnswer["offers"][number]) => void;
  close: () => void;
}) {
  const dialog = useRef<HTMLDialogElement>(null);
  const [state, setState] = useState<State>({ kind: "looking" });
  useEffect(() => {
    dialog.current?.showModal();
    const stop = new AbortController();
    fetch(`${path}/fill?half=${halfMonths.join(",")}&year=${year}`, { signal: stop.signal })
      .then(async (response) => setState(response.ok ? { kind: "found", answer: (await response.json()) as FillAnswer } : { kind: "failed" }))
      .catch(() => !stop.signal.aborted && setState({ kind: "failed" }));
    return () => stop.abort();
  }, [path, halfMonths, year]);
  return (
    <dialog ref={dialog} onClose={close} aria-labelledby="fill-title" className="wide-dialog">
      <div className="spread">
        <h2 id="fill-title">What would fill {halfMonthRuns(halfMonths).join(", ")} here</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      {state.kind === "looking" ? <p role="status">Trying every plant of the dataset against this bed …</p> : null}
      {state.kind === "failed" ? <p role="alert">The search did not answer. Close this and try again.</p> : null}
      {state.kind === "found" && state.answer.offers.length === 0 ? (
        <p>No plant of the dataset both shows then and suits this bed's zone, light, soil, salt and deer. Change the site, or bring in a pot or an ornament.</p>
      ) : null}
      {state.kind === "found" && state.answer.offers.length ? (
        <>
          <p className="soft small">
            Only plants with nothing to fix for this zone, light, soil, salt and deer. Best first: those that close most gaps of the year with least ground.
          </p>
          <ul className="offers">
            {state.answer.offers.map((offer, i) => (
              <li key={offer.placed.taxon.id}>
                <span className="offer-name">
                  <BotanicalText taxon={offer.placed.taxon} /> <span className="common">{offer.placed.taxon.commonNames[0]}</span>
                  <span className="common offer-words">
                    {offer.quantity} of {offer.size} lift the barest of it from {share(offer.before)} to {share(offer.after)}
                    {offer.closes ? `; ${offer.closes} bare half-month${offer.closes > 1 ? "s" : ""} closed in the year` : ""}.
                  </span>
                </span>
                <YearStripSvg marks={offer.marks} sentence={offer.sentence} idPrefix={`fill-${i}`} freezeDays={freezeDays} />
                <button
                  type="button"
                  onClick={() => {
                    add(offer);
                    dialog.current?.close();
                  }}
                >
                  Add {offer.quantity}
                </button>
              </li>
            ))}
          </ul>
        </>
      ) : null}
    </dialog>
  );
}
