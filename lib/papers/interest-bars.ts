// The bed's interest by half-month as stacked bars: a pure layout that returns marks; screens and papers draw them.
import type { FeatureKind } from "../plants/vocabulary";
import { HALF_MONTHS } from "../season/half-months";
import type { HalfMonthInterest } from "../season/interest";

/** A rectangle: x in days 0–365, y and height in shares of the ground from the bottom (0) to the top of the scale (1). */
export type InterestMark = {
  readonly fromDay: number;
  readonly toDay: number;
  readonly bottom: number;
  readonly height: number;
  readonly kind: FeatureKind;
  readonly hex: string;
  readonly counted: boolean;
};

export type InterestBars = {
  readonly marks: readonly InterestMark[];
  readonly bare: readonly { readonly index: number; readonly label: string; readonly fromDay: number; readonly toDay: number; readonly bottom: number; readonly top: number }[];
  /** The target as a stepped line. */
  readonly target: readonly { readonly fromDay: number; readonly toDay: number; readonly share: number }[];
  /** Share of the ground at the top of the scale. */
  readonly scaleTop: number;
};

const GAP_DAYS = 0.8;

/** Layout of 24 half-months. The scale ends at 60 % or above the highest bar, whichever is more, at most 100 %. */
export function interestBars(halfMonths: readonly HalfMonthInterest[]): InterestBars {
  const highest = Math.max(0.6, ...halfMonths.map((h) => h.parts.reduce((sum, p) => sum + p.share, 0)));
  const scaleTop = Math.min(1, Math.ceil(highest * 10) / 10);
  const marks: InterestMark[] = [];
  const bare: InterestBars["bare"][number][] = [];
  const target: InterestBars["target"][number][] = [];
  for (const half of halfMonths) {
    const days = HALF_MONTHS[half.index];
    if (!days) continue;
    const fromDay = days.startDay - 1 + GAP_DAYS;
    const toDay = days.endDay - GAP_DAYS;
    let bottom = 0;
    for (const part of half.parts) {
      const height = part.share / scaleTop;
      marks.push({ fromDay, toDay, bottom, height, kind: part.kind, hex: part.hex, counted: part.counted });
      bottom += height;
    }
    if (half.bare) bare.push({ index: half.index, label: half.label, fromDay, toDay, bottom: half.interest / scaleTop, top: half.target / scaleTop });
    target.push({ fromDay: days.startDay - 1, toDay: days.endDay, share: half.target / scaleTop });
  }
  return { marks, bare, target, scaleTop };
}
