"use client";

import { borderText } from "@/lib/ground/border";
import { lengthText } from "@/lib/ground/length";
import type { PlanOutline } from "@/lib/ground/plan-outline";
import type { Grid } from "@/lib/ground/spacing";
import { TextField } from "../text-field";
import { edgeName, edgeSide } from "./outline/outline-words";
import { PLACING_MOST, type Placing, type PlacingGround, placingAngle, placingByArea, placingHasLine, placingHasWidth, placingLengthFt, placingTurned } from "./placing";
import { plantsText, toolRead } from "./plan-words";

type Read<T> = { ok: true; value: T } | { ok: false; fault: string };
const wholeRead =
  (least: number, most: number) =>
  (typed: string): Read<number> => {
    const value = Number(typed);
    return typed !== "" && Number.isInteger(value) && value >= least && value <= most ? { ok: true, value } : { ok: false, fault: `A whole number from ${least} to ${most}.` };
  };
const degreesRead = (typed: string): Read<number> => {
  const value = Number(typed.replace(/\s*°$/, "").replace("−", "-"));
  return typed !== "" && Number.isFinite(value) && Math.abs(value) <= 360 ? { ok: true, value } : { ok: false, fault: "Degrees, such as 45 or -30." };
};

const HOW: Readonly<Record<Placing["kind"], string>> = {
  single: "Press on the drawing for each plant.",
  group: "Press where the group's middle is to be.",
  row: "Drag from the first end to the last, or press once for each end.",
  repeat: "Drag along the bed; the groups stand on either side of the line in turn.",
  drift: "Drag the drift's length; pull its ends and its side.",
  fill: "Choose what is filled.",
};

/** The figures of the tool in hand, what it would set, and the two ways to end it. */
export function PlacingPanel({
  placing,
  name,
  count,
  ground,
  edges,
  change,
  set,
  cancel,
}: {
  placing: Placing;
  name: string;
  count: number;
  ground: PlacingGround;
  edges: PlanOutline;
  change: (placing: Placing) => void;
  set: () => void;
  cancel: () => void;
}) {
  const { kind } = placing;
  const byArea = placingByArea(placing, ground);
  const line = placingHasLine(placing);
  const followsEdge = kind === "row" && placing.edge !== null;
  const wholeGround = kind === "fill" && !line;
  return (
    <section aria-label={`Setting ${name}`} className="hold-panel placing-panel screen-only">
      <p>
        <b>{name}</b>{" "}
        <span className="soft">
          {followsEdge ? "The row follows the edge." : HOW[kind]}
          {followsEdge || wholeGround ? "" : " Arrows move it,"} Enter sets it, Esc puts it away.
        </span>
      </p>
      <div className="fields">
        {kind === "single" ? null : (
          <div className="field">
            <span className="soft small">Spacing</span>
            <TextField
              label="Spacing on center"
              className="short"
              text={lengthText(placing.spacingFt)}
              read={toolRead(1 / 6, 200, "spacing")}
              keep={(spacingFt) => change({ ...placing, spacingFt, insetFt: spacingFt / 2 })}
            />
          </div>
        )}
        {kind === "group" || kind === "repeat" ? (
          <label className="field">
            {kind === "group" ? "Plants" : "In each group"}
            <select value={placing.quantity} onChange={(event) => change({ ...placing, quantity: Number(event.target.value) })}>
              {[3, 5, 7, 9].map((quantity) => (
                <option key={quantity}>{quantity}</option>
              ))}
            </select>
          </label>
        ) : null}
        {kind === "repeat" ? (
          <>
            <div className="field">
              <span className="soft small">Groups</span>
              <TextField label="Groups" className="short" text={String(placing.groups)} read={wholeRead(1, 50)} keep={(groups) => change({ ...placing, groups })} />
            </div>
            <div className="field">
              <span className="soft small">Off the line</span>
              <TextField
                label="How far the groups stand off the line"
                className="short"
                text={lengthText(placing.asideFt)}
                read={toolRead(1 / 12, 100, "ft")}
                keep={(asideFt) => change({ ...placing, asideFt })}
              />
            </div>
          </>
        ) : null}
        {kind === "drift" || kind === "fill" ? (
          <label className="field">
            Grid
            <select value={placing.grid} onChange={(event) => change({ ...placing, grid: event.target.value as Grid })}>
              <option value="triangular">triangular</option>
              <option value="square">square</option>
            </select>
          </label>
        ) : null}
        {kind === "fill" ? (
          <label className="field">
            Fill
            <select value={placing.ground} onChange={(event) => change({ ...placing, ground: event.target.value as Placing["ground"] })}>
              <option value="bed">the whole bed</option>
              <option value="left">what is left of it</option>
              <option value="drift">a drift, where it is free</option>
            </select>
          </label>
        ) : null}
        {kind === "row" ? (
          <label className="field">
            Along
            <select value={placing.edge ?? ""} onChange={(event) => change({ ...placing, edge: event.target.value === "" ? null : Number(event.target.value) })}>
              <option value="">a line</option>
              {edges.map(({ border }, index) => (
                <option key={`edge-${String(index)}`} value={index}>
                  {edgeName(edges, index)} {edgeSide(edges, index)}, {border.what === "open" ? "open" : borderText(border).replace(/^the /, "")}
                </option>
              ))}
            </select>
          </label>
        ) : null}
        {kind === "row" && placing.edge !== null ? (
          <div className="field">
            <span className="soft small">Inside it by</span>
            <TextField
              label="How far inside the edge"
              className="short"
              text={lengthText(placing.insetFt)}
              read={toolRead(1 / 12, 100, "ft")}
              keep={(insetFt) => change({ ...placing, insetFt })}
            />
          </div>
        ) : null}
        {line ? (
          <>
            <div className="field">
              <span className="soft small">Length</span>
              <TextField
                label="Length"
                className="short"
                text={lengthText(placingLengthFt(placing))}
                read={toolRead(0.5, 2000, "ft")}
                keep={(lengthFt) => change(placingTurned(placing, lengthFt, placingAngle(placing)))}
              />
            </div>
            <div className="field">
              <span className="soft small">Angle</span>
              <TextField
                label="Angle in degrees"
                className="short"
                text={`${Math.round(placingAngle(placing))}°`}
                read={degreesRead}
                keep={(degrees) => change(placingTurned(placing, placingLengthFt(placing), degrees))}
              />
            </div>
          </>
        ) : null}
        {placingHasWidth(placing) ? (
          <div className="field">
            <span className="soft small">Width</span>
            <TextField
              label="Width of the drift"
              className="short"
              text={lengthText(placing.widthFt)}
              read={toolRead(0.5, 500, "ft")}
              keep={(widthFt) => change({ ...placing, widthFt })}
            />
          </div>
        ) : null}
      </div>
      {byArea ? (
        <p className="small soft">
          By area {Math.ceil(byArea.expected - 1e-6)}, on the drawing {count}: at the edge of this bed a set-out may differ by up to {Math.ceil(byArea.differ)} either way.
        </p>
      ) : null}
      {count === 0 ? (
        <p className="small alert">
          {kind === "fill" || kind === "drift" ? `No plant finds room at this spacing (or more than ${PLACING_MOST.toLocaleString("en-US")} would).` : "Draw the line first."}
        </p>
      ) : null}
      <div className="row">
        <button type="button" className="primary" disabled={count === 0} onClick={set}>
          Set {plantsText(count)}
        </button>
        <button type="button" onClick={cancel}>
          Put the tool away
        </button>
      </div>
    </section>
  );
}
