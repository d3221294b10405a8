"use client";

import Link from "next/link";
import { useId, useState, useTransition } from "react";
import { type JobStage, STAGE_WORDS, type StageOffer } from "@/lib/pulls/job-stage";
import { stageSetAction } from "./stage-actions";

type Props = {
  readonly jobId: string;
  readonly today: string;
  readonly offers: readonly StageOffer[];
  /** Stages that it may go back to. */
  readonly back: readonly JobStage[];
  readonly wanted: number;
  readonly promised: number;
  readonly pulled: number;
  readonly lastNote: string;
};

const count = (n: number) => n.toLocaleString("en-US");

/** The next stage with its day, and the way back with its reason. */
export function StageSteps({ jobId, today, offers, back, wanted, promised, pulled, lastNote }: Props) {
  const id = useId();
  const [on, setOn] = useState(today);
  const [words, setWords] = useState<{ alert: boolean; text: string } | null>(null);
  const [busy, start] = useTransition();
  const say = (to: JobStage, day: string, note: string) =>
    start(async () => {
      const answer = await stageSetAction({ jobId, to, on: day, note }).catch(() => ({ kind: "fault" as const, message: "The program does not answer; the stage is as it was." }));
      setWords(answer.kind === "fault" ? { alert: true, text: answer.message } : { alert: false, text: `${STAGE_WORDS[to].name}.` });
    });
  const [offer] = offers;
  return (
    <div className="stage-acts small">
      <p className="stage-count soft">
        {count(promised)} of {count(wanted)} plants reserved, {count(pulled)} pulled. <Link href={`/jobs/${jobId}/stock`}>Plants for this job</Link>
        {lastNote ? ` · ${lastNote}` : ""}
      </p>
      <div className="row screen-only">
        {offer ? (
          <>
            <label htmlFor={`${id}-on`} className="visually-hidden">
              Day of the next stage
            </label>
            <input id={`${id}-on`} type="date" value={on} max={today} onChange={(event) => setOn(event.target.value)} />
            <button
              type="button"
              className={offer.ready ? "primary" : undefined}
              disabled={busy}
              aria-describedby={offer.warning ? `${id}-warning` : undefined}
              onClick={() => say(offer.stage, on, "")}
            >
              {STAGE_WORDS[offer.stage].step}
            </button>
            {offer.warning ? <span id={`${id}-warning`}>{offer.warning}</span> : null}
          </>
        ) : null}
        {back.length ? (
          <details key={back.at(-1)} className="stage-back">
            <summary>Go back</summary>
            <form
              className="row"
              onSubmit={(event) => {
                event.preventDefault();
                const form = new FormData(event.currentTarget);
                const to = back.find((stage) => stage === form.get("to"));
                if (to) say(to, today, String(form.get("note")));
              }}
            >
              <select name="to" aria-label="Back to" defaultValue={back.at(-1)}>
                {back.map((stage) => (
                  <option key={stage} value={stage}>
                    {STAGE_WORDS[stage].name}
                  </option>
                ))}
              </select>
              <input name="note" aria-label="Why it goes back" placeholder="why: client put it off to spring" maxLength={300} size={32} />
              <button type="submit" disabled={busy}>
                Go back
              </button>
            </form>
          </details>
        ) : null}
      </div>
      <p role={words?.alert ? "alert" : "status"} className={words?.alert ? "alert" : "soft"}>
        {words?.text ?? ""}
      </p>
    </div>
  );
}
