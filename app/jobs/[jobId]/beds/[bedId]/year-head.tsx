import { MonthLetters } from "@/app/parts/month-letters";
import type { Severity } from "@/lib/findings/finding";
import { dayText } from "@/lib/season/sentence";

/** Head of the list: columns, and the months over the strips with the freeze dates named. */
export function YearHead({ counts, freezeDays, today }: { counts: Readonly<Record<Severity, number>>; freezeDays: readonly (number | null)[]; today: number | null }) {
  const left = (day: number) => ({ left: `${((100 * day) / 365).toFixed(2)}%` });
  const [last, first] = freezeDays;
  const marked = counts.fix + counts.consider;
  return (
    <thead>
      <tr>
        <th scope="col" className="margin-cell" title={`${marked} to look at`}>
          <span className="visually-hidden">Findings</span>
          {marked || ""}
        </th>
        <th scope="col" className="letter-cell">
          <span className="visually-hidden">Letter</span>
        </th>
        <th scope="col">Plant</th>
        <th scope="col" className="number">
          Qty
        </th>
        <th scope="col">Size</th>
        <th scope="col" className="number">
          On center
        </th>
        <th scope="col" className="year-cell">
          <span className="visually-hidden">The year, January to December</span>
          <div className="year-head" aria-hidden="true">
            <div className="freeze-line">
              {last == null ? null : (
                <span style={left(last)} title={dayText(last)}>
                  last freeze
                </span>
              )}
              {first == null ? null : (
                <span style={left(first)} title={dayText(first)}>
                  first freeze
                </span>
              )}
              {today == null ? null : (
                <span className="today" style={left(today)}>
                  today
                </span>
              )}
            </div>
            <MonthLetters />
          </div>
        </th>
      </tr>
    </thead>
  );
}
