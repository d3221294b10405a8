"use client";

import { useId, useOptimistic, useState, useTransition } from "react";
import type { JobRules } from "@/lib/pulls/stock-group";
import { jobRulesAction } from "../stage-actions";

/** The planting date and the sizes that the job allows: both decide which lots serve. */
export function RulesForm({ jobId, rules }: { jobId: string; rules: JobRules }) {
  const id = useId();
  const [words, setWords] = useState("");
  const [busy, start] = useTransition();
  // The box shows what was pressed while the server works on it.
  const [oneStep, setOneStep] = useOptimistic(rules.stepsAllowed === 1);
  const keep = (change: Partial<JobRules>) =>
    start(async () => {
      if (change.stepsAllowed !== undefined) setOneStep(change.stepsAllowed === 1);
      const answer = await jobRulesAction(jobId, change).catch(() => ({ kind: "fault" as const, message: "Not saved: the program does not answer." }));
      setWords(answer.kind === "fault" ? answer.message : "Saved; the lots below follow it.");
    });
  return (
    <div className="row rules-form screen-only" aria-busy={busy}>
      <label htmlFor={`${id}-on`}>Planting begins</label>
      <input
        id={`${id}-on`}
        type="date"
        key={rules.plantingOn}
        defaultValue={rules.plantingOn ?? ""}
        onBlur={(event) => {
          const day = event.target.value || null;
          if (day !== rules.plantingOn) keep({ plantingOn: day });
        }}
        onKeyDown={(event) => {
          if (event.key === "Enter") event.currentTarget.blur();
        }}
      />
      <label className="check">
        <input type="checkbox" checked={oneStep} onChange={(event) => keep({ stepsAllowed: event.target.checked ? 1 : 0 })} /> Sizes may be one step up or down
      </label>
      <span role="status" className="soft small">
        {words}
      </span>
    </div>
  );
}
