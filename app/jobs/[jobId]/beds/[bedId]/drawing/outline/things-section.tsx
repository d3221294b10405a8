"use client";

import { useState } from "react";
import { type KeepClear, LINE_KINDS, type LineKind, SPOT_KINDS, type SpotKind } from "@/lib/ground/border";
import { lengthText } from "@/lib/ground/length";
import type { Point } from "@/lib/ground/outline";
import { planSampled } from "@/lib/ground/plan-outline";
import { TextField } from "../../text-field";
import { feetRead, lengthRead } from "./outline-readers";
import { useOutlineTools } from "./outline-tools";
import { CLEAR_SOURCE, thingName } from "./outline-words";
import { PlaceFields } from "./shape-fields";
import { thingFresh } from "./thing-fresh";
import { thingMoved, thingPlaces } from "./thing-handles";
import { lineFinished } from "./tool-surface";
import type { OutlineEdit } from "./use-outline-edit";

const isLine = (what: SpotKind | LineKind): what is LineKind => LINE_KINDS.some((kind) => kind === what);

/** Before anyone digs or lifts near a line. Shown whenever one is on the drawing or being drawn. */
function LineCaution() {
  return (
    <div className="notice alert small line-caution" role="note">
      <p>
        <b>Before digging call 811</b> (a few working days ahead, free) and wait for the marks. Lines on this drawing are no locate: they may lie elsewhere, and there may be
        others. Dig by hand where the marks are.
      </p>
      <p>Keep trucks, booms, ladders and long poles away from overhead lines, and ask the utility for its clearance. Local code and the utility’s rules go before anything here.</p>
    </div>
  );
}

function ThingDetails({ thing, name, set }: { thing: KeepClear; name: string; set: (thing: KeepClear) => void }) {
  return (
    <>
      <div className="fields">
        {"radiusFt" in thing ? (
          <div className="field">
            <span className="soft small">Width</span>
            <TextField
              label={`Width of ${name}`}
              className="short"
              text={lengthText(2 * thing.radiusFt)}
              read={feetRead(200)}
              keep={(feet) => set({ ...thing, radiusFt: feet / 2 })}
            />
          </div>
        ) : null}
        {thing.what === "overhead line" ? (
          <div className="field">
            <span className="soft small">Lowest wire at</span>
            <TextField
              label={`Height of the lowest wire of ${name}`}
              className="short"
              text={lengthText(thing.heightFt)}
              read={lengthRead(200)}
              keep={(heightFt) => set({ ...thing, heightFt })}
            />
          </div>
        ) : null}
        <div className="field">
          <span className="soft small">Kept clear</span>
          <TextField label={`Kept clear round ${name}`} className="short" text={lengthText(thing.clearFt)} read={feetRead(200)} keep={(clearFt) => set({ ...thing, clearFt })} />
        </div>
      </div>
      <div className="fields">
        {thingPlaces(thing).map((at, i) => (
          <PlaceFields key={`place-${String(i)}`} label={"path" in thing ? `Point ${i + 1}` : "Middle"} at={at} keep={(to) => set(thingMoved(thing, i, to))} />
        ))}
      </div>
      <p className="small soft">{CLEAR_SOURCE[thing.what]}</p>
    </>
  );
}

/** Things on the ground to keep clear of: put down by a click or by numbers, each with its size and clearance. */
export function ThingsSection({ edit }: { edit: OutlineEdit }) {
  const { tool, setTool, chosen, choose } = useOutlineTools();
  const [what, setWhat] = useState<SpotKind | LineKind>("existing tree");
  const { things, plan } = edit;
  const lines = things.some(({ what }) => what === "overhead line" || what === "buried line") || tool?.kind === "line" || isLine(what);
  const add = (places: readonly Point[]) => {
    edit.keepThings([...things, thingFresh(what, places)], `${what} put down.`);
    choose({ kind: "thing", index: things.length });
  };
  const byNumbers = () => {
    const { outline } = planSampled(plan);
    const middle = (axis: 0 | 1) => Math.round(Math.min(...outline.map((p) => p[axis])) + Math.max(...outline.map((p) => p[axis]))) / 2;
    const [x, y] = [middle(0), middle(1)];
    const low = Math.min(...outline.map((p) => p[0]));
    add(isLine(what) ? [[low, y] as const, [2 * x - low, y] as const] : [[x, y] as const]);
  };
  const finishLine = () => {
    const kept = tool?.kind === "line" ? lineFinished(edit, tool) : null;
    if (kept) {
      edit.keepThings(kept, `${kept.at(-1)?.what} drawn.`);
      choose({ kind: "thing", index: kept.length - 1 });
    }
    setTool(null);
  };
  return (
    <section aria-labelledby="things-title" className="outline-section">
      <h2 id="things-title">To keep clear of</h2>
      {things.length === 0 ? <p className="small soft">Trees that stay, boulders, wells, spouts, outlets and lines. Choose one and click where it is.</p> : null}
      <ul className="thing-list">
        {things.map((thing, i) => {
          const name = thingName(thing, i);
          const open = chosen?.kind === "thing" && chosen.index === i;
          return (
            <li key={`${thing.what} ${String(i)}`}>
              <div className="spread">
                <button type="button" className="plain" aria-expanded={open} onClick={() => choose(open ? null : { kind: "thing", index: i })}>
                  {name}
                </button>
                <span className="soft small">{lengthText(thing.clearFt)} clear</span>
                <button
                  type="button"
                  className="plain small"
                  aria-label={`Take ${name} off the drawing`}
                  onClick={() =>
                    edit.keepThings(
                      things.filter((_, j) => j !== i),
                      `${name} taken off the drawing.`,
                    )
                  }
                >
                  Take off
                </button>
              </div>
              {open ? (
                <ThingDetails
                  thing={thing}
                  name={name}
                  set={(next) =>
                    edit.keepThings(
                      things.map((other, j) => (j === i ? next : other)),
                      `${name} changed.`,
                    )
                  }
                />
              ) : null}
            </li>
          );
        })}
      </ul>
      {tool?.kind === "spot" || tool?.kind === "line" ? (
        <div className="notice small">
          <p>
            {tool.kind === "spot"
              ? `Click on the drawing where the ${tool.what} is.`
              : `Click along the ${tool.what}, point by point: ${tool.path.length} so far. Enter or a double click ends it, Backspace takes the last point back.`}
          </p>
          <div className="row">
            {tool.kind === "line" ? (
              <button type="button" className="primary" disabled={tool.path.length < 2} onClick={finishLine}>
                End the line
              </button>
            ) : null}
            <button type="button" onClick={() => setTool(null)}>
              Cancel
            </button>
          </div>
        </div>
      ) : (
        <div className="fields">
          <label className="field">
            Put down
            <select
              value={what}
              onChange={(event) => {
                const kind = [...SPOT_KINDS, ...LINE_KINDS].find((k) => k === event.target.value);
                if (kind) setWhat(kind);
              }}
            >
              {[...SPOT_KINDS, ...LINE_KINDS].map((kind) => (
                <option key={kind}>{kind}</option>
              ))}
            </select>
          </label>
          <button type="button" onClick={() => setTool(isLine(what) ? { kind: "line", what, path: [] } : { kind: "spot", what })}>
            Click its place
          </button>
          <button type="button" disabled={things.length >= 200} onClick={byNumbers}>
            By numbers
          </button>
        </div>
      )}
      {lines ? <LineCaution /> : null}
    </section>
  );
}
