// Windows are written in the trade's words: the early, mid or late third of a month at the reference climate.

export const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;
/** Days before each month in a 365-day year. */
export const MONTH_STARTS = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365] as const;
const THIRDS = ["early", "mid", "late"] as const;
const PATTERN = /^(early|mid|late) (Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)$/;

export type Third = `${(typeof THIRDS)[number]} ${(typeof MONTHS)[number]}`;

export function isThird(text: string): text is Third {
  return PATTERN.test(text);
}

function thirdParts(third: Third): { month: number; part: number } {
  const [part, month] = third.split(" ") as [(typeof THIRDS)[number], (typeof MONTHS)[number]];
  return { month: MONTHS.indexOf(month), part: THIRDS.indexOf(part) };
}

/** First day of year (1–365) of a third. */
export function thirdStartDay(third: Third): number {
  const { month, part } = thirdParts(third);
  return (MONTH_STARTS[month] ?? 0) + 1 + part * 10;
}

/** Last day of year (1–365) of a third: the 10th, the 20th or the last of the month. */
export function thirdEndDay(third: Third): number {
  const { month, part } = thirdParts(third);
  return part === 2 ? (MONTH_STARTS[month + 1] ?? 365) : (MONTH_STARTS[month] ?? 0) + (part + 1) * 10;
}

/** The third a day of year falls in. */
export function thirdOfDay(dayOfYear: number): Third {
  const day = ((Math.round(dayOfYear) - 1 + 365 * 3) % 365) + 1;
  let month = 11;
  for (let m = 0; m < 12; m++)
    if (day <= (MONTH_STARTS[m + 1] ?? 365)) {
      month = m;
      break;
    }
  const inMonth = day - (MONTH_STARTS[month] ?? 0);
  return `${THIRDS[Math.min(2, Math.floor((inMonth - 1) / 10))] ?? "late"} ${MONTHS[month] ?? "Dec"}` as Third;
}
