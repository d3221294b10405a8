"use client";

import { useState } from "react";
import { lengthFromText, lengthText } from "@/lib/ground/length";
import { cornerAdded, cornerBySide } from "./corner-path";
import { useOutlineTools } from "./outline-tools";
import { cornersFinished } from "./tool-surface";
import type { OutlineEdit } from "./use-outline-edit";

const WAYS = [
  [0, "to the right"],
  [90, "up"],
  [180, "to the left"],
  [270, "down"],
] as const;

/** The outline drawn anew corner by corner: by presses on the drawing, or side by side as it was taped. */
export function CornerDrawing({ edit }: { edit: OutlineEdit }) {
  const { tool, setTool, choose } = useOutlineTools();
  const [length, setLength] = useState("");
  const [way, setWay] = useState<number>(0);
  const [fault, setFault] = useState("");
  const path = tool?.kind === "corners" ? tool.path : null;
  if (!path)
    return (
      <div className="outline-section">
        <button
          type="button"
          onClick={() => {
            choose(null);
            setTool({ kind: "corners", path: [] });
          }}
        >
          Draw it corner by corner
        </button>
      </div>
    );
  const last = path.at(-1);
  const begun = path.length > 0;
  const addSide = () => {
    const read = lengthFromText(length, "ft");
    if (!read.ok || read.feet <= 0 || read.feet > 2000) return setFault(read.ok ? "More than zero, and at most 2,000 ft." : read.fault);
    setFault("");
    setLength("");
    const from = begun ? path : [edit.plan[0]?.from ?? ([0, 0] as const)];
    setTool({ kind: "corners", path: cornerAdded(from, cornerBySide(from, read.feet, way)) });
  };
  return (
    <section aria-label="The outline, corner by corner" className="outline-section hold-panel">
      <p className="small">
        Press each corner on the drawing; press the first again to close. Backspace takes the last one back, Enter closes, Esc leaves the old outline as it is. Or type the sides as
        they were taped:
      </p>
      <form
        className="fields"
        onSubmit={(event) => {
          event.preventDefault();
          addSide();
        }}
      >
        <label className="field">
          Next side
          <input className="short" value={length} placeholder="12 ft 6 in" aria-invalid={fault !== ""} onChange={(event) => setLength(event.target.value)} />
        </label>
        <label className="field">
          runs
          <select value={way} onChange={(event) => setWay(Number(event.target.value))}>
            {WAYS.map(([degrees, words]) => (
              <option key={degrees} value={degrees}>
                {words}
              </option>
            ))}
          </select>
        </label>
        <button type="submit">Add the side</button>
      </form>
      {fault ? (
        <p className="alert small" role="alert">
          {fault}
        </p>
      ) : null}
      <p className="small soft" role="status">
        {begun && last
          ? `${path.length} ${path.length === 1 ? "corner" : "corners"}; the last at ${lengthText(Math.abs(last[0]))} ${last[0] < 0 ? "left of" : "right of"} 0, ${lengthText(Math.abs(last[1]))} ${last[1] < 0 ? "below" : "above"} it.`
          : "No corner yet."}
      </p>
      <div className="row">
        <button
          type="button"
          className="primary"
          disabled={path.length < 3}
          onClick={() => {
            if (cornersFinished(edit, path)) setTool(null);
          }}
        >
          Close the outline
        </button>
        <button type="button" disabled={!begun} onClick={() => setTool({ kind: "corners", path: path.slice(0, -1) })}>
          Take the last back
        </button>
        <button type="button" onClick={() => setTool(null)}>
          Leave it as it was
        </button>
      </div>
    </section>
  );
}
