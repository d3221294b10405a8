"use client";

import type { CorrectionNote } from "@/lib/papers/plant-facts";
import { useCorrection } from "./correction-provider";

/** Under a corrected value: what the dataset says, the note, and the way back. */
export function CorrectionLine({ correction, label }: { correction: CorrectionNote; label: string }) {
  const { takeBack, busy } = useCorrection();
  return (
    <span className="correction-line">
      corrected here; the dataset says {correction.original}
      {correction.note ? <q>{correction.note}</q> : null}{" "}
      <button
        type="button"
        className="plain screen-only"
        disabled={busy}
        aria-label={`Take back the correction of ${label.toLowerCase()}`}
        onClick={() => takeBack(correction.id, label)}
      >
        Take back
      </button>
    </span>
  );
}
