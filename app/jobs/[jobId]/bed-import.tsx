"use client";

import { useActionState } from "react";
import { bedImportAction } from "@/app/actions";

/** Takes a bed file in: whole, or with the field that is wrong. */
export function BedImport({ jobId }: { jobId: string }) {
  const [fault, submit, busy] = useActionState(bedImportAction.bind(null, jobId), null);
  return (
    <details className="screen-only">
      <summary>Take in a bed file</summary>
      <form action={submit} className="row">
        <input type="file" name="file" accept=".json,application/json" aria-label="Bed file" />
        <button type="submit" disabled={busy}>
          {busy ? "Reading …" : "Take it in"}
        </button>
        <span role="alert" className="alert small">
          {fault?.message}
        </span>
      </form>
    </details>
  );
}
