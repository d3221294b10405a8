"use client";

import Link from "next/link";
import { useState, useTransition } from "react";
import { jobArchiveAction, jobDeleteAction, jobDuplicateAction, jobRestoreAction } from "../actions";
import { UndoToast } from "./undo-toast";

export type JobCard = {
  readonly id: string;
  readonly name: string;
  readonly client: string;
  readonly place: string;
  readonly beds: number;
  readonly changed: string;
  readonly archived: boolean;
  readonly demo: boolean;
};

function JobLine({ job, busy, duplicate, archive, remove }: { job: JobCard; busy: boolean; duplicate: () => void; archive: () => void; remove: () => void }) {
  return (
    <li>
      <div className="spread">
        <span>
          <Link className="job-name" href={`/jobs/${job.id}`}>
            {job.name}
          </Link>
          {job.demo ? <span className="soft small"> · demo, may be deleted</span> : null}
        </span>
        <span className="row small">
          <button type="button" className="plain" disabled={busy} onClick={duplicate} aria-label={`Duplicate ${job.name}`}>
            Duplicate
          </button>
          <button type="button" className="plain" disabled={busy} onClick={archive} aria-label={`${job.archived ? "Take back" : "Archive"} ${job.name}`}>
            {job.archived ? "Take back" : "Archive"}
          </button>
          <button type="button" className="plain" disabled={busy} onClick={remove} aria-label={`Delete ${job.name}`}>
            Delete
          </button>
        </span>
      </div>
      <div className="soft small">{[job.client, job.place, `${job.beds} ${job.beds === 1 ? "bed" : "beds"}`, `changed ${job.changed}`].filter(Boolean).join(" · ")}</div>
    </li>
  );
}

/** Jobs at work, then the archived; a deleted one can be brought back. */
export function JobList({ jobs }: { jobs: readonly JobCard[] }) {
  const [busy, start] = useTransition();
  const [deleted, setDeleted] = useState<{ id: string; name: string } | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const line = (job: JobCard) => (
    <JobLine
      key={job.id}
      job={job}
      busy={busy}
      duplicate={() => start(() => jobDuplicateAction(job.id))}
      archive={() => start(() => jobArchiveAction(job.id, !job.archived))}
      remove={() =>
        start(async () => {
          const why = await jobDeleteAction(job.id);
          setRefused(why && `${job.name}: ${why}`);
          if (why === null) setDeleted({ id: job.id, name: job.name });
        })
      }
    />
  );
  const atWork = jobs.filter((j) => !j.archived);
  const archived = jobs.filter((j) => j.archived);
  return (
    <>
      {refused ? (
        <p role="alert" className="notice alert">
          {refused}
        </p>
      ) : null}
      {atWork.length ? <ul className="card-list">{atWork.map(line)}</ul> : <p>No jobs yet. Name the first one and give the ZIP code of its site; then add a bed and its plants.</p>}
      {archived.length ? (
        <details>
          <summary>Archived ({archived.length})</summary>
          <ul className="card-list">{archived.map(line)}</ul>
        </details>
      ) : null}
      {deleted ? (
        <UndoToast
          words={`“${deleted.name}” deleted.`}
          undo={() =>
            start(async () => {
              await jobRestoreAction(deleted.id);
              setDeleted(null);
            })
          }
          close={() => setDeleted(null)}
        />
      ) : null}
    </>
  );
}
