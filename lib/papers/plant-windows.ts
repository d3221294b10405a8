// The windows of a taxon at a place, in words and dates.
import { COLORS, type ColorName } from "../plants/colors";
import { windowFieldOf } from "../plants/correction";
import type { Taxon } from "../plants/taxon";
import type { Drive, FeatureKind } from "../plants/vocabulary";
import type { AppliedCorrection } from "../season/corrected";
import { dayText, dayThirdText } from "../season/sentence";
import { spansYear } from "../season/spans-year";
import type { TaxonSeason } from "../season/window";
import type { CorrectionNote } from "./plant-facts";

export type Swatch = { readonly name: ColorName; readonly hex: string };

export type WindowLine = {
  readonly kind: FeatureKind;
  readonly swatches: readonly Swatch[];
  /** "mid July to late September", or "all year". */
  readonly words: string;
  /** "Jul 14 – Sep 22, ± 8 days"; "" for all year. */
  readonly dates: string;
  readonly show: string;
  readonly drive: string;
  readonly note: string;
  readonly source: string;
  /** What a correction of its dates goes by; null where there are none to correct. */
  readonly field: string | null;
  readonly fromDay: number;
  readonly toDay: number;
  readonly correction: CorrectionNote | null;
};

const SHOWS = ["", "slight", "good", "outstanding"] as const;
const DRIVES: Record<Drive, string> = { heat: "by warmth", light: "by day length", cooling: "by the cooling of fall", dormancy: "while leaves are off", always: "always" };

/** One line a feature, in the taxon's order. */
export function plantWindows(taxon: Taxon, season: TaxonSeason, corrections: readonly AppliedCorrection[], isOwn: boolean): WindowLine[] {
  return season.windows.map((w, i): WindowLine => {
    const { feature } = w;
    const applied = corrections.find((c) => c.fact === `features.${i}`);
    const before = applied?.original.features[i];
    const whole = spansYear(w);
    const named = [feature.color, feature.fade ?? feature.winter].filter((name) => name !== null);
    return {
      kind: w.kind,
      swatches: named.map((name) => ({ name, hex: COLORS[name] })),
      words: whole ? "all year" : `${dayThirdText(w.startDay)} to ${dayThirdText(w.endDay)}`,
      dates: whole ? "" : `${dayText(w.startDay)} – ${dayText(w.endDay)}${w.spreadDays ? `, ± ${w.spreadDays} days` : ""}`,
      show: SHOWS[feature.show],
      drive: w.degreeDays === null ? DRIVES[w.drive] : `at ${Math.round(w.degreeDays)} degree days`,
      note: feature.note ?? "",
      source: feature.source,
      field: isOwn ? null : windowFieldOf(taxon, i),
      fromDay: w.startDay,
      toDay: w.endDay,
      correction: applied && before ? { id: applied.id, original: `${before.from} to ${before.to} at the reference climate`, note: applied.note } : null,
    };
  });
}
