import { BotanicalText } from "@/app/parts/botanical-text";
import { YearStripSvg } from "@/app/parts/year-strip-svg";
import type { Finding } from "@/lib/findings/finding";
import type { BedComparison, ComparedSide } from "@/lib/papers/bed-compare";
import { zoneText } from "@/lib/place/zone";
import { MONTHS } from "@/lib/plants/thirds";
import { halfMonthRuns } from "@/lib/season/half-months";
import type { Targets } from "@/lib/season/interest";
import { dayText } from "@/lib/season/sentence";
import { SeverityDot } from "../finding-mark";
import { InterestChart } from "../interest-chart";

const freezeDays = ({ place }: ComparedSide) => [place.lastFreezeDay, place.firstFreezeDay];
const freezeWords = ([last, first]: readonly (number | null)[]) => (last == null || first == null ? "no freeze dates" : `freezes ${dayText(last)} · ${dayText(first)}`);
const hardinessOf = ({ view }: ComparedSide): readonly Finding[] => view.findings.filter((f) => f.check === "hardiness");

function Months() {
  return (
    <div className="month-foot" aria-hidden="true">
      {MONTHS.map((month) => (
        <span key={month}>{month.charAt(0)}</span>
      ))}
    </div>
  );
}

/** Zone, freezes, score and bare times of one place. */
function SideFacts({ side, which }: { side: ComparedSide; which: string }) {
  const { view, place } = side;
  const bare = halfMonthRuns(view.season.gaps.map((g) => g.index));
  const hardiness = hardinessOf(side);
  return (
    <div>
      <h3>
        {which}: {side.label}
      </h3>
      <p>
        zone <b>{place.zone === null ? "not set" : zoneText(place.zone)}</b>, {freezeWords(freezeDays(side))}, year score <b>{Math.round(view.season.score * 100)}</b>
        {side.hardyScore < view.season.score - 0.005 ? `, ${Math.round(side.hardyScore * 100)} without what is lost` : ""}
      </p>
      <p>{bare.length ? `Bare: ${bare.join("; ")}.` : "No half-month is bare."}</p>
      {hardiness.length ? (
        <ul className="findings">
          {hardiness.map((f) => (
            <li key={`${f.rowId}${f.message}`}>
              <SeverityDot severity={f.severity} />
              <span>
                {f.plant ? `${f.plant} ` : ""}
                {f.message}
              </span>
            </li>
          ))}
        </ul>
      ) : (
        <p className="soft">Every plant is hardy.</p>
      )}
    </div>
  );
}

/** Every plant's year at both places, one above the other, then the bed's interest at both. */
export function ComparedYears({ here, there, comparison, targets }: { here: ComparedSide; there: ComparedSide; comparison: BedComparison; targets: Targets }) {
  return (
    <>
      <table className="compared">
        <caption className="visually-hidden">
          Each plant's year at {here.label}, and below it at {there.label}
        </caption>
        <thead>
          <tr>
            <th scope="col">Plant</th>
            <th scope="col">
              <span className="visually-hidden">Place</span>
            </th>
            <th scope="col" className="year-cell">
              <span className="visually-hidden">The year, January to December</span>
              <Months />
            </th>
          </tr>
        </thead>
        {comparison.rows.map(({ here: a, there: b, shiftWords }) => (
          <tbody key={a.row.id}>
            <tr>
              <th scope="rowgroup" rowSpan={2} className="name-cell">
                {a.letter} {a.placed ? <BotanicalText taxon={a.placed.taxon} /> : <span className="botanical">{a.row.taxonName}</span>}
                <span className="common second-line">{shiftWords || (a.placed?.taxon.commonNames[0] ?? "")}</span>
              </th>
              <td className="which">here</td>
              <td className="year-cell">
                <YearStripSvg marks={a.marks} sentence={a.sentence} idPrefix={`a-${a.row.id}`} freezeDays={freezeDays(here)} />
              </td>
            </tr>
            <tr>
              <td className="which">there</td>
              <td className="year-cell">
                <YearStripSvg marks={b.marks} sentence={b.sentence} idPrefix={`b-${b.row.id}`} freezeDays={freezeDays(there)} />
              </td>
            </tr>
          </tbody>
        ))}
        <tbody>
          {[["here", here] as const, ["there", there] as const].map(([which, side]) => (
            <tr key={which}>
              <th scope="row">Interest of the bed {which}</th>
              <td className="which">{which}</td>
              <td className="year-cell">
                <InterestChart halfMonths={side.view.season.halfMonths} freezeDays={freezeDays(side)} targets={targets} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className="split">
        <SideFacts side={here} which="Here" />
        <SideFacts side={there} which="There" />
      </div>
    </>
  );
}
