import type { HalfMonthInterest, Targets } from "@/lib/season/interest";
import { InterestTable } from "./interest-chart";

/** The year in numbers, where the targets come from, and the usual cautions. */
export function YearFigures({ halfMonths, targets }: { halfMonths: readonly HalfMonthInterest[]; targets: Targets }) {
  return (
    <>
      <details className="figures-detail">
        <summary>The year in figures</summary>
        <InterestTable halfMonths={halfMonths} />
        <p className="soft small">
          Growing-season target {Math.round(targets.growing * 100)} % in flower or colored foliage (the flower cover above which preference was highest in Hoyle, Hitchmough and
          Jorgensen 2017, Landscape and Urban Planning 164); winter {Math.round(targets.winter * 100)} % (common practice, no source). Green and evergreen backgrounds show pale in
          the growing season: they do not count toward it.
        </p>
      </details>
      <p className="cautions small">
        Before anyone digs: call 811 and have buried lines marked. Keep trees clear of overhead lines and sight triangles as the local code says. Poisonous and thorny plants are
        noted above; tell the client. Lift with two above 50 lb and with a machine above 100 lb. Check the state's list of regulated plants.
      </p>
    </>
  );
}
