"use client";

import Link from "next/link";
import { useState, useTransition } from "react";
import { bedCreateAction, bedDeleteAction, bedMoveAction, bedRestoreAction } from "@/app/actions";
import { UndoToast } from "@/app/parts/undo-toast";
import type { HalfMonthInterest } from "@/lib/season/interest";
import { InterestChart } from "./beds/[bedId]/interest-chart";

export type BedCard = {
  readonly id: string;
  readonly name: string;
  readonly area: string;
  readonly plants: number;
  readonly kinds: number;
  readonly score: number | null;
  readonly bare: string;
  readonly fix: number;
  readonly consider: number;
  readonly halfMonths: readonly HalfMonthInterest[];
};

/** Beds of the job with their year; a deleted one can be brought back. */
export function BedList({ jobId, beds, freezeDays }: { jobId: string; beds: readonly BedCard[]; freezeDays: readonly (number | null)[] }) {
  const [busy, start] = useTransition();
  const [deleted, setDeleted] = useState<{ id: string; name: string } | null>(null);
  return (
    <>
      {beds.length ? (
        <ol className="card-list bed-cards">
          {beds.map((bed, i) => (
            <li key={bed.id}>
              <div className="bed-card">
                <div>
                  <div className="spread">
                    <Link className="job-name" href={`/jobs/${jobId}/beds/${bed.id}`}>
                      {i + 1} {bed.name}
                    </Link>
                    <span className="row small screen-only">
                      <button type="button" className="plain" disabled={busy || i === 0} onClick={() => start(() => bedMoveAction(bed.id, -1))} aria-label={`Move ${bed.name} up`}>
                        Up
                      </button>
                      <button
                        type="button"
                        className="plain"
                        disabled={busy || i === beds.length - 1}
                        onClick={() => start(() => bedMoveAction(bed.id, 1))}
                        aria-label={`Move ${bed.name} down`}
                      >
                        Down
                      </button>
                      <button
                        type="button"
                        className="plain"
                        disabled={busy}
                        aria-label={`Delete ${bed.name}`}
                        onClick={() =>
                          start(async () => {
                            await bedDeleteAction(bed.id);
                            setDeleted({ id: bed.id, name: bed.name });
                          })
                        }
                      >
                        Delete
                      </button>
                    </span>
                  </div>
                  <p className="soft">
                    {bed.area} · {bed.kinds ? `${bed.kinds} kinds, ${bed.plants} plants to pull` : "no plants yet"}
                    {bed.score === null ? "" : ` · year score ${bed.score}`}
                  </p>
                  {bed.fix + bed.consider ? (
                    <p>
                      {bed.fix ? <b className="alert">{bed.fix} to fix</b> : null}
                      {bed.fix && bed.consider ? " · " : ""}
                      {bed.consider ? `${bed.consider} to consider` : ""}
                    </p>
                  ) : null}
                  {bed.bare ? <p className="small">Bare: {bed.bare}.</p> : null}
                </div>
                {bed.kinds ? <InterestChart halfMonths={bed.halfMonths} freezeDays={freezeDays} /> : <p className="soft">Its year appears here.</p>}
              </div>
            </li>
          ))}
        </ol>
      ) : (
        <p>No beds yet. Add the first: its size, its light and soil, then its plants.</p>
      )}
      <button type="button" className="primary" disabled={busy} onClick={() => start(() => bedCreateAction(jobId))}>
        Add a bed
      </button>
      {deleted ? (
        <UndoToast
          words={`“${deleted.name}” deleted.`}
          undo={() =>
            start(async () => {
              await bedRestoreAction(deleted.id);
              setDeleted(null);
            })
          }
          close={() => setDeleted(null)}
        />
      ) : null}
    </>
  );
}
