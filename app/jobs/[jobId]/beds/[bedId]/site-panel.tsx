"use client";

import { useState } from "react";
import type { Bed } from "@/lib/ground/bed";
import type { BedCommand } from "./bed-draft";
import { textRead } from "./field-readers";
import { SiteForm } from "./site-form";
import { SizeForm } from "./size-form";
import { TextField } from "./text-field";

const LIGHT = { sun: "Full sun", part: "Part shade", shade: "Shade" } as const;

/** Size, site and notes of the bed: a panel to change them, and the words that print. */
export function SitePanel({ bed, send, path }: { bed: Bed; send: (command: BedCommand) => void; path: string }) {
  // A new bed shows the panel; after that it stays as the person leaves it.
  const [isNew] = useState(bed.rows.length === 0);
  return (
    <>
      <details className="site screen-only" open={isNew}>
        <summary>Size and site</summary>
        <SizeForm size={bed.size} change={(size) => send({ type: "size", size })} drawingPath={`${path}/drawing`} />
        <SiteForm site={bed.site} change={(site) => send({ type: "site", site })} />
        <div className="field notes-field">
          <span className="soft small">Notes on the bed</span>
          <TextField
            label="Notes on the bed"
            text={bed.notes}
            read={textRead(5000)}
            keep={(notes) => send({ type: "notes", notes })}
            placeholder="what it borders, where it is seen from, what stays"
          />
        </div>
      </details>
      <p className="site-words">
        {LIGHT[bed.site.light]}, {bed.site.moisture} soil{bed.site.ph === null ? ", pH not tested" : `, pH ${bed.site.ph}`}; road salt: {bed.site.salt}; deer: {bed.site.deer}.
        {bed.notes ? ` ${bed.notes}` : ""}
      </p>
    </>
  );
}
