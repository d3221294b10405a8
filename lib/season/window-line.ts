// A window in one line with all that is known of its dates: begin, best, end, how sure, and what decides them.
import type { Drive } from "../plants/vocabulary";
import { dayText } from "./sentence";
import { spansYear } from "./spans-year";
import type { SeasonWindow, TaxonSeason } from "./window";

const DRIVE_WORDS: Readonly<Record<Drive, string>> = {
  heat: "by warmth",
  light: "by day length",
  cooling: "by the cooling of fall",
  dormancy: "while leaves are off",
  always: "always there",
};

/** "by warmth: first bloom at 86 degree days base 50 °F, as published for Wooster, Ohio". */
export function datedByWords({ drive, degreeDays, degreeDaysFull }: Pick<SeasonWindow, "drive" | "degreeDays" | "degreeDaysFull">): string {
  const figures = [degreeDays === null ? "" : `first bloom at ${degreeDays}`, degreeDaysFull === undefined ? "" : `full bloom at ${degreeDaysFull}`].filter(Boolean);
  return figures.length ? `${DRIVE_WORDS[drive]}: ${figures.join(", ")} degree days base 50 °F, as published for Wooster, Ohio` : DRIVE_WORDS[drive];
}

/** "bloom white: Apr 4 to Apr 25, best about Apr 8, ± 6 days; by warmth". */
export function windowLine(window: SeasonWindow): string {
  const { kind, feature, startDay, endDay, peakDay, spreadDays } = window;
  const what = `${kind} ${feature.color}${feature.fade ? ` turning ${feature.fade}` : ""}`;
  if (spansYear(window)) return `${what}: all year`;
  const sure = spreadDays > 0 ? `, ± ${spreadDays} days` : "";
  return `${what}: ${dayText(startDay)} to ${dayText(endDay)}, best about ${dayText(peakDay)}${sure}; ${datedByWords(window)}`;
}

/** "in leaf: May 3 to Oct 28, ± 6 and ± 8 days"; null for what keeps its leaves. */
export function leavesLine({ leaves, leafSpread }: Pick<TaxonSeason, "leaves" | "leafSpread">): string | null {
  if (!leaves) return null;
  return `in leaf: ${dayText(leaves.onDay)} to ${dayText(leaves.offDay)}${leafSpread ? `, ± ${leafSpread.onDays} and ± ${leafSpread.offDays} days` : ""}`;
}
