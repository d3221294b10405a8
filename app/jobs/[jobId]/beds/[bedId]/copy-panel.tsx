"use client";

import { useEffect, useRef, useState } from "react";
import type { BedRow } from "@/lib/ground/bed";
import type { PlacedTaxon } from "@/lib/papers/bed-view";
import { placedTaxaAction } from "./actions";

export type OtherBed = { readonly id: string; readonly label: string; readonly rows: readonly BedRow[] };

/** Copies chosen plants of another bed of the job, with quantity, size, spacing and remarks. */
export function CopyPanel({
  others,
  copy,
  close,
}: {
  others: readonly OtherBed[];
  copy: (rows: readonly BedRow[], taxa: Readonly<Record<string, PlacedTaxon>>) => void;
  close: () => void;
}) {
  const dialog = useRef<HTMLDialogElement>(null);
  const [from, setFrom] = useState(others[0]?.id ?? "");
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  useEffect(() => dialog.current?.showModal(), []);
  const bed = others.find((o) => o.id === from);
  const chosen = bed?.rows.filter((row) => !left.has(row.id)) ?? [];
  return (
    <dialog ref={dialog} onClose={close} aria-labelledby="copy-title">
      <h2 id="copy-title">Copy from another bed</h2>
      <label className="field">
        Bed
        <select value={from} onChange={(event) => setFrom(event.target.value)}>
          {others.map((o) => (
            <option key={o.id} value={o.id}>
              {o.label}
            </option>
          ))}
        </select>
      </label>
      {bed?.rows.length ? (
        <ul className="card-list">
          {bed.rows.map((row) => (
            <li key={row.id}>
              <label className="check">
                <input
                  type="checkbox"
                  checked={!left.has(row.id)}
                  onChange={(event) => {
                    const next = new Set(left);
                    if (event.target.checked) next.delete(row.id);
                    else next.add(row.id);
                    setLeft(next);
                  }}
                />
                {row.taxonName} {row.size}
              </label>
            </li>
          ))}
        </ul>
      ) : (
        <p>That bed has no plants.</p>
      )}
      <div className="row">
        <button
          type="button"
          className="primary"
          disabled={!chosen.length}
          onClick={async () => {
            copy(chosen, await placedTaxaAction(from));
            dialog.current?.close();
          }}
        >
          Copy {chosen.length} {chosen.length === 1 ? "plant" : "plants"}
        </button>
        <button type="button" onClick={() => dialog.current?.close()}>
          Cancel
        </button>
      </div>
    </dialog>
  );
}
