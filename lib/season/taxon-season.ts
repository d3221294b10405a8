// The year of one taxon at one place: leaves, then every seasonal feature by what drives it (model.md §3).
import { DAYS } from "../place/harmonic";
import type { PlaceYear } from "../place/place-year";
import type { Feature, Taxon } from "../plants/taxon";
import type { FeatureKind } from "../plants/vocabulary";
import { CARRY_MODEL, type CarryModel, coolingShift, heatDay, heatDurationFactor, lightDay, referenceDayOfDegreeDays } from "./carry";
import { spreadDays } from "./spread";
import type { SeasonWindow, TaxonSeason } from "./window";

/** A window that ends after early October ends with the season, by cooling; no bloom outlasts the season's end by much. */
const SEASON_END_DAY = 278;
const LAST_BLOOM_DAY = 325;
/** Fruit, seedheads and bare structure that last into winter go by weather and wear, not by the place's warmth. */
const WINTER_FROM_DAY = 320;
const WINTER_TO_DAY = 110;
const LASTS_INTO_WINTER: readonly FeatureKind[] = ["fruit", "seedhead", "structure", "bark"];
/** The dataset writes foliage and bark windows in thirds of a month: within this many days they are the leaves' own dates. */
const SAME_AS_LEAVES_DAYS = 15;
const SHORTEST_DAYS = 4;
const SHORTEST_SHARE = 0.5;
/** Where in its window a feature is at its best: full bloom follows first bloom soon and fades slowly; the rest peaks midway. */
const BLOOM_PEAK_SHARE = 0.2;
const PEAK_SHARE = 0.5;
const BARE_DAYS = 21;
/** Leaves gone before mid-August die down by warmth (bulbs, woodland flowers); those held past midwinter go by wear. */
const DIES_DOWN_UNTIL_DAY = 228;
const HELD_FROM_DAY = 349;
const HELD_UNTIL_DAY = 105;
/** A window of (nearly) the whole year has no date to move. */
const WHOLE_YEAR_DAYS = 355;
/** Where only the reference's months are known. */
const REFERENCE_MONTHS_SPREAD = 15;

/** The place and the model its dates are carried with. */
type Carry = { readonly place: PlaceYear; readonly model: CarryModel };
/** What of a taxon has a date. */
export type DatedFacts = Pick<Taxon, "leaves" | "features">;
type Span = { readonly start: number; readonly end: number };
type Leaves = { readonly on: number; readonly off: number; readonly referenceOn: number; readonly referenceOff: number };

const wrap = (day: number): number => ((((Math.round(day) - 1) % DAYS) + DAYS) % DAYS) + 1;
/** Days from `b` to `a` the short way round the year. */
const apart = (a: number, b: number): number => ((((a - b + DAYS / 2) % DAYS) + DAYS) % DAYS) - DAYS / 2;
const isNear = (a: number, b: number): boolean => Math.abs(apart(a, b)) <= SAME_AS_LEAVES_DAYS;

/** Leaf drop of a reference day 1–365, as a day of the place that may lie outside. */
function leafOffDay(offDay: number, carry: Carry): number {
  if (offDay >= HELD_FROM_DAY || offDay <= HELD_UNTIL_DAY) return offDay;
  if (offDay < DIES_DOWN_UNTIL_DAY) return heatDay(offDay, carry.place, "normal", carry.model);
  return offDay + coolingShift(carry.place, carry.model);
}

function leavesAt(taxon: DatedFacts, carry: Carry): Leaves | null {
  if (!taxon.leaves) return null;
  const { onDay, offDay } = taxon.leaves;
  const nextYear = offDay < onDay ? DAYS : 0;
  const on = heatDay(onDay, carry.place, "normal", carry.model);
  const shortest = on + SHORTEST_SHARE * (offDay + nextYear - onDay);
  const off = Math.min(on + DAYS - BARE_DAYS, Math.max(shortest, leafOffDay(offDay, carry) + nextYear));
  return { on, off, referenceOn: onDay, referenceOff: offDay + nextYear };
}

/** ± days of the leaves' dates: out by warmth, off by the cool of fall or, dying down early, by warmth again; kept past midwinter, by wear. */
function leafSpread(leaves: Leaves, place: PlaceYear): NonNullable<TaxonSeason["leafSpread"]> {
  const off = wrap(leaves.referenceOff);
  const offDrive = off < DIES_DOWN_UNTIL_DAY && off > HELD_UNTIL_DAY ? "heat" : "cooling";
  return {
    onDays: spreadDays("heat", leaves.referenceOn, leaves.on - leaves.referenceOn, place),
    offDays: spreadDays(offDrive, off, leaves.off - leaves.referenceOff, place),
  };
}

/** The published figures that date this feature; only what warmth drives can go by one. */
const publishedFigure = (feature: Feature): number | null => (feature.drive === "heat" ? feature.degreeDays : null);
const publishedFull = (feature: Feature): number | null => (feature.drive === "heat" ? (feature.degreeDaysFull ?? null) : null);

const peakShare = (feature: Feature): number => (feature.kind === "bloom" ? BLOOM_PEAK_SHARE : PEAK_SHARE);

/** Reference span of a feature, unwrapped; a published degree-day figure of its onset, or else of full bloom, moves it as a whole. */
function referenceSpan(feature: Feature): Span {
  const length = (feature.endDay - feature.startDay + DAYS) % DAYS;
  const [figure, full] = [publishedFigure(feature), publishedFull(feature)];
  const first = figure === null ? null : referenceDayOfDegreeDays(figure);
  const peak = full === null ? null : referenceDayOfDegreeDays(full);
  const start = first ?? (peak === null ? null : peak - peakShare(feature) * length) ?? feature.startDay;
  return { start, end: start + length };
}

/** The day a feature is at its best: by the published figure of full bloom, else by rule within its span. */
function peakAt(feature: Feature, span: Span, carry: Carry): number {
  const full = publishedFull(feature);
  const reference = full === null ? null : referenceDayOfDegreeDays(full);
  if (reference === null) return span.start + peakShare(feature) * (span.end - span.start);
  return Math.min(span.end, Math.max(span.start, heatDay(reference, carry.place, "normal", carry.model)));
}

function endAt(feature: Feature, reference: Span, start: number, carry: Carry): number {
  const length = reference.end - reference.start;
  const endDay = wrap(reference.end);
  if (LASTS_INTO_WINTER.includes(feature.kind) && (endDay >= WINTER_FROM_DAY || endDay <= WINTER_TO_DAY)) return reference.end;
  const shift = coolingShift(carry.place, carry.model);
  if (endDay >= SEASON_END_DAY) return reference.end + shift;
  const factor = feature.drive === "heat" ? heatDurationFactor(reference.start, start, length, carry.place, carry.model) : 1;
  return Math.min(start + length * factor, Math.max(reference.end, LAST_BLOOM_DAY + shift));
}

/** Foliage comes and goes with the leaves; what the dataset dates otherwise goes its own way. */
function foliageSpan(feature: Feature, reference: Span, leaves: Leaves | null, carry: Carry): Span {
  const start = leaves && isNear(feature.startDay, leaves.referenceOn) ? leaves.on : heatDay(reference.start, carry.place, "normal", carry.model);
  if (leaves && feature.kind === "summer foliage" && isNear(feature.endDay, leaves.referenceOff)) return { start, end: leaves.off };
  return { start, end: endAt(feature, reference, start, carry) };
}

/** Bark and stems show from leaf fall to leaf-out. */
function dormantSpan(feature: Feature, reference: Span, leaves: Leaves | null, carry: Carry): Span {
  const start = leaves && isNear(feature.startDay, leaves.referenceOff) ? leaves.off : reference.start + coolingShift(carry.place, carry.model);
  const endsWithLeaves = leaves && isNear(feature.endDay, leaves.referenceOn);
  return { start, end: endsWithLeaves ? leaves.on + DAYS : reference.end };
}

function spanAt(feature: Feature, reference: Span, leaves: Leaves | null, carry: Carry): Span {
  if (feature.drive === "always" || reference.end - reference.start >= WHOLE_YEAR_DAYS) return reference;
  if (feature.kind === "spring foliage" || feature.kind === "summer foliage") return foliageSpan(feature, reference, leaves, carry);
  switch (feature.drive) {
    case "dormancy":
      return dormantSpan(feature, reference, leaves, carry);
    case "cooling": {
      const shift = coolingShift(carry.place, carry.model);
      return { start: reference.start + shift, end: feature.kind === "fall color" ? reference.end + shift : endAt(feature, reference, reference.start + shift, carry) };
    }
    case "heat": {
      const start = heatDay(reference.start, carry.place, "normal", carry.model);
      return { start, end: endAt(feature, reference, start, carry) };
    }
    case "light": {
      const start = lightDay(reference.start, carry.place);
      return { start, end: endAt(feature, reference, start, carry) };
    }
  }
}

/** Never empty, never over a year, and fall color gone with the leaves. */
function heldSpan(span: Span, feature: Feature, reference: Span, leaves: Leaves | null): Span {
  const length = reference.end - reference.start;
  // What shows while leaves are off is as long as they are, however short that is in the south.
  const share = feature.drive === "dormancy" ? 0 : SHORTEST_SHARE;
  const shortest = Math.min(length, Math.max(SHORTEST_DAYS, share * length));
  let { start, end } = span;
  while (end < start - DAYS / 2) end += DAYS;
  while (end - start >= DAYS) end -= DAYS;
  if (feature.kind === "fall color" && leaves) end = Math.min(end, leaves.off + Math.max(0, reference.end - leaves.referenceOff));
  if (end - start < shortest) end = start + shortest;
  // Rounded to whole days, a longer one would end on the day it begins.
  return { start, end: Math.min(end, start + DAYS - 1) };
}

function featureWindow(feature: Feature, leaves: Leaves | null, carry: Carry): SeasonWindow {
  const computed = carry.place.noBasis === null;
  const reference = computed ? referenceSpan(feature) : { start: feature.startDay, end: feature.startDay + ((feature.endDay - feature.startDay + DAYS) % DAYS) };
  const span = computed ? heldSpan(spanAt(feature, reference, leaves, carry), feature, reference, leaves) : reference;
  const { start, end } = span;
  const full = computed ? publishedFull(feature) : null;
  return {
    kind: feature.kind,
    feature,
    drive: feature.drive,
    startDay: wrap(start),
    endDay: wrap(end),
    peakDay: wrap(computed ? peakAt(feature, span, carry) : start + peakShare(feature) * (end - start)),
    spreadDays: computed ? spreadDays(feature.drive, reference.start, start - reference.start, carry.place) : REFERENCE_MONTHS_SPREAD,
    degreeDays: computed ? publishedFigure(feature) : null,
    ...(full === null ? {} : { degreeDaysFull: full }),
    sources: [feature.source],
  };
}

/**
 * Everything dated for one taxon at one place. At the reference climate it gives the dataset's own windows back,
 * but for onsets that a published degree-day figure dates, and for foliage and bark, which keep to the leaves' own dates.
 * Where the model has no basis (tropics, southern hemisphere) the windows are the reference's, and `basis` says so.
 */
export function taxonSeason(taxon: DatedFacts, place: PlaceYear, model: CarryModel = CARRY_MODEL): TaxonSeason {
  const carry = { place, model };
  const computed = place.noBasis === null;
  const leaves = computed ? leavesAt(taxon, carry) : null;
  return {
    windows: taxon.features.map((feature) => featureWindow(feature, leaves, carry)),
    leaves: leaves ? { onDay: wrap(leaves.on), offDay: wrap(leaves.off) } : taxon.leaves,
    ...(leaves ? { leafSpread: leafSpread(leaves, place) } : taxon.leaves ? { leafSpread: { onDays: REFERENCE_MONTHS_SPREAD, offDays: REFERENCE_MONTHS_SPREAD } } : {}),
    basis: computed ? "computed" : "reference months",
    basisNote: place.noBasis,
  };
}
