"use client";

import Link from "next/link";
import type { PlantHit } from "@/app/api/plants/route";
import { MonthLetters } from "@/app/parts/month-letters";
import type { BedView } from "@/lib/papers/bed-view";
import { halfMonthRuns } from "@/lib/season/half-months";
import type { Targets } from "@/lib/season/interest";
import { InterestChart } from "./interest-chart";
import { PlantAdd } from "./plant-add";

const YEARS = [0, 1, 2, 3, 5, 10, 15, 20];
const yearWords = (year: number) => (year === 0 ? "at hand-over" : `year ${year}`);

/** Foot of the list: the next plant, the bed's interest under the strips, and where to go from here. */
export function YearFoot({
  jobId,
  path,
  view,
  targets,
  freezeDays,
  year,
  setYear,
  hasOthers,
  showFill,
  showCopy,
  addHit,
}: {
  jobId: string;
  path: string;
  view: BedView;
  targets: Targets;
  freezeDays: readonly (number | null)[];
  year: number;
  setYear: (year: number) => void;
  hasOthers: boolean;
  showFill: (halfMonths: readonly number[]) => void;
  showCopy: () => void;
  addHit: (hit: PlantHit) => void;
}) {
  const bare = view.season.gaps.map((gap) => gap.index);
  const total = view.rows.reduce((sum, r) => sum + (r.row.existing ? 0 : r.quantity), 0);
  const bedId = path.split("/").at(-1);
  return (
    <tfoot>
      <tr className="foot-row">
        <td colSpan={6}>
          <PlantAdd jobId={jobId} freezeDays={freezeDays} add={addHit} />
          <div className="foot-words">
            <p>
              <label className="inline-label">
                Interest of the bed,{" "}
                <select className="screen-only" value={year} onChange={(event) => setYear(Number(event.target.value))} aria-label="Years after planting">
                  {YEARS.map((y) => (
                    <option key={y} value={y}>
                      {yearWords(y)}
                    </option>
                  ))}
                </select>
              </label>
              <span className="print-only">{yearWords(year)}</span>, against its target.
            </p>
            {view.rows.length ? (
              <p>
                {bare.length ? (
                  <>
                    <b className="alert">Bare: {halfMonthRuns(bare).join("; ")}.</b>{" "}
                    <button type="button" className="plain" onClick={() => showFill(bare)}>
                      See what would fill it here
                    </button>
                  </>
                ) : (
                  <b>No half-month is bare.</b>
                )}
              </p>
            ) : null}
            <p className="row screen-only">
              {hasOthers ? (
                <button type="button" onClick={showCopy}>
                  Copy from another bed
                </button>
              ) : null}
              <Link className="button" href={`/jobs/${jobId}/pull?bed=${bedId}`}>
                Pull list ({total.toLocaleString("en-US")} plants)
              </Link>
              <a className="button" href={`${path}/file`}>
                Save as a bed file
              </a>
              <Link className="button" href={`${path}/compare`}>
                Compare with another place
              </Link>
            </p>
          </div>
        </td>
        <td className="year-cell">
          <InterestChart halfMonths={view.season.halfMonths} freezeDays={freezeDays} targets={targets} />
          <MonthLetters />
        </td>
      </tr>
    </tfoot>
  );
}
