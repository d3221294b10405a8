"use client";

import { useState, useTransition } from "react";
import { isoDateText } from "@/lib/pulls/iso-date";
import { stageDateAction } from "./stage-actions";

/** The day of a stage and who said so; a press opens the day for correction. */
export function StageDate({ jobId, rowId, name, on, who, today }: { jobId: string; rowId: string; name: string; on: string; who: string; today: string }) {
  const [editing, setEditing] = useState(false);
  const [fault, setFault] = useState("");
  const [busy, start] = useTransition();
  const by = who || "nobody named";
  const keep = (day: string) => {
    if (day === on) return setEditing(false);
    start(async () => {
      const answer = await stageDateAction(jobId, rowId, day).catch(() => ({ kind: "fault" as const, message: "The program does not answer; the day is as it was." }));
      setFault(answer.kind === "fault" ? answer.message : "");
      if (answer.kind === "done") setEditing(false);
    });
  };
  if (!editing)
    return (
      <span className="stage-said">
        <button
          type="button"
          className="plain small"
          title={`${isoDateText(on)}, ${by}. Press to change the day.`}
          aria-label={`${name}: ${isoDateText(on)}, ${by}. Change the day`}
          onClick={() => setEditing(true)}
        >
          {isoDateText(on)}
        </button>
        <span className="stage-printed small">{isoDateText(on)}</span>
        {who ? <span className="soft small">{who}</span> : null}
      </span>
    );
  return (
    <form
      className="stage-said"
      onSubmit={(event) => {
        event.preventDefault();
        keep(String(new FormData(event.currentTarget).get("on")));
      }}
      onKeyDown={(event) => {
        if (event.key === "Escape") setEditing(false);
      }}
    >
      <input ref={(field) => field?.focus()} type="date" name="on" aria-label={`Day of ${name}`} defaultValue={on} max={today} required />
      <button type="submit" disabled={busy}>
        Keep
      </button>
      {fault ? (
        <span role="alert" className="alert small">
          {fault}
        </span>
      ) : null}
    </form>
  );
}
