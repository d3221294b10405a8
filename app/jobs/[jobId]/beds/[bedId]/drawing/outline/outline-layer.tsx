"use client";

import { type KeyboardEvent, type PointerEvent, useEffect, useRef } from "react";
import type { Point } from "@/lib/ground/outline";
import { planCornerAdded } from "@/lib/ground/plan-edit";
import { planCurves } from "@/lib/ground/plan-outline";
import type { LayerProps } from "../drawing-props";
import { curvePath, linePath, planPath } from "../plan-path";
import { ftOfPx, pxOfFt } from "../sheet-view";
import { ThingMark } from "../thing-mark";
import { arrowStepFt } from "./drag-handle";
import { CornerHandles, EdgeHandles, edgeBent } from "./edge-handles";
import { EdgeLabels } from "./edge-labels";
import { useOutlineTools } from "./outline-tools";
import { edgeName } from "./outline-words";
import "./outline.css";
import { ThingHandles } from "./thing-handles";
import { ToolSurface } from "./tool-surface";
import { useOutlineEdit } from "./use-outline-edit";

/** Over the drawing in Outline mode: the outline being drawn, its handles, its edges' labels, and what is wrong with it at its place. */
export function OutlineLayer(props: LayerProps) {
  const { bed, edges, view, widthPx, heightPx, snapFt, say } = props;
  const edit = useOutlineEdit(props);
  const { tool, setTool, chosen, choose } = useOutlineTools();
  const box = useRef<HTMLDivElement>(null);
  const { plan, fault, things } = edit;
  // A tool is laid down with the mode.
  useEffect(() => () => setTool(null), [setTool]);
  // What is wrong was never the bed's: undo and Esc take that back first.
  const dropPlan = useRef<(() => void) | null>(null);
  dropPlan.current = fault ? edit.dropPlan : null;
  useEffect(() => {
    const onKey = (event: globalThis.KeyboardEvent) => {
      const undo = (event.ctrlKey || event.metaKey) && !event.shiftKey && event.key.toLowerCase() === "z";
      if (!dropPlan.current || (!undo && event.key !== "Escape")) return;
      if (event.target instanceof HTMLElement && event.target.closest("input, select, textarea, dialog")) return;
      event.preventDefault();
      event.stopPropagation();
      dropPlan.current();
    };
    window.addEventListener("keydown", onKey, { capture: true });
    return () => window.removeEventListener("keydown", onKey, { capture: true });
  }, []);
  const placeOf = (event: PointerEvent): Point => {
    const area = box.current?.getBoundingClientRect();
    return ftOfPx(view, [event.clientX - (area?.left ?? 0), event.clientY - (area?.top ?? 0)]);
  };
  const chosenEdge = chosen?.kind === "edge" && chosen.index < plan.length ? chosen.index : null;
  const curves = planCurves(plan);
  const chosenCurve = chosenEdge === null ? undefined : curves[chosenEdge];
  const onEdgeKey = (edge: number, event: KeyboardEvent) => {
    const name = edgeName(plan, edge);
    if (event.key === "+") edit.keepPlan(planCornerAdded(plan, edge), `A corner added on edge ${name}.`);
    else if (event.key === "ArrowUp" || event.key === "ArrowDown") {
      choose({ kind: "edge", index: edge });
      edit.keepPlan(edgeBent(plan, edge, (event.key === "ArrowUp" ? 1 : -1) * arrowStepFt(snapFt)), `Edge ${name} bent.`);
    } else return false;
    return true;
  };
  const handles = { edit, view, snapFt, placeOf };
  const faultAt = fault?.place ? pxOfFt(view, fault.place) : null;
  return (
    <div ref={box} className="outline-layer" style={{ width: widthPx, height: heightPx }}>
      <svg className="outline-ink" width={widthPx} height={heightPx} viewBox={`0 0 ${widthPx} ${heightPx}`} aria-hidden="true" focusable="false">
        {plan === edges ? null : <path className={fault ? "draft-line faulty" : "draft-line"} d={planPath(view, plan)} />}
        {things === (bed.drawing?.things ?? things) ? null : things.map((thing, i) => <ThingMark key={`${thing.what} ${String(i)}`} thing={thing} view={view} />)}
        {curves.map((curve, edge) => (
          <path
            key={`edge-${String(edge)}`}
            className="edge-grip"
            d={curvePath(view, curve)}
            onPointerDown={(event) => {
              if (event.button !== 0) return;
              event.stopPropagation();
              choose({ kind: "edge", index: edge });
            }}
          />
        ))}
        {chosenCurve ? <path className="edge-chosen" d={curvePath(view, chosenCurve)} /> : null}
        {chosenCurve?.shape.kind === "cubic" ? (
          <path className="control-line" d={`${linePath(view, [chosenCurve.from, chosenCurve.shape.control1])}${linePath(view, [chosenCurve.to, chosenCurve.shape.control2])}`} />
        ) : null}
        {faultAt ? <path className="fault-mark" d={`M${faultAt[0] - 13} ${faultAt[1]}a13 13 0 1 0 26 0a13 13 0 1 0 -26 0m4 -9l18 18m0 -18l-18 18`} /> : null}
      </svg>
      {tool ? (
        <ToolSurface tool={tool} edit={edit} view={view} snapFt={snapFt} placeOf={placeOf} say={say} />
      ) : (
        <>
          <EdgeLabels plan={plan} view={view} widthPx={widthPx} heightPx={heightPx} chosen={chosenEdge} choose={(index) => choose({ kind: "edge", index })} onKey={onEdgeKey} />
          <ThingHandles {...handles} choose={(index) => choose({ kind: "thing", index })} />
          <CornerHandles {...handles} />
          {chosenEdge === null ? null : <EdgeHandles {...handles} edge={chosenEdge} />}
        </>
      )}
      {fault ? (
        <div
          className="fault-words"
          style={
            faultAt
              ? {
                  left: Math.min(Math.max(8, faultAt[0] - 120), Math.max(8, widthPx - 268)),
                  ...(faultAt[1] > heightPx / 2 ? { bottom: heightPx - faultAt[1] + 20 } : { top: faultAt[1] + 20 }),
                }
              : { left: 8, top: 8 }
          }
        >
          <p role="alert" className="small">
            {fault.words}
          </p>
        </div>
      ) : null}
    </div>
  );
}
