"use client";

import Link from "next/link";
import { useTransition } from "react";
import { ownTaxonRestoreAction } from "../actions";

/** In the place of a plant of one's own that was deleted: the way back. */
export function DeletedPlant({ id, name }: { id: string; name: string }) {
  const [busy, start] = useTransition();
  return (
    <main id="main" className="sheet plants">
      <div className="sheet-head">
        <h1>Deleted</h1>
      </div>
      <p role="status">“{name}” was deleted. Beds that hold it keep its name; it is no longer found or checked.</p>
      <div className="row">
        <button type="button" className="primary" disabled={busy} onClick={() => start(() => ownTaxonRestoreAction(id))}>
          {busy ? "Bringing it back …" : "Undo"}
        </button>
        <Link className="button" href="/plants">
          All plants
        </Link>
      </div>
    </main>
  );
}
