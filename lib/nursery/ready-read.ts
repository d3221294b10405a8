// A date of readiness as lists write it, as an ISO date from which plants may be counted on.

/** First day that may be counted on: early in the season for some, so the later half of what growers mean (common practice, no source). */
const SEASONS: Readonly<Record<string, string>> = { spring: "04-01", summer: "06-15", fall: "09-01", winter: "12-01" };
const LATER: Readonly<Record<string, string>> = { spring: "05-01", summer: "08-01", fall: "10-15", winter: "02-01" };
const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const two = (value: number): string => String(value).padStart(2, "0");

function isoOf(year: number, month: number, day: number): string | null {
  const date = new Date(Date.UTC(year, month - 1, day));
  return date.getUTCMonth() === month - 1 && date.getUTCDate() === day ? date.toISOString().slice(0, 10) : null;
}

/** Monday of an ISO week (ISO 8601: week 1 holds 4 January). */
function weekStart(year: number, week: number): string | null {
  if (week < 1 || week > 53) return null;
  const fourth = new Date(Date.UTC(year, 0, 4));
  const monday = 4 - ((fourth.getUTCDay() + 6) % 7) + (week - 1) * 7;
  return new Date(Date.UTC(year, 0, monday)).toISOString().slice(0, 10);
}

const SEASON = /\b(early |mid[ -]?|late )?(spring|spr|summer|sum|fall|autumn|winter|win|s(?=p?'?\d{2})|f(?='?\d{2})|w(?='?\d{2}))p?\.?(?: ?'?((?:20)?\d{2}))?(?![\d/])/i;
const SEASON_NAMES: Readonly<Record<string, string>> = { spr: "spring", s: "spring", sum: "summer", autumn: "fall", f: "fall", win: "winter", w: "winter" };
const MONTH = /\b(jan|feb|mar|apr|may|june?|july?|aug|sept?|oct|nov|dec)[a-z]*\.?(?: (\d{1,2})(?:st|nd|rd|th)?(?!\d))?(?:,? ?'?((?:20)\d{2}|'?\d{2}))?/i;

/**
 * ISO date of "Spring 26", "May 15", "5/15/26", "2026-05-15", "wk 18"; null for "now" and what is not understood.
 * Without a year the next such day from `today` on, unless that season or month is running.
 */
export function readyDate(text: string, today: string): string | null {
  const plain = text.replace(/\s+/g, " ").trim();
  const year = Number(today.slice(0, 4));
  const full = (digits: string | undefined): number | null => (digits ? Number(digits.replace("'", "")) % 100 : null);
  const near = (monthDay: string, told: number | null): string => {
    if (told !== null) return `${2000 + told}-${monthDay}`;
    const own = `${year}-${monthDay}`;
    const month = Number(monthDay.slice(0, 2));
    return own >= today || month === Number(today.slice(5, 7)) ? own : `${year + 1}-${monthDay}`;
  };
  const iso = /\b(20\d{2})-(\d{2})-(\d{2})\b/.exec(plain);
  if (iso) return isoOf(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const slashed = /\b(\d{1,2})\/(\d{1,2})\/(\d{2}|\d{4})\b/.exec(plain);
  if (slashed) return isoOf(2000 + (Number(slashed[3]) % 100), Number(slashed[1]), Number(slashed[2]));
  const week = /\b(?:week|wk)\.? ?(\d{1,2})\b/i.exec(plain);
  if (week) {
    const own = weekStart(year, Number(week[1]));
    return own !== null && own < today ? weekStart(year + 1, Number(week[1])) : own;
  }
  const season = SEASON.exec(plain);
  if (season) {
    const word = (season[2] ?? "").toLowerCase();
    const name = SEASON_NAMES[word] ?? word;
    return near((/late/i.test(season[1] ?? "") ? LATER : SEASONS)[name] ?? "04-01", full(season[3]));
  }
  const month = MONTH.exec(plain);
  if (month) {
    const number = MONTHS.indexOf((month[1] ?? "").slice(0, 3).toLowerCase()) + 1;
    const date = near(`${two(number)}-${two(Number(month[2] ?? 1))}`, full(month[3]));
    return isoOf(Number(date.slice(0, 4)), number, Number(date.slice(8)));
  }
  if (/\bnext year\b/i.test(plain)) return `${year + 1}-01-01`;
  return null;
}
