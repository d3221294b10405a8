"use client";

import { type PointerEvent, useEffect, useRef, useState } from "react";
import type { UnderlayPlace } from "@/lib/ground/bed-drawing";
import { type KeepClear, USUAL_CLEAR_FT } from "@/lib/ground/border";
import { lengthText } from "@/lib/ground/length";
import type { Point } from "@/lib/ground/outline";
import { underlayMoved } from "@/lib/ground/underlay-scale";
import { pxOfFt, type SheetView } from "../sheet-view";
import { cornerAdded, planOfCorners } from "./corner-path";
import { placeSnapped } from "./drag-handle";
import { type OutlineTool, useOutlineTools } from "./outline-tools";
import { thingFresh } from "./thing-fresh";
import type { OutlineEdit } from "./use-outline-edit";

type SurfaceProps = {
  readonly tool: OutlineTool;
  readonly edit: OutlineEdit;
  readonly view: SheetView;
  readonly snapFt: number;
  readonly placeOf: (event: PointerEvent) => Point;
  readonly say: (words: string) => void;
};

/** A line as it is to be kept: it needs two points. */
export function lineFinished(edit: OutlineEdit, tool: OutlineTool & { kind: "line" }): readonly KeepClear[] | null {
  return tool.path.length < 2 ? null : [...edit.things, thingFresh(tool.what, tool.path)];
}

/** Pixels from the first corner within which a press closes the outline. */
const CLOSE_PX = 14;

/** The corners kept as the bed's outline, or shown with what is wrong with it; false where there are too few. */
export function cornersFinished(edit: OutlineEdit, path: readonly Point[]): boolean {
  const plan = planOfCorners(path);
  if (!plan) return false;
  edit.keepPlan(plan, `The outline has ${plan.length} corners now. Bend its edges and say what they border; Undo brings the old one back.`);
  return true;
}

/** Over the whole drawing while a click on it places something: a thing, the points of a line, two places of the picture; or while the picture is dragged. */
export function ToolSurface({ tool, edit, view, snapFt, placeOf, say }: SurfaceProps) {
  const { setTool, choose } = useOutlineTools();
  // Where the pointer took hold of the picture, and how it lay then.
  const held = useRef<{ at: Point; underlay: UnderlayPlace; now: UnderlayPlace } | null>(null);
  // Where the pointer is while corners are drawn: the side being drawn, with its length.
  const [over, setOver] = useState<Point | null>(null);
  const finish = () => {
    if (tool.kind === "corners") {
      if (cornersFinished(edit, tool.path)) setTool(null);
      else say("An outline has three corners or more.");
      return;
    }
    const things = tool.kind === "line" ? lineFinished(edit, tool) : null;
    if (things) {
      edit.keepThings(things, `${things.at(-1)?.what} drawn.`);
      choose({ kind: "thing", index: things.length - 1 });
    }
    setTool(null);
  };
  const latest = useRef({ tool, finish });
  latest.current = { tool, finish };
  useEffect(() => {
    const onKey = (event: globalThis.KeyboardEvent) => {
      if (event.target instanceof HTMLElement && event.target.closest("input, select, textarea, dialog")) return;
      const { tool, finish } = latest.current;
      if (event.key === "Escape") setTool(null);
      else if (
        event.key === "Enter" &&
        (tool.kind === "line" || tool.kind === "corners") &&
        !(event.target instanceof HTMLElement && event.target.closest("button:not(.tool-surface)"))
      )
        finish();
      else if (event.key === "Backspace" && (tool.kind === "line" || tool.kind === "corners")) setTool({ ...tool, path: tool.path.slice(0, -1) });
      else return;
      event.preventDefault();
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, [setTool]);
  const put = (event: PointerEvent) => {
    const raw = placeOf(event);
    switch (tool.kind) {
      case "spot": {
        const things = [...edit.things, thingFresh(tool.what, [placeSnapped(raw, snapFt)])];
        edit.keepThings(things, `${tool.what} placed, ${USUAL_CLEAR_FT[tool.what]} ft kept clear.`);
        choose({ kind: "thing", index: things.length - 1 });
        setTool(null);
        return;
      }
      case "line": {
        const [x, y] = placeSnapped(raw, snapFt);
        const last = tool.path.at(-1);
        // The second click of a double click is no point of its own.
        if (last && last[0] === x && last[1] === y) return;
        setTool({ ...tool, path: [...tool.path, [x, y]] });
        say(`Point ${tool.path.length + 1} of the line.`);
        return;
      }
      case "corners": {
        const at = placeSnapped(raw, snapFt);
        const [first] = tool.path;
        const [px, firstPx] = [pxOfFt(view, raw), first ? pxOfFt(view, first) : null];
        if (firstPx && tool.path.length >= 3 && Math.hypot(px[0] - firstPx[0], px[1] - firstPx[1]) <= CLOSE_PX) return finish();
        setTool({ ...tool, path: cornerAdded(tool.path, at) });
        say(`Corner ${tool.path.length + 1}.`);
        return;
      }
      case "scale":
        setTool({ kind: "scale", points: tool.points.length >= 2 ? [raw] : [...tool.points, raw] });
        say(tool.points.length === 1 ? "Both places are marked. Type how far apart they are." : "First place marked.");
        return;
      case "move picture":
        return;
    }
  };
  const line = tool.kind === "line" || tool.kind === "corners" ? tool.path.map((point) => pxOfFt(view, point)) : [];
  const last = tool.kind === "corners" ? tool.path.at(-1) : undefined;
  const side = last && over ? { from: pxOfFt(view, last), to: pxOfFt(view, over), words: lengthText(Math.hypot(over[0] - last[0], over[1] - last[1])) } : null;
  const marks = tool.kind === "scale" ? tool.points.map((point) => pxOfFt(view, point)) : line;
  return (
    <>
      <button
        type="button"
        tabIndex={-1}
        aria-label="The drawing: click to place"
        className={`tool-surface${tool.kind === "move picture" ? " moving" : ""}`}
        onPointerDown={(event) => {
          if (event.button !== 0) return;
          event.stopPropagation();
          if (tool.kind !== "move picture") return;
          event.currentTarget.setPointerCapture(event.pointerId);
          if (edit.underlay) held.current = { at: placeOf(event), underlay: edit.underlay, now: edit.underlay };
        }}
        onPointerMove={(event) => {
          if (tool.kind === "corners") return setOver(placeSnapped(placeOf(event), snapFt));
          if (!held.current) return;
          const [x, y] = placeOf(event);
          const { at, underlay } = held.current;
          held.current.now = underlayMoved(underlay, [x - at[0], y - at[1]]);
          edit.showUnderlay(held.current.now);
        }}
        onPointerUp={(event) => {
          if (held.current) edit.keepUnderlay(held.current.now, "The picture is moved.");
          else put(event);
          held.current = null;
        }}
        onPointerLeave={() => setOver(null)}
        onDoubleClick={() => (tool.kind === "line" || (tool.kind === "corners" && tool.path.length >= 3)) && finish()}
      />
      <svg className="tool-ink" width="100%" height="100%" aria-hidden="true" focusable="false">
        {side ? (
          <>
            <line x1={side.from[0]} y1={side.from[1]} x2={side.to[0]} y2={side.to[1]} strokeDasharray="5 4" />
            <text className="plan-words" x={(side.from[0] + side.to[0]) / 2 + 8} y={(side.from[1] + side.to[1]) / 2 - 6}>
              {side.words}
            </text>
          </>
        ) : null}
        {marks.length > 1 ? <polyline points={marks.map((p) => p.join(",")).join(" ")} /> : null}
        {marks.map(([x, y], i) => (
          <path key={`${x} ${y} ${String(i)}`} d={`M${x - 9} ${y}h18M${x} ${y - 9}v18`} />
        ))}
      </svg>
    </>
  );
}
