import type { Bed } from "@/lib/ground/bed";
import { areaText } from "@/lib/ground/length";
import type { BedView } from "@/lib/papers/bed-view";
import { dayText } from "@/lib/season/sentence";
import { plantsText } from "./plan-words";
import { yearText } from "./time-sliders";

const percent = (share: number) => `${Math.round(share * 100)} %`;

/** What the drawing comes to, in one line. */
export function DrawingFacts({
  view,
  bed,
  year,
  day,
  crowds,
  outside,
  choose,
}: {
  view: BedView;
  bed: Bed;
  year: number;
  day: number;
  crowds: number;
  /** Plants that stand outside the bed. */
  outside: ReadonlySet<string>;
  choose: (ids: ReadonlySet<string>) => void;
}) {
  const placed = bed.drawing?.plants.length ?? 0;
  const listed = view.rows.reduce((sum, { quantity }) => sum + quantity, 0);
  const cover = view.ground.coverByYear[year]?.overall ?? 0;
  return (
    <ul className="facts drawing-facts">
      <li>
        <b>{areaText(view.areaSqFt)}</b>
      </li>
      <li>
        <b>{placed}</b> of {plantsText(listed)} placed
      </li>
      <li>
        cover <b>{view.rows.length ? percent(cover) : "–"}</b> at {yearText(year)}
        {view.groundBy === "area" && view.rows.length ? " (by count, until all are placed)" : ""}
      </li>
      <li>
        density <b>{view.rows.length ? view.ground.density : "–"}</b> of 10
      </li>
      {crowds ? (
        <li className="alert">
          <b>{crowds}</b> {crowds === 1 ? "place" : "places"} crowded by then
        </li>
      ) : null}
      {outside.size ? (
        <li className="alert">
          <b>{outside.size}</b> outside the bed{" "}
          <button type="button" className="plain screen-only" onClick={() => choose(outside)}>
            Choose {outside.size === 1 ? "it" : "them"}
          </button>
        </li>
      ) : null}
      <li className="soft">
        shown on {dayText(day)}: solid the crown {yearText(year)}, thin line when grown
      </li>
    </ul>
  );
}
