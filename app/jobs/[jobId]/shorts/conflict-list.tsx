"use client";

import { useTransition } from "react";
import type { LineProgress } from "@/lib/pulls/pull-progress";
import { conflictSettleAction } from "./actions";

type Conflict = { readonly lineId: string; readonly name: string; readonly bedName: string; readonly wanted: number; readonly progress: LineProgress };

/** Lines on which two people worked without knowing of each other: both numbers are kept, somebody has to look. */
export function ConflictList({ jobId, conflicts }: { jobId: string; conflicts: readonly Conflict[] }) {
  const [busy, start] = useTransition();
  if (conflicts.length === 0) return null;
  return (
    <section aria-labelledby="conflicts-title">
      <h2 id="conflicts-title">Two people on one line</h2>
      <ul className="conflict-lines">
        {conflicts.map(({ lineId, name, bedName, wanted, progress }) => (
          <li key={lineId} className="spread">
            <span>
              <b>{name}</b>, {bedName}: {wanted} wanted; recorded {progress.pulled} pulled, {progress.short} short, {progress.damaged} damaged, {progress.swapped} swapped. Count
              what lies on the truck; a number is put right on the phone with “Take back”.
            </span>
            <button type="button" disabled={busy} onClick={() => start(() => conflictSettleAction(jobId, lineId))}>
              It is right
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
