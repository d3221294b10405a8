"use client";

import { useDeferredValue, useMemo } from "react";
import { YearStripSvg } from "@/app/parts/year-strip-svg";
import { yearStrip } from "@/lib/papers/year-strip";
import { MONTHS } from "@/lib/plants/thirds";
import { seasonSentence } from "@/lib/season/sentence";
import { SilhouetteFigure } from "../[id]/silhouette-figure";
import { draftSeason, draftSize, type OwnDraft } from "./own-draft";

/** The plant as the form has it so far: its year and its shape. */
export function OwnPreview({ draft: typed, placeLabel }: { draft: OwnDraft; placeLabel: string }) {
  const draft = useDeferredValue(typed);
  const season = useMemo(() => draftSeason(draft), [draft]);
  const size = draftSize(draft);
  const name = [draft.botanical, draft.cultivar ? `'${draft.cultivar}'` : ""].filter(Boolean).join(" ") || "The plant";
  return (
    <aside className="own-preview" aria-label="As it stands so far">
      <h2>So far</h2>
      <p className="soft small">The year at {placeLabel}.</p>
      <div className="month-foot" aria-hidden="true">
        {MONTHS.map((month) => (
          <span key={month}>{month.charAt(0)}</span>
        ))}
      </div>
      <YearStripSvg marks={yearStrip(season, { firstFreezeDay: null, lastFreezeDay: null })} sentence={seasonSentence(season)} idPrefix="own" freezeDays={[]} />
      {size ? (
        <SilhouetteFigure
          key={`${draft.kind}${draft.foliage}`}
          id="own"
          name={name}
          plant={{
            kind: draft.kind,
            habit: draft.habit,
            foliage: draft.foliage,
            family: draft.family ?? "",
            genus: draft.botanical.split(" ").find((w) => w !== "×") ?? "",
            ...size,
          }}
          season={season}
          sizeWords={`${draft.height.join(" to ")} high, ${draft.spread.join(" to ")} wide`}
        />
      ) : (
        <p className="soft small">Height and spread, and it is drawn here.</p>
      )}
    </aside>
  );
}
