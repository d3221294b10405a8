// The dataset against published lists of seasons: winter interest, fall color, months of bloom.
import { checkedValue, type UnexplainedValue } from "./checked-value";
import { type DaySpan, daysMeet, monthSpan } from "./day-span";
import { hueFits } from "./hue";
import type { BloomOnset, FallColor, WinterInterest } from "./published-lists";
import type { Feature } from "./taxon";
import { foundSubject, foundTaxa, type TaxonFinder } from "./taxon-finder";
import { MONTH_STARTS, MONTHS } from "./thirds";

/** 1 December to the end of February: what shows then shows in winter. */
const WINTER = monthSpan(12, 2);
/** When a list's early and medium fall color falls at the reference climate (northern Ohio). */
const FALL_SPANS: Record<NonNullable<FallColor["time"]>, DaySpan> = { early: [258, 283], medium: [279, 304] };
const FALL_SLACK_DAYS = 10;

const spanText = (features: readonly Feature[]): string => features.map((f) => `${f.color}${f.fade ? ` to ${f.fade}` : ""}, ${f.from}–${f.to}`).join("; ") || "none";

/** The plant must have one of the kinds of feature in December, January or February; of a genus, at least one of its taxa. */
export function winterChecks(source: string, rows: readonly WinterInterest[], find: TaxonFinder): UnexplainedValue[] {
  return rows.flatMap((row) => {
    const found = find(row);
    if (!found) return [];
    const features = foundTaxa(found).flatMap((t) => t.features.filter((f) => row.kinds.includes(f.kind)));
    const shown = features.some((f) => daysMeet([f.startDay, f.endDay], WINTER));
    return checkedValue(foundSubject(found), `features.${row.kinds[0] ?? ""}`, source, found.kind === "taxon" ? spanText(features) : shown ? "some" : "none", row.what, shown);
  });
}

/** Fall color must be there, in one of the hues named, and within 10 days of the time named; of a genus, in at least one of its taxa. */
export function fallColorChecks(source: string, rows: readonly FallColor[], find: TaxonFinder): UnexplainedValue[] {
  return rows.flatMap((row) => {
    const found = find(row);
    if (!found) return [];
    const falls = foundTaxa(found).flatMap((t) => t.features.filter((f) => f.kind === "fall color"));
    const ours = found.kind === "taxon" ? spanText(falls) : falls.length ? "some" : "none";
    const { hues, time } = row;
    const colored = falls.filter((f) => !hues || hueFits(f.color, hues) || (f.fade !== null && hueFits(f.fade, hues)));
    const values = [checkedValue(foundSubject(found), "features.fall color", source, ours, hues ? hues.join(" or ") : "fall color", colored.length > 0)];
    if (time && falls.length) {
      const agrees = falls.some((f) => daysMeet([f.startDay, f.endDay], FALL_SPANS[time], FALL_SLACK_DAYS));
      values.push(checkedValue(foundSubject(found), "features.fall color time", source, ours, time, agrees));
    }
    return values;
  });
}

const monthOf = (dayOfYear: number): number => MONTH_STARTS.findIndex((_, m) => dayOfYear <= (MONTH_STARTS[m + 1] ?? 365)) + 1;
const monthsApart = (a: number, b: number): number => Math.min(Math.abs(a - b), 12 - Math.abs(a - b));

/** The month in which bloom begins at the reference climate must be within one of the month published. A plant listed twice counts by its first month. */
export function bloomOnsetChecks(source: string, rows: readonly BloomOnset[], find: TaxonFinder): UnexplainedValue[] {
  const seen = new Set<string>();
  return rows.flatMap((row) => {
    const found = find(row);
    if (found?.kind !== "taxon" || seen.has(found.taxon.id)) return [];
    const blooms = found.taxon.features.filter((f) => f.kind === "bloom");
    if (blooms.length === 0) return [];
    seen.add(found.taxon.id);
    const agrees = blooms.some((b) => monthsApart(monthOf(b.startDay), row.startMonth) <= 1);
    return checkedValue(found.taxon, "features.bloom", source, blooms.map((b) => b.from).join(", "), `from ${MONTHS[row.startMonth - 1] ?? ""}`, agrees);
  });
}
