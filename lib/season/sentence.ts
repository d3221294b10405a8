import { MONTH_STARTS } from "../plants/thirds";
import type { FeatureKind } from "../plants/vocabulary";
import type { SeasonWindow, TaxonSeason } from "./window";

const MONTH_NAMES = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"] as const;
const SHORT = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;

/** Month (0–11) and day of month of a day of year 1–365. */
export function dayParts(dayOfYear: number): { month: number; day: number } {
  const day = ((Math.round(dayOfYear) - 1 + 365 * 3) % 365) + 1;
  let month = 0;
  while (month < 11 && day > (MONTH_STARTS[month + 1] ?? 365)) month++;
  return { month, day: day - (MONTH_STARTS[month] ?? 0) };
}

/** "May 4". */
export function dayText(dayOfYear: number): string {
  const { month, day } = dayParts(dayOfYear);
  return `${SHORT[month] ?? ""} ${day}`;
}

/** "05-04": month and day as ISO 8601 writes them. */
export function dayIso(dayOfYear: number): string {
  const { month, day } = dayParts(dayOfYear);
  return `${String(month + 1).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
}

/** "mid July". */
export function dayThirdText(dayOfYear: number): string {
  const { month, day } = dayParts(dayOfYear);
  return `${day <= 10 ? "early" : day <= 20 ? "mid" : "late"} ${MONTH_NAMES[month] ?? ""}`;
}

const VERBS: Record<FeatureKind, string> = {
  bloom: "blooms",
  "spring foliage": "spring leaves",
  "summer foliage": "foliage",
  "fall color": "fall color",
  fruit: "fruit",
  bark: "bark",
  evergreen: "evergreen",
  seedhead: "seedheads",
  structure: "winter structure",
};

const yearRound = (w: SeasonWindow) => (w.endDay - w.startDay + 365) % 365 >= 363;

function windowPhrase(w: SeasonWindow): string {
  const color = w.feature.fade ? `${w.feature.color} turning ${w.feature.fade}` : w.feature.winter ? `${w.feature.color}, ${w.feature.winter} in winter` : w.feature.color;
  const when = yearRound(w) ? "all year" : `${dayThirdText(w.startDay)} to ${dayThirdText(w.endDay)}`;
  return `${VERBS[w.kind]} ${color} ${when}`;
}

/** The year of a plant as one sentence, for readers who do not see the strip. */
export function seasonSentence(season: TaxonSeason): string {
  const phrases = season.windows.map(windowPhrase);
  if (season.leaves) phrases.push(`in leaf ${dayThirdText(season.leaves.onDay)} to ${dayThirdText(season.leaves.offDay)}`);
  const text = phrases.join("; ");
  return text ? `${text.charAt(0).toUpperCase()}${text.slice(1)}.` : "Nothing recorded.";
}
