"use client";

import Link from "next/link";
import { useTransition } from "react";
import { PrintButton } from "@/app/parts/print-button";
import { ownTaxonDeleteAction } from "../actions";

/** What can be done with the plant as a whole. */
export function OwnActions({ id, name, isOwn, placeKey, uses }: { id: string; name: string; isOwn: boolean; placeKey: string; uses: number }) {
  const [busy, start] = useTransition();
  const place = encodeURIComponent(placeKey);
  return (
    <div className="row screen-only plant-actions">
      <Link className="button" href={`/plants/new?like=${id}&place=${place}`}>
        A plant of your own like this
      </Link>
      {isOwn ? (
        <>
          <Link className="button" href={`/plants/${id}/edit`}>
            Edit
          </Link>
          <button type="button" disabled={busy} aria-label={`Delete ${name}`} onClick={() => start(() => ownTaxonDeleteAction(id))}>
            {busy ? "Deleting …" : "Delete"}
          </button>
          {uses ? (
            <span className="soft small">
              It is in {uses} {uses === 1 ? "bed" : "beds"}, which would keep its name but could no longer check it.
            </span>
          ) : null}
        </>
      ) : null}
      <PrintButton />
    </div>
  );
}
