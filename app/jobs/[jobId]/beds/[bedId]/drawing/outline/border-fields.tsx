"use client";

import { useState } from "react";
import { type Border, STREET_CORNER } from "@/lib/ground/border";
import { curveLength } from "@/lib/ground/curve";
import { windowRoom } from "@/lib/ground/edge-window";
import { lengthText } from "@/lib/ground/length";
import { planEdgeBordered, planWindowsSet } from "@/lib/ground/plan-edit";
import { planCurves } from "@/lib/ground/plan-outline";
import { TextField } from "../../text-field";
import { feetRead, lengthRead, type Read } from "./outline-readers";
import { useOutlineTools } from "./outline-tools";
import { BORDER_CHOICES, BORDER_WORDS } from "./outline-words";
import type { OutlineEdit } from "./use-outline-edit";

/** A window before it is measured: 4 ft wide, its sill 3 ft over the ground (common sizes, no source). */
const USUAL_WINDOW = { widthFt: 4, sillFt: 3 } as const;
/** A retaining wall before it is measured: 2½ ft high; no woody plant within 2 ft of its top, where its grid and drain lie (common practice, no source). */
const USUAL_WALL = { what: "retaining wall", heightFt: 2.5, bedAt: "top", setbackFt: 2 } as const satisfies Border;
/** Walls over this usually need an engineer and a permit (International Building Code 105.2 exempts walls up to 4 ft from footing to top that carry no surcharge; from memory). */
const PERMIT_FT = 4;

function borderFresh(what: Border["what"]): Border {
  switch (what) {
    case "house wall":
      return { what, windows: [] };
    case "retaining wall":
      return USUAL_WALL;
    case "street corner":
      return STREET_CORNER;
    default:
      return { what };
  }
}

type EdgeFieldsProps = { readonly edit: OutlineEdit; readonly edge: number; readonly name: string };

/** What an edge borders. */
export function BorderSelect({ edit, edge, name }: EdgeFieldsProps) {
  const { choose } = useOutlineTools();
  const { plan } = edit;
  return (
    <select
      aria-label={`Edge ${name} borders`}
      value={plan[edge]?.border.what ?? "open"}
      onChange={(event) => {
        const what = BORDER_CHOICES.find((choice) => choice === event.target.value);
        if (!what) return;
        edit.keepPlan(planEdgeBordered(plan, edge, borderFresh(what)), `Edge ${name} borders ${BORDER_WORDS[what]}.`);
        choose({ kind: "edge", index: edge });
      }}
    >
      {BORDER_CHOICES.map((what) => (
        <option key={what} value={what}>
          {BORDER_WORDS[what]}
        </option>
      ))}
    </select>
  );
}

function WindowFields({ edit, edge, name, border }: EdgeFieldsProps & { border: Border & { what: "house wall" } }) {
  const { plan } = edit;
  const curve = planCurves(plan)[edge];
  const lengthFt = curve ? curveLength(curve) : 0;
  const { windows } = border;
  const room = windowRoom(windows, lengthFt, USUAL_WINDOW.widthFt);
  const keep = (next: typeof windows, words: string) => edit.keepPlan(planWindowsSet(plan, edge, next), words);
  const within =
    (holds: (feet: number) => boolean, fault: string) =>
    (typed: string): Read<number> => {
      const read = feetRead(2000)(typed);
      return read.ok && !holds(read.value) ? { ok: false, fault } : read;
    };
  return (
    <>
      {windows.length ? (
        <table className="window-table">
          <caption className="small soft">Windows, in feet along the wall from corner {edge + 1}</caption>
          <thead>
            <tr>
              <th scope="col">From</th>
              <th scope="col">To</th>
              <th scope="col">Sill height</th>
              <th scope="col">
                <span className="visually-hidden">Take out</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {windows.map((window, i) => {
              const set = (change: Partial<typeof window>) =>
                keep(
                  windows.map((other, j) => (j === i ? { ...window, ...change } : other)),
                  `Window ${i + 1} changed.`,
                );
              return (
                <tr key={`window-${String(i)}`}>
                  <td>
                    <TextField
                      label={`Window ${i + 1} of edge ${name} begins`}
                      text={lengthText(window.fromFt)}
                      read={within((feet) => feet < window.toFt, `Before its end at ${lengthText(window.toFt)}.`)}
                      keep={(fromFt) => set({ fromFt })}
                    />
                  </td>
                  <td>
                    <TextField
                      label={`Window ${i + 1} of edge ${name} ends`}
                      text={lengthText(window.toFt)}
                      read={within((feet) => feet > window.fromFt && feet <= lengthFt + 1e-6, `After its beginning, and at most ${lengthText(lengthFt)}, where the wall ends.`)}
                      keep={(toFt) => set({ toFt })}
                    />
                  </td>
                  <td>
                    <TextField
                      label={`Sill of window ${i + 1} of edge ${name} over the bed’s ground`}
                      text={lengthText(window.sillFt)}
                      read={feetRead(100)}
                      keep={(sillFt) => set({ sillFt })}
                    />
                  </td>
                  <td>
                    <button
                      type="button"
                      className="plain"
                      aria-label={`Take out window ${i + 1} of edge ${name}`}
                      onClick={() =>
                        keep(
                          windows.filter((_, j) => j !== i),
                          `Window ${i + 1} taken out.`,
                        )
                      }
                    >
                      Take out
                    </button>
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      ) : (
        <p className="small soft">Windows keep what grows before them under their sills.</p>
      )}
      <button
        type="button"
        disabled={!room || windows.length >= 50}
        onClick={() => room && keep([...windows, { fromFt: room[0], toFt: room[1], sillFt: USUAL_WINDOW.sillFt }], `Window ${windows.length + 1} added.`)}
      >
        Add a window
      </button>
    </>
  );
}

/** The name of the bed on the other side of a wall, written into this bed's notes. */
function BedBeyondNote({ label, placeholder, write }: { label: string; placeholder: string; write: ((name: string) => void) | null }) {
  const [name, setName] = useState("");
  return (
    <form
      className="fields"
      onSubmit={(event) => {
        event.preventDefault();
        if (!write || !name.trim()) return;
        write(name.trim());
        setName("");
      }}
    >
      <label className="field">
        {label}
        <input value={name} maxLength={120} placeholder={placeholder} onChange={(event) => setName(event.target.value)} />
      </label>
      <button type="submit" disabled={!write || !name.trim()}>
        Write it in the bed’s notes
      </button>
      {write ? null : <p className="small alert">The bed’s notes are full.</p>}
    </form>
  );
}

function WallFields({ edit, edge, name, border, notes, writeNotes }: BorderFieldsProps & { border: Border & { what: "retaining wall" } }) {
  const { plan } = edit;
  const other = border.bedAt === "top" ? "below" : "above";
  const set = (change: Partial<typeof border>) => edit.keepPlan(planEdgeBordered(plan, edge, { ...border, ...change }), `The wall along edge ${name} changed.`);
  const note = (bed: string) => {
    const line = `Retaining wall along edge ${name}, ${lengthText(border.heightFt)} high. The bed ${other} it: ${bed}.`;
    writeNotes(notes ? `${notes}\n${line}` : line);
  };
  return (
    <>
      <div className="fields">
        <div className="field">
          <span className="soft small">Height</span>
          <TextField
            label={`Height of the wall along edge ${name}`}
            className="short"
            text={lengthText(border.heightFt)}
            read={lengthRead(100)}
            keep={(heightFt) => set({ heightFt })}
          />
        </div>
        <label className="field">
          This bed lies
          <select
            aria-label={`This bed lies at the top or the foot of the wall along edge ${name}`}
            value={border.bedAt}
            onChange={(event) => set({ bedAt: event.target.value === "foot" ? "foot" : "top" })}
          >
            <option value="top">at its top</option>
            <option value="foot">at its foot</option>
          </select>
        </label>
        <div className="field">
          <span className="soft small">Woody plants back</span>
          <TextField
            label={`Setback of woody plants from the wall along edge ${name}`}
            className="short"
            text={lengthText(border.setbackFt)}
            read={feetRead(100)}
            keep={(setbackFt) => set({ setbackFt })}
          />
        </div>
      </div>
      {border.heightFt > PERMIT_FT ? (
        <p className="notice alert small" role="note">
          A wall over about 4 ft, less where it carries a slope, a drive or a building, usually needs an engineer and a permit. The local code decides: ask before it is built or
          planted.
        </p>
      ) : (
        <p className="small soft">Over about 4 ft a wall usually needs an engineer and a permit; some places say less. The local code decides.</p>
      )}
      <p className="small soft">
        Terraces are beds that share such an edge and stand above each other. Draw the bed {other} it as a bed of its own, with the same wall along its{" "}
        {other === "above" ? "foot" : "back"} edge. The setback is the wall’s own: it keeps roots out of its grid and drain.
      </p>
      <BedBeyondNote label={`The bed ${other} the wall`} placeholder={other === "above" ? "Upper terrace" : "Lower terrace"} write={notes.length < 4500 ? note : null} />
    </>
  );
}

type BorderFieldsProps = EdgeFieldsProps & { readonly notes: string; readonly writeNotes: (notes: string) => void };

/** What more there is to say about a border: windows, a wall's height, sight at a corner. */
export function BorderFields(props: BorderFieldsProps) {
  const { edit, edge, name } = props;
  const border = edit.plan[edge]?.border;
  if (!border) return null;
  switch (border.what) {
    case "house wall":
      return <WindowFields edit={edit} edge={edge} name={name} border={border} />;
    case "retaining wall":
      return <WallFields {...props} border={border} />;
    case "street corner": {
      const set = (change: Partial<typeof border>) => edit.keepPlan(planEdgeBordered(edit.plan, edge, { ...border, ...change }), `Sight along edge ${name} changed.`);
      return (
        <>
          <div className="fields">
            <div className="field">
              <span className="soft small">Within</span>
              <TextField
                label={`Drivers look across so much of the bed from edge ${name}`}
                className="short"
                text={lengthText(border.withinFt)}
                read={lengthRead(500)}
                keep={(withinFt) => set({ withinFt })}
              />
            </div>
            <div className="field">
              <span className="soft small">nothing higher than</span>
              <TextField
                label={`Nothing higher than this along edge ${name}`}
                className="short"
                text={lengthText(border.maxHeightFt)}
                read={lengthRead(50)}
                keep={(maxHeightFt) => set({ maxHeightFt })}
              />
            </div>
          </div>
          <p className="notice small" role="note">
            25 ft and 30 in are what many ordinances ask (Norfolk NE, Elizabethtown KY, El Segundo CA). The local ordinance goes before: look it up for this corner. Clear trunks
            may be allowed.
          </p>
        </>
      );
    }
    default:
      return null;
  }
}
