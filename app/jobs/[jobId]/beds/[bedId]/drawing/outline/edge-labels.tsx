"use client";

import type { KeyboardEvent } from "react";
import { curveLength } from "@/lib/ground/curve";
import { lengthText } from "@/lib/ground/length";
import { outwardSign } from "@/lib/ground/plan-edit";
import { type PlanOutline, planCurves } from "@/lib/ground/plan-outline";
import { curveMiddle } from "../plan-path";
import type { SheetView } from "../sheet-view";
import { BORDER_WORDS, edgeName, SHAPE_WORDS } from "./outline-words";

/** Pixels a letter of a label takes, from its middle. */
const LETTER_PX = 3.4;
/** Pixels from the edge to a label. */
const OFF_PX = 17;
/** Pixels from the middle of an edge that leave its handle free. */
const BESIDE_HANDLE_PX = 26;
/** Edges shorter than this on the screen say their length alone. */
const SHORT_PX = 70;

export type EdgeLabelsProps = {
  readonly plan: PlanOutline;
  readonly view: SheetView;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly chosen: number | null;
  readonly choose: (edge: number) => void;
  readonly onKey: (edge: number, event: KeyboardEvent) => boolean;
};

/** Each edge's length and what it borders, beside it on its outer side; pressing one chooses the edge. */
export function EdgeLabels({ plan, view, widthPx, heightPx, chosen, choose, onKey }: EdgeLabelsProps) {
  const outward = outwardSign(plan);
  return planCurves(plan).map((curve, edge) => {
    const { border, shape } = plan[edge] ?? {};
    const lengthFt = curveLength(curve);
    const length = lengthText(lengthFt);
    const text = border && border.what !== "open" && lengthFt * view.pxPerFt >= SHORT_PX ? `${length} · ${border.what}` : length;
    const { at, out } = curveMiddle(view, curve, outward);
    const half = text.length * LETTER_PX + 4;
    const off = OFF_PX + Math.abs(out[0]) * half;
    const wanted = at[0] + out[0] * off;
    const left = Math.min(Math.max(wanted, half), Math.max(half, widthPx - half));
    // Where the window's edge pushes a label back over its line, it leaves the middle to the handle there.
    const aside = Math.abs(left - wanted) > 8 ? BESIDE_HANDLE_PX : 0;
    const top = Math.min(Math.max(at[1] + out[1] * off + aside, 12), Math.max(12, heightPx - 12));
    return (
      <button
        key={`label-${edge}`}
        type="button"
        className="edge-label"
        aria-pressed={chosen === edge}
        aria-label={`Edge ${edgeName(plan, edge)}: ${length}, ${shape ? SHAPE_WORDS[shape.kind] : ""}, borders ${border ? BORDER_WORDS[border.what] : ""}. + adds a corner, arrows up and down bend it.`}
        style={{ left, top }}
        onClick={() => choose(edge)}
        onPointerDown={(event) => event.stopPropagation()}
        onKeyDown={(event) => {
          if (event.ctrlKey || event.metaKey || event.altKey || !onKey(edge, event)) return;
          event.preventDefault();
          event.stopPropagation();
        }}
      >
        {text}
      </button>
    );
  });
}
