import { MONTH_STARTS } from "../plants/thirds";

const NAMES = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"] as const;

/** One of the 24 half-months: 1st–15th, 16th–last. Days of year, inclusive. */
export type HalfMonth = { readonly index: number; readonly label: string; readonly startDay: number; readonly endDay: number };

export const HALF_MONTHS: readonly HalfMonth[] = NAMES.flatMap((name, month) => {
  const before = MONTH_STARTS[month] ?? 0;
  const after = MONTH_STARTS[month + 1] ?? 365;
  return [
    { index: month * 2, label: `early ${name}`, startDay: before + 1, endDay: before + 15 },
    { index: month * 2 + 1, label: `late ${name}`, startDay: before + 16, endDay: after },
  ];
});

/** Runs of half-months in words: "late May", "early March through late April". A run may pass New Year. */
export function halfMonthRuns(indexes: readonly number[]): string[] {
  const wanted = new Set(indexes);
  if (wanted.size === HALF_MONTHS.length) return ["the whole year"];
  const starts = [...wanted].filter((i) => !wanted.has((i + 23) % 24)).sort((a, b) => a - b);
  return starts.map((start) => {
    let end = start;
    while (wanted.has((end + 1) % 24)) end = (end + 1) % 24;
    const from = HALF_MONTHS[start]?.label ?? "";
    const to = HALF_MONTHS[end]?.label ?? "";
    if (start === end) return from;
    const month = from.split(" ")[1] ?? "";
    return from.startsWith("early") && to === `late ${month}` && end === start + 1 ? month : `${from} through ${to}`;
  });
}
