import type { TaxonSeason } from "@/lib/season/window";
import { leavesLine, windowLine } from "@/lib/season/window-line";

/** Every window of a plant at its place: begin, best, end, how sure, and what decides the date. */
export function WindowList({ season }: { season: TaxonSeason }) {
  const leaves = leavesLine(season);
  return (
    <ul className="small soft">
      {season.windows.map((w) => {
        const line = windowLine(w);
        return <li key={line}>{line}.</li>;
      })}
      {leaves ? <li>{leaves}.</li> : null}
      {season.basisNote ? <li>{season.basisNote}</li> : null}
    </ul>
  );
}
