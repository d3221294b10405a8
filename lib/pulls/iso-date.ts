// Calendar days as ISO text ("2027-04-15"), without a clock or a time zone.

const at = (iso: string): number => Date.parse(`${iso}T00:00:00Z`);
const isoOf = (ms: number): string => new Date(ms).toISOString().slice(0, 10);

/** Whether a text is a day of the calendar, such as 2027-04-15 (and not 2027-02-30). */
export function isIsoDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const ms = at(text);
  return Number.isFinite(ms) && isoOf(ms) === text;
}

/** So many days before a day; below zero: after it. */
export function isoDaysBefore(iso: string, days: number): string {
  return isoOf(at(iso) - days * 86_400_000);
}

/** "Apr 15, 2027". */
export function isoDateText(iso: string): string {
  return new Date(at(iso)).toLocaleDateString("en-US", { month: "short", day: "numeric", year: "numeric", timeZone: "UTC" });
}
