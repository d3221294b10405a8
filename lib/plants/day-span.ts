// Spans of days of year, which may run over New Year.
import { MONTH_STARTS } from "./thirds";

export type DaySpan = readonly [startDay: number, endDay: number];

/** From the first day of one month to the last of another, 1–12. */
export const monthSpan = (from: number, to: number): DaySpan => [(MONTH_STARTS[from - 1] ?? 0) + 1, MONTH_STARTS[to] ?? 365];

/** Days of the span counted on past New Year: [355, 20] is [355, 385]. */
const unrolled = ([start, end]: DaySpan): readonly [number, number] => [start, end < start ? end + 365 : end];

/** Whether two spans have a day in common once the first is widened by `slackDays` on both sides. */
export function daysMeet(a: DaySpan, b: DaySpan, slackDays = 0): boolean {
  const [aStart, aEnd] = unrolled(a);
  const [bStart, bEnd] = unrolled(b);
  return [-365, 0, 365].some((turn) => aStart - slackDays <= bEnd + turn && aEnd + slackDays >= bStart + turn);
}
