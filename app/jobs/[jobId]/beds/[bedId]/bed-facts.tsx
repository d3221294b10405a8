import Link from "next/link";
import type { Bed } from "@/lib/ground/bed";
import { areaText } from "@/lib/ground/length";
import type { BedView, ViewPlace } from "@/lib/papers/bed-view";
import { dayText } from "@/lib/season/sentence";

/** The place as the sheet shows it. */
export type SheetPlace = ViewPlace & {
  readonly label: string;
  readonly zoneWords: string;
  /** False: no climate is known, the reference climate's year is shown. */
  readonly dated: boolean;
  readonly fault: string | null;
  readonly settingWords: readonly string[];
};

/** The line of facts under the bed's name, and what is missing to date it. */
export function BedFacts({ jobId, bed, view, place }: { jobId: string; bed: Bed; view: BedView; place: SheetPlace }) {
  return (
    <>
      <ul className="facts">
        <li>
          <Link href={`/jobs/${jobId}/place`}>
            <b>{place.label}</b>
          </Link>
        </li>
        <li>
          {place.zoneWords.startsWith("zone") ? "zone " : ""}
          <b>{place.zoneWords.replace(/^zone /, "")}</b>
        </li>
        {place.settingWords.map((words) => (
          <li key={words}>
            <Link href={`/jobs/${jobId}/place`}>{words}</Link>
          </li>
        ))}
        {place.lastFreezeDay !== null && place.firstFreezeDay !== null && place.dated ? (
          <li>
            freeze <b>{dayText(place.lastFreezeDay)}</b> · <b>{dayText(place.firstFreezeDay)}</b>
          </li>
        ) : null}
        <li>
          <b>{areaText(view.areaSqFt)}</b>
          {bed.site.faces ? `, faces ${bed.site.faces}` : ""}
        </li>
        <li title={`${view.ground.densityRaw.toFixed(1)}; 5 is set at mature spread`}>
          density <b>{view.rows.length ? view.ground.density : "–"}</b> of 10
        </li>
        <li>
          year score <b>{view.rows.length ? Math.round(view.season.score * 100) : "–"}</b>
        </li>
      </ul>
      {place.dated ? null : (
        <p className="notice alert">
          {place.fault ?? "This place has no climate."} Until then the year shown is that of the reference climate, Wooster, Ohio.{" "}
          <Link href={`/jobs/${jobId}/place`}>Set the place</Link>
        </p>
      )}
    </>
  );
}
