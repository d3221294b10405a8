"use client";

import { useCorrection } from "./correction-provider";

/** Opens the correction of one value. */
export function CorrectButton({ field, label }: { field: string; label: string }) {
  const { open } = useCorrection();
  return (
    <button type="button" className="plain correct-button" aria-label={`Correct ${label.toLowerCase()} for your region`} onClick={() => open(field, label)}>
      Correct
    </button>
  );
}
