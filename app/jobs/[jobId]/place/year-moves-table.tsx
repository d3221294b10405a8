import { dayText } from "@/lib/season/sentence";
import type { YearMoves } from "@/lib/season/year-moves";

/** What the spring and a warmer climate do to the year here, a date a cell. */
export function YearMovesTable({ moves }: { moves: YearMoves }) {
  return (
    <section aria-labelledby="moves-title">
      <div className="section-head">
        <h2 id="moves-title">How the year moves here</h2>
        <span className="soft small">at the spot chosen above; one spring in six is milder than the mild one, one harder than the hard one; then a climate 2 and 4 °F warmer</span>
      </div>
      <table className="year-moves">
        <thead>
          <tr>
            <th scope="col">
              <span className="visually-hidden">Event</span>
            </th>
            {moves.columns.map((column) => (
              <th key={column} scope="col" className="number">
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {moves.rows.map((row) => (
            <tr key={row.label}>
              <th scope="row">{row.label}</th>
              {row.days.map((day, i) => (
                <td key={moves.columns[i]} className="number">
                  {day === null ? "none" : dayText(day)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
