"use client";

import { useState } from "react";
import { lengthText } from "@/lib/ground/length";
import { planBounds, planShifted } from "@/lib/ground/plan-edit";
import type { PlanOutline } from "@/lib/ground/plan-outline";
import { PLAN_STARTS, type PlanStart, planStarted } from "@/lib/ground/plan-start";
import { TextField } from "../../text-field";
import { lengthRead } from "./outline-readers";
import type { OutlineEdit } from "./use-outline-edit";

const START_WORDS: Readonly<Record<PlanStart, string>> = { rectangle: "rectangle", "L-shape": "L-shape", kidney: "kidney (curved)" };

/** To the quarter inch, as a tape is read. */
const taped = (feet: number) => Math.round(feet * 48) / 48;

/** A new outline that begins at 0, 0 put where the old one lies: at its lower left corner, to the hundredth of a foot so that nothing drifts. */
export function planLaidOver(next: PlanOutline, old: PlanOutline): PlanOutline {
  const low = planBounds(old)?.low ?? [0, 0];
  return planShifted(next, [Math.round(low[0] * 100) / 100, Math.round(low[1] * 100) / 100]);
}

/** Begins the outline anew from a simple shape of a given length and width. */
export function StartOver({ edit }: { edit: OutlineEdit }) {
  const { low, high } = planBounds(edit.plan) ?? { low: [0, 0], high: [0, 0] };
  const [start, setStart] = useState<PlanStart>("rectangle");
  const [typed, setTyped] = useState<{ lengthFt: number; widthFt: number } | null>(null);
  const { lengthFt, widthFt } = typed ?? { lengthFt: Math.max(1, taped(high[0] - low[0])), widthFt: Math.max(1, taped(high[1] - low[1])) };
  return (
    <details className="outline-section">
      <summary>Start over from a shape</summary>
      <div className="fields">
        <label className="field">
          Shape
          <select aria-label="Shape of the new outline" value={start} onChange={(event) => setStart(PLAN_STARTS.find((s) => s === event.target.value) ?? "rectangle")}>
            {PLAN_STARTS.map((s) => (
              <option key={s} value={s}>
                {START_WORDS[s]}
              </option>
            ))}
          </select>
        </label>
        <div className="field">
          <span className="soft small">Length</span>
          <TextField
            label="Length of the new outline"
            className="short"
            text={lengthText(lengthFt)}
            read={lengthRead(2000)}
            keep={(feet) => setTyped({ lengthFt: feet, widthFt })}
          />
        </div>
        <div className="field">
          <span className="soft small">Width</span>
          <TextField label="Width of the new outline" className="short" text={lengthText(widthFt)} read={lengthRead(2000)} keep={(feet) => setTyped({ lengthFt, widthFt: feet })} />
        </div>
        <button
          type="button"
          onClick={() => {
            edit.keepPlan(planLaidOver(planStarted(start, lengthFt, widthFt), edit.plan), `The outline is a ${start} now. Undo brings the old one back.`);
            setTyped(null);
          }}
        >
          Start over
        </button>
      </div>
      <p className="small soft">The old outline and its borders go; Undo brings them back. Plants and things stay where they are.</p>
    </details>
  );
}
