// The way back: from what somebody saw at a place to the dataset's reference climate, so that it can be carried to any other place.
import { DAYS } from "../place/harmonic";
import type { PlaceYear } from "../place/place-year";
import type { Feature, Taxon } from "../plants/taxon";
import { thirdOfDay } from "../plants/thirds";
import { taxonSeason } from "./taxon-season";

export type Leaves = NonNullable<Taxon["leaves"]>;

const STEPS = 14;
const SCAN_DAYS = 90;
/** Longer windows are all year: they have no date to move. */
const NEARLY_YEAR_DAYS = 354;
const wrap = (day: number): number => ((((Math.round(day) - 1) % DAYS) + DAYS) % DAYS) + 1;
const apart = (a: number, b: number): number => ((((a - b + DAYS / 2) % DAYS) + DAYS) % DAYS) - DAYS / 2;

/**
 * The number of days that `forward` carries to the day `seen`, looked for from `guess`. Days move nearly one for one between places, so the
 * error itself is the step; where that swings about (early spring in the south) the numbers around are tried one by one. The nearest, where none fits.
 */
function daysCarriedTo(forward: (days: number) => number, seen: number, guess: number): number {
  let best = { days: guess, off: Number.POSITIVE_INFINITY };
  const tried = (days: number): number => {
    const off = apart(seen, forward(days));
    if (Math.abs(off) < best.off) best = { days, off: Math.abs(off) };
    return off;
  };
  let days = guess;
  for (let step = 0; step < STEPS && best.off > 0; step++) days = Math.round(days + tried(days));
  for (let away = 1; away <= SCAN_DAYS && best.off > 1; away++) {
    tried(guess + away);
    tried(guess - away);
  }
  return best.days;
}

/** Leaf-out and leaf-drop at the reference climate of leaves seen at a place (days of year 1–365). */
export function referenceLeaves(seen: Leaves, place: PlaceYear): Leaves {
  if (place.noBasis !== null) return seen;
  const carried = (leaves: Leaves): Leaves => taxonSeason({ leaves, features: [] }, place).leaves ?? leaves;
  const length = apart(seen.offDay, seen.onDay);
  const onDay = wrap(daysCarriedTo((day) => carried({ onDay: wrap(day), offDay: wrap(day + length) }).onDay, seen.onDay, seen.onDay));
  const offDay = wrap(daysCarriedTo((day) => carried({ onDay, offDay: wrap(day) }).offDay, seen.offDay, seen.offDay));
  return { onDay, offDay };
}

/**
 * A feature seen at a place (its startDay and endDay are the place's), with its window at the reference climate instead.
 * A published degree-day figure gives way to what was seen. What shows all year stays as it is.
 * @param leaves the taxon's leaves at the reference climate
 */
export function referenceFeature(seen: Feature, leaves: Taxon["leaves"], place: PlaceYear): Feature {
  const { degreeDaysFull: _full, ...rest } = seen;
  const feature: Feature = { ...rest, degreeDays: null };
  if (place.noBasis !== null || seen.drive === "always") return feature;
  const carried = (startDay: number, endDay: number) => {
    const [window] = taxonSeason({ leaves, features: [{ ...feature, startDay, endDay }] }, place).windows;
    return window ?? { startDay, endDay };
  };
  const length = (seen.endDay - seen.startDay + DAYS) % DAYS;
  if (length >= NEARLY_YEAR_DAYS) return feature;
  const held = (days: number) => Math.min(NEARLY_YEAR_DAYS - 1, Math.max(0, days));
  const startDay = wrap(daysCarriedTo((day) => carried(wrap(day), wrap(day + length)).startDay, seen.startDay, seen.startDay));
  // The end is looked for as a length: a day before the start would read as nearly a year.
  const endDay = wrap(startDay + held(daysCarriedTo((days) => carried(startDay, wrap(startDay + held(days))).endDay, seen.endDay, length)));
  return { ...feature, startDay, endDay, from: thirdOfDay(startDay), to: thirdOfDay(endDay) };
}
