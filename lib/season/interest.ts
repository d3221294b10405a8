// Interest of a bed through the year (model.md §5), on the ground: area share of what is showing, by kind and by color.
import { FEATURE_KINDS, type FeatureKind } from "../plants/vocabulary";
import { HALF_MONTHS } from "./half-months";
import type { SeasonWindow, TaxonSeason } from "./window";

/** A group of plants as the interest sees it. areaSqFt: the ground its crowns cover in the year looked at. */
export type InterestPlant = { readonly key: string; readonly areaSqFt: number; readonly season: TaxonSeason };

/** Shares of the ground, 0–1. Growing season: between the last and the first freeze. */
export type Targets = { readonly growing: number; readonly winter: number };

export const DEFAULT_TARGETS: Targets = { growing: 0.27, winter: 0.2 };

export type GrowingSeason = { readonly lastFreezeDay: number | null; readonly firstFreezeDay: number | null };

const RAMP_DAYS = 7;
const EPSILON = 1e-9;

/** Trapezoid weight 0–1 of a window on a day; the ramps of a week are centered on its start and end. */
export function windowWeight(window: Pick<SeasonWindow, "startDay" | "endDay">, day: number): number {
  const length = ((window.endDay - window.startDay + 365) % 365) + 1;
  if (length >= 364) return 1;
  const half = RAMP_DAYS / 2;
  const sinceStart = ((day - window.startDay + half + 730) % 365) - half;
  return Math.max(0, Math.min(1, (sinceStart + half) / RAMP_DAYS, (length - 1 - sinceStart + half) / RAMP_DAYS));
}

/** Whether a day lies between the last and the first freeze; a place without frost is growing all year. */
export function dayIsGrowing(season: GrowingSeason, day: number): boolean {
  const { lastFreezeDay, firstFreezeDay } = season;
  if (lastFreezeDay === null || firstFreezeDay === null) return true;
  return lastFreezeDay <= firstFreezeDay ? day > lastFreezeDay && day < firstFreezeDay : day > lastFreezeDay || day < firstFreezeDay;
}

/**
 * Whether a kind counts toward the day's target. Growing season: flower or colored foliage and fruit (a green or evergreen
 * background does not). Winter: everything that shows (decision of 2026-11-25: a hellebore in March is not nothing).
 */
export function kindCounts(kind: FeatureKind, growing: boolean): boolean {
  if (!growing) return true;
  switch (kind) {
    case "bloom":
    case "spring foliage":
    case "summer foliage":
    case "fall color":
    case "fruit":
      return true;
    case "bark":
    case "evergreen":
    case "seedhead":
    case "structure":
      return false;
  }
}

/** One colored share of a half-month: what kind shows in which color, on what part of the ground. */
export type InterestPart = { readonly kind: FeatureKind; readonly hex: string; readonly share: number; readonly counted: boolean };

export type HalfMonthInterest = {
  readonly index: number;
  readonly label: string;
  /** Share of the ground showing what counts, 0–1. */
  readonly interest: number;
  readonly target: number;
  readonly byKind: Readonly<Record<FeatureKind, number>>;
  readonly parts: readonly InterestPart[];
  readonly bare: boolean;
};

/** What of each plant shows on a day: the counted and the whole probability-like cover 1 − Π(1 − show/3·w). */
function plantDay(
  windows: readonly SeasonWindow[],
  day: number,
  growing: boolean,
): { counted: number; all: number; shows: { window: SeasonWindow; show: number; counted: boolean }[] } {
  let missAll = 1;
  let missCounted = 1;
  const shows: { window: SeasonWindow; show: number; counted: boolean }[] = [];
  for (const window of windows) {
    const show = (window.feature.show / 3) * windowWeight(window, day);
    if (show <= 0) continue;
    const counted = kindCounts(window.kind, growing);
    missAll *= 1 - show;
    if (counted) missCounted *= 1 - show;
    shows.push({ window, show, counted });
  }
  return { counted: 1 - missCounted, all: 1 - missAll, shows };
}

/** Color of a window on a day: its fading color in the second half, an evergreen's winter color outside the growing season. */
function colorOn(window: SeasonWindow, day: number, growing: boolean, hexOf: (name: string) => string): string {
  const { feature } = window;
  if (feature.winter && !growing) return hexOf(feature.winter);
  if (!feature.fade) return feature.hex;
  const length = ((window.endDay - window.startDay + 365) % 365) + 1;
  return (day - window.startDay + 365) % 365 > length / 2 ? hexOf(feature.fade) : feature.hex;
}

/** The counted cover alone, as `plantDay` has it. */
function countedShow(windows: readonly SeasonWindow[], day: number, growing: boolean): number {
  let miss = 1;
  for (const window of windows) {
    if (!kindCounts(window.kind, growing)) continue;
    const show = (window.feature.show / 3) * windowWeight(window, day);
    if (show > 0) miss *= 1 - show;
  }
  return 1 - miss;
}

/** Interest i(t) of one plant on a day toward the target, 0–1. */
export function plantInterest(season: TaxonSeason, day: number, growing: boolean): number {
  return countedShow(season.windows, day, growing);
}

/**
 * Interest by half-month.
 * @param groundSqFt plantable area, > 0
 * @param hexOf sRGB of a named color
 * @returns 24 half-months; the shares of each sum to at most 1
 */
export function bedInterest(plants: readonly InterestPlant[], groundSqFt: number, targets: Targets, season: GrowingSeason, hexOf: (name: string) => string): HalfMonthInterest[] {
  return HALF_MONTHS.map((half) => {
    const days = half.endDay - half.startDay + 1;
    let interest = 0;
    let target = 0;
    const parts = new Map<string, InterestPart>();
    for (let day = half.startDay; day <= half.endDay; day++) {
      const growing = dayIsGrowing(season, day);
      target += (growing ? targets.growing : targets.winter) / days;
      const today: InterestPart[] = [];
      let counted = 0;
      let all = 0;
      for (const plant of plants) {
        const share = Math.min(1, plant.areaSqFt / groundSqFt);
        const shown = plantDay(plant.season.windows, day, growing);
        counted += share * shown.counted;
        all += share * shown.all;
        const sumCounted = shown.shows.reduce((sum, s) => sum + (s.counted ? s.show : 0), 0);
        const sumRest = shown.shows.reduce((sum, s) => sum + (s.counted ? 0 : s.show), 0);
        for (const s of shown.shows) {
          const of = s.counted ? shown.counted * (s.show / sumCounted) : (shown.all - shown.counted) * (s.show / sumRest);
          today.push({ kind: s.window.kind, hex: colorOn(s.window, day, growing, hexOf), share: share * of, counted: s.counted });
        }
      }
      interest += Math.min(1, counted) / days;
      const scale = (all > 1 ? 1 / all : 1) / days;
      for (const part of today) {
        const key = `${part.kind}|${part.hex}|${part.counted}`;
        const before = parts.get(key)?.share ?? 0;
        parts.set(key, { ...part, share: before + part.share * scale });
      }
    }
    const list = [...parts.values()]
      .filter((p) => p.share > 1e-4)
      .sort((a, b) => Number(b.counted) - Number(a.counted) || FEATURE_KINDS.indexOf(a.kind) - FEATURE_KINDS.indexOf(b.kind) || b.share - a.share);
    const byKind = Object.fromEntries(FEATURE_KINDS.map((kind) => [kind, list.reduce((sum, p) => sum + (p.kind === kind ? p.share : 0), 0)])) as Record<FeatureKind, number>;
    return { index: half.index, label: half.label, interest, target, byKind, parts: list, bare: interest < target - EPSILON };
  });
}

/** The year's score: mean of min(1, interest ÷ target), 0–1. */
export function yearScore(halfMonths: readonly Pick<HalfMonthInterest, "interest" | "target">[]): number {
  if (halfMonths.length === 0) return 0;
  return halfMonths.reduce((sum, h) => sum + (h.target > 0 ? Math.min(1, h.interest / h.target) : 1), 0) / halfMonths.length;
}

const CARRIES = 0.5;
/** Far above the rounding of a sum, far below any share that matters. */
const ROUNDING = 1e-9;

/** Counted share of the ground that each plant shows on each day: entry [plant][day of year − 1]. */
function countedByDay(plants: readonly InterestPlant[], groundSqFt: number, growingOn: readonly boolean[]): Float64Array[] {
  return plants.map(({ areaSqFt, season: { windows } }) => {
    const share = Math.min(1, areaSqFt / groundSqFt);
    return Float64Array.from(growingOn, (growing, i) => share * countedShow(windows, i + 1, growing));
  });
}

/**
 * Half-months on target that rest on one plant: without it they would be bare, and it gives half or more of what counts then
 * (without the second condition a bed just on target rests on each of its plants alike, which tells nobody anything).
 * Plants of one key count as one. The days are worked out once for all plants: what is left without one is first the whole less its own, and the few that come
 * near the bounds (in any half-month at most two plants give half) are added up anew, so that the answer does not hang on rounding.
 */
export function restingOnOne(plants: readonly InterestPlant[], groundSqFt: number, targets: Targets, season: GrowingSeason): { index: number; label: string; key: string }[] {
  const growingOn = Array.from({ length: 365 }, (_, i) => dayIsGrowing(season, i + 1));
  const counted = countedByDay(plants, groundSqFt, growingOn);
  /** Share of the ground on a day, all plants but those of a key, in their order as `bedInterest` adds them. */
  const dayShare = (day: number, without: string | null): number => {
    let sum = 0;
    for (const [i, plant] of plants.entries()) if (plant.key !== without) sum += counted[i]?.[day - 1] ?? 0;
    return sum;
  };
  const interestOf = (half: (typeof HALF_MONTHS)[number], shareOn: (day: number) => number): number => {
    const days = half.endDay - half.startDay + 1;
    let interest = 0;
    for (let day = half.startDay; day <= half.endDay; day++) interest += Math.min(1, shareOn(day)) / days;
    return interest;
  };
  const wholeByDay = Float64Array.from({ length: 365 }, (_, i) => dayShare(i + 1, null));
  const halves = HALF_MONTHS.map((half) => {
    const days = half.endDay - half.startDay + 1;
    let target = 0;
    for (let day = half.startDay; day <= half.endDay; day++) target += (growingOn[day - 1] ? targets.growing : targets.winter) / days;
    return { half, target, interest: interestOf(half, (day) => wholeByDay[day - 1] ?? 0) };
  }).filter(({ interest, target }) => !(interest < target - EPSILON));
  const ownByKey = new Map<string, Float64Array>();
  for (const [i, { key }] of plants.entries()) {
    const own = counted[i] ?? new Float64Array(365);
    const others = ownByKey.get(key);
    ownByKey.set(key, others ? others.map((share, day) => share + (own[day] ?? 0)) : own);
  }
  return plants.flatMap(({ key }) => {
    const own = ownByKey.get(key);
    if (!own?.some((share) => share > 0)) return [];
    return halves.flatMap(({ half, target, interest }) => {
      const rests = (without: number, slack: number) => without < target - EPSILON + slack && interest - without >= CARRIES * interest - slack;
      if (
        !rests(
          interestOf(half, (day) => (wholeByDay[day - 1] ?? 0) - (own[day - 1] ?? 0)),
          ROUNDING,
        )
      )
        return [];
      return rests(
        interestOf(half, (day) => dayShare(day, key)),
        0,
      )
        ? [{ index: half.index, label: half.label, key }]
        : [];
    });
  });
}
