// What may stand in for a plant that falls short, ranked by what the bed would lose: its season role first, then its size, then its look.
import type { Taxon } from "../plants/taxon";
import { HALF_MONTHS } from "../season/half-months";
import { dayIsGrowing, type GrowingSeason, plantInterest } from "../season/interest";
import type { TaxonSeason } from "../season/window";

/** A plant with its season at the job's place. */
export type SeasonedTaxon = {
  readonly taxon: Pick<Taxon, "id" | "name" | "kind" | "habit" | "foliage" | "heightFt" | "spreadFt" | "light" | "zoneLow" | "zoneHigh">;
  readonly season: TaxonSeason;
};

export type Substitute = {
  readonly taxonId: string;
  readonly name: string;
  /** 0–1, best first. */
  readonly score: number;
  /** Share of the lost plant's interest that it makes good, weighted by how much the bed needs each half-month. */
  readonly seasonShare: number;
  readonly sizeLikeness: number;
  readonly lookLikeness: number;
  /** Half-months in which the bed would still miss the lost plant ("early May"). */
  readonly missing: readonly string[];
};

const SHARES = { season: 0.6, size: 0.25, look: 0.15 } as const;
/** Below this interest a plant says nothing in a half-month. */
const SHOWS = 0.15;

/** Interest by half-month, 0–1, on its middle day. */
function interestYear(season: TaxonSeason, growing: GrowingSeason): number[] {
  return HALF_MONTHS.map(({ startDay, endDay }) => {
    const day = Math.round((startDay + endDay) / 2);
    return plantInterest(season, day, dayIsGrowing(growing, day));
  });
}

const middle = ([low, high]: readonly [number, number]): number => (low + high) / 2;
/** 1 the same, 0 half or double. */
const lengthLikeness = (a: number, b: number): number => Math.max(0, 1 - Math.abs(Math.log2(a / b)));

function lookLikeness(a: SeasonedTaxon, b: SeasonedTaxon): number {
  const colors = new Set(a.season.windows.map((window) => window.feature.color));
  const shared = b.season.windows.filter((window) => colors.has(window.feature.color)).length / Math.max(1, b.season.windows.length);
  return (
    0.3 * Number(a.taxon.kind === b.taxon.kind) + 0.3 * Number(a.taxon.habit === b.taxon.habit) + 0.2 * Number(a.taxon.foliage === b.taxon.foliage) + 0.2 * Math.min(1, shared)
  );
}

/**
 * Ranks candidates for a plant that falls short. @param need weight of each of the 24 half-months for the bed (larger where it has little else);
 * all alike when left out. The lost plant itself is passed over. Hardiness, light and bans are the caller's findings, not judged here.
 */
export function substitutesRanked(lost: SeasonedTaxon, candidates: readonly SeasonedTaxon[], growing: GrowingSeason, need: readonly number[] = []): Substitute[] {
  const own = interestYear(lost.season, growing);
  const weight = (i: number): number => need[i] ?? 1;
  const whole = own.reduce((sum, interest, i) => sum + interest * weight(i), 0);
  return candidates
    .filter(({ taxon }) => taxon.id !== lost.taxon.id)
    .map((candidate): Substitute => {
      const year = interestYear(candidate.season, growing);
      const kept = own.reduce((sum, interest, i) => sum + Math.min(interest, year[i] ?? 0) * weight(i), 0);
      const seasonShare = whole > 0 ? kept / whole : 1;
      const sizeLikeness =
        (lengthLikeness(middle(lost.taxon.heightFt), middle(candidate.taxon.heightFt)) + lengthLikeness(middle(lost.taxon.spreadFt), middle(candidate.taxon.spreadFt))) / 2;
      const look = lookLikeness(lost, candidate);
      return {
        taxonId: candidate.taxon.id,
        name: candidate.taxon.name,
        score: SHARES.season * seasonShare + SHARES.size * sizeLikeness + SHARES.look * look,
        seasonShare,
        sizeLikeness,
        lookLikeness: look,
        missing: HALF_MONTHS.filter(({ index }) => (own[index] ?? 0) >= SHOWS && (year[index] ?? 0) < (own[index] ?? 0) / 2).map(({ label }) => label),
      };
    })
    .sort((a, b) => b.score - a.score || (a.name < b.name ? -1 : 1));
}
