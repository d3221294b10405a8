"use client";

import { useEffect, useMemo, useRef, useState } from "react";
import { type BedDrawing, EMPTY_DRAWING, PLACED_MAX } from "@/lib/ground/bed-drawing";
import type { Layout } from "@/lib/ground/layout";
import { bedSetOut, layoutPlants, layoutWords, STANDPOINTS, type StandpointName, setOutAsk, standpointName, standpointOf } from "@/lib/papers/set-out";
import type { PanelProps } from "../drawing-props";
import { LayoutFigure } from "./layout-figure";
import { useLayouts } from "./use-layouts";

const STANDPOINT_WORDS: Readonly<Record<StandpointName, string>> = {
  front: "the front, the foot of the drawing",
  back: "the back, the head of the drawing",
  left: "the left",
  right: "the right",
  "all round": "all round: an island bed",
};
/** Density beyond this is off the scale: twice what will finally fit. */
const SCALE_END = 10;
const SEEDS_AT_ONCE = 6;
const SHOWN = 4;
const seedsFrom = (first: number) => Array.from({ length: SEEDS_AT_ONCE }, (_, i) => first + i);

const plantsText = (count: number) => (count === 1 ? "1 plant" : `${count} plants`);

/** Arrangements of the plant list, looked at on the drawing and taken as one change. Nothing is kept before. */
export function SetOutPanel({
  bed,
  bedView,
  send,
  say,
  preview,
  choose,
  shown,
  setShown,
}: PanelProps & { /** Seed of the arrangement on the drawing. */ shown: number | null; setShown: (seed: number | null) => void }) {
  const drawing: BedDrawing = bed.drawing ?? EMPTY_DRAWING;
  const [side, setSide] = useState<StandpointName>(() => standpointName(drawing.standpoint));
  const [keep, setKeep] = useState(true);
  const [seed, setSeed] = useState(1);
  const { state, done, asked, found, ask: askLayouts, clear } = useLayouts();
  const standpoint = useMemo(() => standpointOf(side), [side]);
  const ask = useMemo(() => setOutAsk(bed, bedView, standpoint, keep), [bed, bedView, standpoint, keep]);
  const open = ask.input.rows.reduce((sum, { quantity }) => sum + quantity, 0);
  const total = open + ask.kept.length;

  // Another list, outline or choice: what was offered is for another bed. The year looked at changes nothing of it.
  const askedFor = useMemo(
    () => JSON.stringify([ask.input.rows.map(({ key, taxon, quantity, spacingFt }) => [key, taxon.spreadFt, quantity, spacingFt]), ask.kept, bed.size, drawing.things, standpoint]),
    [ask, bed.size, drawing.things, standpoint],
  );
  const offeredFor = useRef(askedFor);
  useEffect(() => {
    if (offeredFor.current === askedFor) return;
    offeredFor.current = askedFor;
    setShown(null);
    preview(null);
    clear();
  }, [askedFor, clear, preview, setShown]);
  useEffect(() => () => preview(null), [preview]);

  const start = (first: number) => {
    setSeed(first);
    setShown(null);
    preview(null);
    askLayouts(ask.input, seedsFrom(first));
    say("Setting the list out.");
  };
  const show = (layout: Layout) => {
    const next = shown === layout.seed ? null : layout.seed;
    setShown(next);
    preview(next === null ? null : layoutPlants(ask.kept, layout));
    say(next === null ? "The drawing as it is." : `Arrangement ${layout.seed} shown on the drawing. Take it, or look at another.`);
  };
  const take = (layout: Layout) => {
    const plants = layoutPlants(ask.kept, layout);
    choose(new Set());
    send({ type: "replace", bed: bedSetOut(bed, bedView, plants, standpoint) });
    say(`${plantsText(layout.placements.length)} set out. Undo brings the drawing back as it was.`);
  };

  const letterOf = (key: string) => bedView.rows.find(({ row }) => row.id === key)?.letter ?? "";
  return (
    <section className="ground-panel" aria-labelledby="set-out-title">
      <h2 id="set-out-title">Set it out</h2>
      {bedView.rows.length === 0 ? (
        <p className="soft">Put plants on the list first; then arrangements of them are offered here.</p>
      ) : (
        <>
          <p className="fields">
            <label>
              Looked at from{" "}
              <select value={side} onChange={(event) => setSide(STANDPOINTS.find((one) => one === event.target.value) ?? "front")}>
                {STANDPOINTS.map((one) => (
                  <option key={one} value={one}>
                    {STANDPOINT_WORDS[one]}
                  </option>
                ))}
              </select>
            </label>
          </p>
          {drawing.plants.length ? (
            <fieldset className="plain-choice">
              <legend className="visually-hidden">What is placed already</legend>
              <label className="check">
                <input type="radio" name="set-out-keep" checked={keep} onChange={() => setKeep(true)} /> keep what is placed, set out the rest
              </label>
              <label className="check">
                <input type="radio" name="set-out-keep" checked={!keep} onChange={() => setKeep(false)} /> set everything out anew
                {ask.kept.length && !keep ? "; what stands there stays" : ""}
              </label>
            </fieldset>
          ) : null}
          {total > PLACED_MAX ? (
            <p role="alert">
              The list asks for {total.toLocaleString("en-US")} plants; a drawing has at most {PLACED_MAX.toLocaleString("en-US")}. Take fewer, or draw part of the bed.
            </p>
          ) : open === 0 ? (
            <p className="soft">Every plant of the list is placed. Choose “set everything out anew” for another arrangement.</p>
          ) : (
            <p>
              <button type="button" className={found.length ? "" : "primary"} disabled={state === "working"} onClick={() => start(found.length ? seed + SEEDS_AT_ONCE : 1)}>
                {found.length ? "Other arrangements" : `Set out ${plantsText(open)}`}
              </button>{" "}
              {state === "working" ? (
                <>
                  <progress value={done} max={asked} aria-label="Arrangements tried" /> <span className="small soft">{`${done} of ${asked} tried`}</span>
                </>
              ) : null}
            </p>
          )}
          {open > 0 && bedView.ground.densityRaw > SCALE_END ? (
            <p className="alert small">When grown the list is {bedView.ground.densityWords} No arrangement gives it room: take fewer plants, or fewer kinds.</p>
          ) : null}
          {state === "failed" ? <p role="alert">This browser did not let the arrangements be worked out beside the page. Reload the page and try again.</p> : null}
          {ask.left.map(({ letter, name, why }) => (
            <p key={letter} className="small">
              <b>{letter}</b> {name} {why}
            </p>
          ))}
          {found.length ? (
            <ol className="layout-offers" aria-label="Arrangements, the best first">
              {found.slice(0, SHOWN).map((layout) => (
                <li key={layout.seed} className={shown === layout.seed ? "shown" : undefined}>
                  <button type="button" className="layout-look" aria-pressed={shown === layout.seed} onClick={() => show(layout)}>
                    <LayoutFigure plants={layoutPlants(ask.kept, layout)} plan={ask.input.plan} rows={bedView.rows} />
                    <span className="spread">
                      <b>{Math.round(layout.score.overall)} of 100</b>
                      <span className="small">{shown === layout.seed ? "shown on the drawing" : "show on the drawing"}</span>
                    </span>
                  </button>
                  {shown === layout.seed ? (
                    <dl className="layout-parts">
                      {layoutWords(layout, layout.score).map(({ words, figure }) => (
                        <div key={words}>
                          <dt>{words}</dt>
                          <dd>{figure}</dd>
                        </div>
                      ))}
                    </dl>
                  ) : null}
                  {layout.unplaced.map(({ key, why, words, quantity }) => (
                    <p key={key} className="small unplaced">
                      <b>{letterOf(key)}</b> {why === "nowhere allowed" ? `${plantsText(quantity)} not placed. ${words}` : words}
                    </p>
                  ))}
                  <button type="button" onClick={() => take(layout)} aria-label={`Take arrangement ${layout.seed}`}>
                    Take this
                  </button>
                </li>
              ))}
            </ol>
          ) : null}
        </>
      )}
    </section>
  );
}
