"use client";

import type { PlacedPlant } from "@/lib/ground/bed-drawing";
import type { Point } from "@/lib/ground/outline";
import { TextField } from "../text-field";
import { ALIGNMENTS } from "./arrange";
import type { Figures } from "./plan-figure";
import { placeFieldText, placeRead, plantsText } from "./plan-words";
import type { PlanActions } from "./use-plan-actions";

/** What can be done with the plants that are chosen, and the exact place of one. */
export function ChosenPanel({ chosen, figures, corner, actions }: { chosen: readonly PlacedPlant[]; figures: Figures; corner: Point; actions: PlanActions }) {
  const names = [...new Set(chosen.map(({ rowId }) => figures.get(rowId)?.letter ?? "?"))].sort();
  const [one] = chosen;
  return (
    <section aria-labelledby="chosen-title" className="hold-panel chosen-panel screen-only">
      <h2 id="chosen-title">
        {plantsText(chosen.length)} chosen <span className="soft small">{names.join(", ")}</span>
      </h2>
      {chosen.length === 1 && one ? (
        <div className="fields">
          <div className="field">
            <span className="soft small">From the left</span>
            <TextField
              label="From the left of the bed"
              className="short"
              text={placeFieldText(one.at[0] - corner[0])}
              read={placeRead}
              keep={(x) => actions.putAt(one.id, [corner[0] + x, one.at[1]])}
            />
          </div>
          <div className="field">
            <span className="soft small">Up from the front</span>
            <TextField
              label="Up from the front of the bed"
              className="short"
              text={placeFieldText(one.at[1] - corner[1])}
              read={placeRead}
              keep={(y) => actions.putAt(one.id, [one.at[0], corner[1] + y])}
            />
          </div>
        </div>
      ) : null}
      <div className="row">
        <button type="button" onClick={actions.copy}>
          Copy
        </button>
        <button type="button" disabled={chosen.length < 2} onClick={() => actions.regroup(true)}>
          Group
        </button>
        <button type="button" disabled={chosen.length < 2} onClick={() => actions.regroup(false)}>
          Ungroup
        </button>
        <button type="button" onClick={actions.remove}>
          Take out
        </button>
        <button type="button" onClick={actions.none}>
          Choose none
        </button>
      </div>
      {chosen.length > 1 ? (
        <fieldset className="tools">
          <legend>Bring into line</legend>
          {ALIGNMENTS.map((alignment) => (
            <button key={alignment} type="button" onClick={() => actions.align(alignment)}>
              {alignment}
            </button>
          ))}
          <button type="button" disabled={chosen.length < 3} onClick={actions.space}>
            space evenly
          </button>
        </fieldset>
      ) : null}
    </section>
  );
}
