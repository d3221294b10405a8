"use client";

import { type KeyboardEvent, type PointerEvent, useRef } from "react";
import { type CurveShape, curvePointAt, STRAIGHT } from "@/lib/ground/curve";
import { lengthText } from "@/lib/ground/length";
import type { Point } from "@/lib/ground/outline";
import { cornerCanGo, ordinateToward, outwardSign, planCornerAdded, planCornerMoved, planCornerRemoved, planEdgeShaped } from "@/lib/ground/plan-edit";
import { type PlanOutline, planCurves } from "@/lib/ground/plan-outline";
import type { SheetView } from "../sheet-view";
import { arrowStep, arrowStepFt, DragHandle, placeSnapped } from "./drag-handle";
import { edgeName, placeWords } from "./outline-words";
import type { OutlineEdit } from "./use-outline-edit";

export type HandleProps = { readonly edit: OutlineEdit; readonly view: SheetView; readonly snapFt: number; readonly placeOf: (event: PointerEvent) => Point };

/** The plan that a handle was taken hold of, and the one it made of it: each move starts from the first, so that nothing drifts. */
function useHeldPlan(edit: OutlineEdit) {
  const held = useRef<{ from: PlanOutline; now: PlanOutline } | null>(null);
  return {
    grab: () => {
      held.current = { from: edit.plan, now: edit.plan };
    },
    drag: (change: (from: PlanOutline) => PlanOutline) => {
      if (!held.current) return;
      const now = change(held.current.from);
      held.current = { ...held.current, now };
      edit.showPlan(now);
    },
    drop: (words: string) => {
      if (held.current) edit.keepPlan(held.current.now, words);
      held.current = null;
    },
  };
}

/** The edge bent by so many feet to its outer side (negative: inward). A curve given by handles stays as it is. */
export function edgeBent(plan: PlanOutline, edge: number, outwardFt: number): PlanOutline {
  const shape = plan[edge]?.shape;
  if (!shape || shape.kind === "cubic") return plan;
  const ordinateFt = (shape.kind === "arc" ? shape.ordinateFt : 0) + outwardFt * outwardSign(plan);
  return planEdgeShaped(plan, edge, Math.abs(ordinateFt) < 1e-6 ? STRAIGHT : { kind: "arc", ordinateFt });
}

/** Puts the focus on a corner's handle once it is drawn. */
function cornerFocused(beside: Element, corner: number) {
  const layer = beside.closest(".outline-layer");
  requestAnimationFrame(() => {
    const handle = layer?.querySelectorAll(".corner-handle")[corner];
    if (handle instanceof HTMLElement) handle.focus();
  });
}

/** Corners: dragged, or moved by arrows; Delete takes one out, + adds one on the edge after it. */
export function CornerHandles({ edit, view, snapFt, placeOf }: HandleProps) {
  const hold = useHeldPlan(edit);
  const { plan } = edit;
  const onKey = (corner: number, at: Point) => (event: KeyboardEvent) => {
    const step = arrowStep(event.key, arrowStepFt(snapFt));
    if (step) edit.keepPlan(planCornerMoved(plan, corner, [at[0] + step[0], at[1] + step[1]]), `Corner ${corner + 1} at ${placeWords([at[0] + step[0], at[1] + step[1]])}.`);
    else if (event.key === "Delete" || event.key === "Backspace") {
      if (!cornerCanGo(plan, corner)) return true;
      edit.keepPlan(planCornerRemoved(plan, corner), `Corner ${corner + 1} taken out.`);
      cornerFocused(event.currentTarget, Math.min(corner, plan.length - 2));
    } else if (event.key === "+") {
      edit.keepPlan(planCornerAdded(plan, corner), `Corner ${corner + 2} added.`);
      cornerFocused(event.currentTarget, corner + 1);
    } else return false;
    return true;
  };
  return plan.map(({ from }, corner) => (
    <DragHandle
      key={`corner-${String(corner)}`}
      className="corner-handle"
      label={`Corner ${corner + 1} at ${placeWords(from)}. Arrows move it, Delete takes it out, + adds one after it.`}
      at={from}
      view={view}
      placeOf={placeOf}
      onGrab={hold.grab}
      onDrag={(place) => hold.drag((plan) => planCornerMoved(plan, corner, placeSnapped(place, snapFt)))}
      onDrop={() => hold.drop(`Corner ${corner + 1} moved.`)}
      onKey={onKey(corner, from)}
    >
      <span>{corner + 1}</span>
    </DragHandle>
  ));
}

/** Handles of the chosen edge: its middle bends it to an arc, two handles shape a free curve, + adds a corner. */
export function EdgeHandles({ edit, view, snapFt, placeOf, edge }: HandleProps & { edge: number }) {
  const hold = useHeldPlan(edit);
  const { plan } = edit;
  const [curve, shape] = [planCurves(plan)[edge], plan[edge]?.shape];
  if (!curve || !shape) return null;
  const step = arrowStepFt(snapFt);
  const name = edgeName(plan, edge);
  const outward = outwardSign(plan);
  if (shape.kind === "cubic") {
    const moved = (which: "control1" | "control2", place: Point): CurveShape => ({ ...shape, [which]: place });
    return (["control1", "control2"] as const).map((which, i) => (
      <DragHandle
        key={which}
        className="control-handle"
        label={`Handle ${i + 1} of edge ${name} at ${placeWords(shape[which])}. Arrows move it.`}
        at={shape[which]}
        view={view}
        placeOf={placeOf}
        onGrab={hold.grab}
        onDrag={(place) => hold.drag((from) => planEdgeShaped(from, edge, moved(which, placeSnapped(place, snapFt))))}
        onDrop={() => hold.drop(`Edge ${name} shaped.`)}
        onKey={(event) => {
          const by = arrowStep(event.key, step);
          if (by) edit.keepPlan(planEdgeShaped(plan, edge, moved(which, [shape[which][0] + by[0], shape[which][1] + by[1]])), `Edge ${name} shaped.`);
          return by !== null;
        }}
      />
    ));
  }
  const bentToward = (place: Point): CurveShape => {
    const raw = ordinateToward(curve, place);
    const ordinateFt = snapFt > 0 ? Math.round(raw / snapFt) * snapFt : Math.round(raw * 100) / 100;
    return ordinateFt === 0 ? STRAIGHT : { kind: "arc", ordinateFt };
  };
  const ordinateFt = shape.kind === "arc" ? shape.ordinateFt * outward : 0;
  const bend = (feet: number) => edit.keepPlan(edgeBent(plan, edge, feet), `Edge ${name} bent.`);
  return (
    <DragHandle
      className="bend-handle"
      label={`Middle of edge ${name}, ${ordinateFt === 0 ? "straight" : `${lengthText(Math.abs(ordinateFt))} ${ordinateFt > 0 ? "outward" : "inward"}`}. Arrow up bends it outward, arrow down inward.`}
      at={curvePointAt(curve, 0.5)}
      view={view}
      placeOf={placeOf}
      onGrab={hold.grab}
      onDrag={(place) => hold.drag((from) => planEdgeShaped(from, edge, bentToward(place)))}
      onDrop={() => hold.drop(`Edge ${name} bent.`)}
      onKey={(event) => {
        if (event.key === "ArrowUp" || event.key === "ArrowRight") bend(step);
        else if (event.key === "ArrowDown" || event.key === "ArrowLeft") bend(-step);
        else if (event.key === "+") edit.keepPlan(planCornerAdded(plan, edge), `A corner added on edge ${name}.`);
        else return false;
        return true;
      }}
    />
  );
}
