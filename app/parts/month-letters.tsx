import { MONTHS } from "@/lib/plants/thirds";

/** J F M … under or over the strips; readers of the strips hear the dates instead. */
export function MonthLetters() {
  return (
    <div className="month-foot" aria-hidden="true">
      {MONTHS.map((month) => (
        <span key={month}>{month.charAt(0)}</span>
      ))}
    </div>
  );
}
