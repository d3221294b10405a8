// The year strip of one plant as marks, for screen, print and paper alike. Kind is told by shape, color is the plant's own.
import { COLORS } from "../plants/colors";
import type { FeatureKind } from "../plants/vocabulary";
import type { SeasonWindow, TaxonSeason } from "../season/window";

/** Width of a strip: one unit a day. */
export const STRIP_DAYS = 365;
export const STRIP_HEIGHT = 26;

/** A drawn piece of a window. Days 0–365 from the left; y and height from the top of a strip STRIP_HEIGHT high. */
export type StripMark = {
  readonly shape: "block" | "band" | "wedge" | "dots" | "line" | "bar" | "ticks" | "slants" | "leaf";
  readonly kind: FeatureKind | "leaves";
  readonly fromDay: number;
  readonly toDay: number;
  readonly y: number;
  readonly height: number;
  readonly hex: string;
  /** Color it turns to; the mark changes in its middle. */
  readonly hexTo: string | null;
  /** 1–3. */
  readonly show: number;
  /** Soft ends, ± days; 0 where the end is the edge of the year. */
  readonly softDays: number;
};

const SHAPES: Record<FeatureKind, { shape: StripMark["shape"]; y: number; height: number }> = {
  bloom: { shape: "block", y: 3, height: 10 },
  "spring foliage": { shape: "band", y: 13.5, height: 5 },
  "summer foliage": { shape: "band", y: 13.5, height: 5 },
  "fall color": { shape: "wedge", y: 9, height: 9.5 },
  fruit: { shape: "dots", y: 11, height: 5 },
  bark: { shape: "line", y: 20.5, height: 2.5 },
  evergreen: { shape: "bar", y: 19, height: 5 },
  seedhead: { shape: "ticks", y: 13, height: 6 },
  structure: { shape: "slants", y: 18, height: 6 },
};

/** Parts of a window within one calendar year, in days 0–365. */
function yearParts(startDay: number, endDay: number): [number, number][] {
  if ((endDay - startDay + 365) % 365 >= 363) return [[0, 365]];
  return startDay <= endDay
    ? [[startDay - 1, endDay]]
    : [
        [startDay - 1, 365],
        [0, endDay],
      ];
}

function windowMarks(window: SeasonWindow, hardCold: readonly [number, number] | null): StripMark[] {
  const { feature, kind } = window;
  const { shape, y, height } = SHAPES[kind];
  const marks = yearParts(window.startDay, window.endDay).map(([fromDay, toDay]) => ({
    shape,
    kind,
    fromDay,
    toDay,
    y,
    height,
    hex: feature.hex,
    hexTo: feature.fade ? COLORS[feature.fade] : null,
    show: feature.show,
    softDays: fromDay <= 0 || toDay >= STRIP_DAYS ? 0 : window.spreadDays,
  }));
  if (!feature.winter || !hardCold) return marks;
  const winterHex = COLORS[feature.winter];
  const winter = yearParts(hardCold[0], hardCold[1]).map(([fromDay, toDay]) => ({
    shape,
    kind,
    fromDay,
    toDay,
    y,
    height,
    hex: winterHex,
    hexTo: null,
    show: feature.show,
    softDays: 0,
  }));
  return [...marks, ...winter];
}

/**
 * Marks of a plant's year at a place, back to front.
 * @param freeze first and last freeze: an evergreen that bronzes is bronze between them
 */
export function yearStrip(season: TaxonSeason, freeze: { readonly firstFreezeDay: number | null; readonly lastFreezeDay: number | null }): StripMark[] {
  const { firstFreezeDay, lastFreezeDay } = freeze;
  const hardCold = firstFreezeDay !== null && lastFreezeDay !== null ? ([firstFreezeDay, lastFreezeDay] as const) : null;
  const leaves = season.leaves
    ? yearParts(season.leaves.onDay, season.leaves.offDay).map(([fromDay, toDay]) => ({
        shape: "leaf" as const,
        kind: "leaves" as const,
        fromDay,
        toDay,
        y: 16.2,
        height: 2,
        hex: COLORS["light green"],
        hexTo: null,
        show: 1,
        softDays: 0,
      }))
    : [];
  const order: FeatureKind[] = ["evergreen", "bark", "structure", "summer foliage", "spring foliage", "seedhead", "fall color", "fruit", "bloom"];
  return [...leaves, ...order.flatMap((kind) => season.windows.filter((w) => w.kind === kind).flatMap((w) => windowMarks(w, hardCold)))];
}
