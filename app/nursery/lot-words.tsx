"use client";

import type { LotSave } from "./use-lot-save";

/** What the last change of a lot met, with the way on where a count goes below what is promised. */
export function LotWords({ words, anyway }: Pick<LotSave, "words" | "anyway">) {
  if (!words) return null;
  return (
    <div role="alert" className="small lot-words">
      <p className={anyway ? "alert" : words.startsWith("Written.") ? undefined : "alert"}>{words}</p>
      {anyway ? (
        <p className="row">
          <button type="button" onClick={anyway.take}>
            Count {anyway.count.toLocaleString("en-US")} anyway
          </button>
          <button type="button" className="plain" onClick={anyway.leave}>
            Leave it as it was
          </button>
          <span className="soft">Counting anyway lets the newest promises go; those jobs then show what is short.</span>
        </p>
      ) : null}
    </div>
  );
}
