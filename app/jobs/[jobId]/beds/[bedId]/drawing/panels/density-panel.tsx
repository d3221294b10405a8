"use client";

import { useEffect, useMemo, useState } from "react";
import { centsText } from "@/lib/nursery/count-words";
import { lotPriceCents } from "@/lib/nursery/lot";
import { type DensityStep, densityStep, groundDensities } from "@/lib/papers/ground-view";
import type { PanelProps } from "../drawing-props";
import type { RowPrices } from "./prices/route";

type Prices = RowPrices["rows"];

/** Prices of the firm's own lots for the rows of the bed as it is saved, asked for again when plants or sizes change; null until they are known. */
function useRowPrices(path: string, rowsKey: string, saved: boolean): Prices | null {
  const [prices, setPrices] = useState<Prices | null>(null);
  useEffect(() => {
    // The key is all that the prices hang on; a change that is not saved yet is asked for when it is.
    if (!saved || rowsKey === "") return;
    const stop = new AbortController();
    fetch(`${path}/drawing/panels/prices`, { signal: stop.signal })
      .then(async (response) => setPrices(response.ok ? ((await response.json()) as RowPrices).rows : []))
      .catch(() => {
        // Without prices the panel tells plants alone.
        if (!stop.signal.aborted) setPrices([]);
      });
    return () => stop.abort();
  }, [path, rowsKey, saved]);
  return prices;
}

function StepWords({ step, direction, asked }: { step: DensityStep | null; direction: 1 | -1 /** Prices are on their way. */; asked: boolean }) {
  const head = direction === 1 ? "One step up" : "One step down";
  if (!step)
    return (
      <p className="small">
        <b>{head}</b>: nothing on the list to {direction === 1 ? "add to" : "take from"} in groups.
      </p>
    );
  const plants = Math.abs(step.plants);
  const money =
    step.cents === null
      ? asked
        ? "prices asked for …"
        : "prices not known"
      : `${centsText(Math.abs(step.cents))} ${direction === 1 ? "more" : "less"}${step.unpriced.length ? `, without ${step.unpriced.join(", ")} (no price)` : ""}`;
  return (
    <div className="small density-step">
      <p>
        <b>{head}</b>, {step.before.raw.toFixed(1)} to {step.after.raw.toFixed(1)}: {plants} {plants === 1 ? "plant" : "plants"} {direction === 1 ? "more" : "fewer"}, {money}.
      </p>
      <p className="soft">{step.rows.map(({ letter, from, to }) => `${letter} ${from} → ${to}`).join(" · ")}</p>
    </div>
  );
}

/** Density at hand-over and when grown, and what a step of it is worth in plants and money. */
export function DensityPanel({ bedView, path, saved }: PanelProps) {
  const rowsKey = bedView.rows.map(({ row }) => `${row.id} ${row.taxonId} ${row.size}`).join("|");
  const prices = useRowPrices(path, rowsKey, saved);
  const { atHandOver, atMaturity } = useMemo(() => groundDensities(bedView), [bedView]);
  const [up, down] = useMemo(() => {
    const byRow = new Map(prices?.map((one) => [one.rowId, one.prices]));
    const priceCents = (rowId: string, quantity: number) => lotPriceCents({ prices: byRow.get(rowId) ?? [] }, quantity);
    return [densityStep(bedView, 1, priceCents), densityStep(bedView, -1, priceCents)];
  }, [bedView, prices]);
  return (
    <section className="ground-panel" aria-labelledby="density-title">
      <h2 id="density-title">Density</h2>
      {bedView.rows.length === 0 ? (
        <p className="soft">The density of the planting appears here as plants are added.</p>
      ) : (
        <>
          <dl className="density">
            {(
              [
                ["at hand-over", atHandOver],
                ["when grown", atMaturity],
              ] as const
            ).map(([words, density]) => (
              <div key={words}>
                <dt>
                  <b>{density.label}</b> of 10 {words}
                </dt>
                <dd>
                  <svg viewBox="0 0 100 6" className="density-scale" aria-hidden="true" preserveAspectRatio="none">
                    <rect className="density-whole" width="100" height="6" />
                    <rect className="density-share" width={Math.round(100 * Math.min(100, 10 * density.raw)) / 100} height="6" />
                    <line className="density-five" x1="50" x2="50" y1="0" y2="6" />
                  </svg>
                </dd>
              </div>
            ))}
          </dl>
          <p className="small">When grown: {atMaturity.words}</p>
          <StepWords step={up} direction={1} asked={prices === null} />
          <StepWords step={down} direction={-1} asked={prices === null} />
          <p className="soft small">
            5 is set at mature spread. A step changes all groups in proportion, small ones in odd numbers; trees and single plants stay. Prices: own lots at the size on the list.
          </p>
        </>
      )}
    </section>
  );
}
