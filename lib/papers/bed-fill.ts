// What would fill bare half-months here: every taxon of the dataset tried against the bed, by the same figures as the chart.
import type { Bed } from "../ground/bed";
import { bedRowAreas } from "../ground/bed-ground";
import { bedSizeArea, bedSizeOutline } from "../ground/bed-size";
import type { Outline } from "../ground/outline";
import type { Taxon } from "../plants/taxon";
import { LIGHTS, MOISTURES } from "../plants/vocabulary";
import { HALF_MONTHS } from "../season/half-months";
import { dayIsGrowing, type HalfMonthInterest, plantInterest } from "../season/interest";
import { seasonSentence } from "../season/sentence";
import type { PlacedTaxon, ViewPlace } from "./bed-view";

export type FillOffer = {
  readonly placed: PlacedTaxon;
  /** Plants that lift the bare half-months asked about to their target, or as far as one group of them sensibly can. */
  readonly quantity: number;
  readonly size: string;
  /** Interest in the barest half-month asked about, before and after, 0–1. */
  readonly before: number;
  readonly after: number;
  /** Half-months of the whole year that it takes off the bare list. */
  readonly closes: number;
  readonly sentence: string;
};

/** A plant wider than this share of the bed's narrow side leaves no room for what stands before it (common practice, no source). */
const WIDEST_SHARE = 0.75;
const SHARE_MAX = 0.25;
const GROUP = 3;
const OFFERS = 12;
const OFFERS_PER_GENUS = 1;
const OFFERS_PER_KIND = 4;
/** What a doubling of the count costs against a half-month closed: few plants that do the work go before many. */
const DOUBLING_COSTS = 0.9;

/** Whether a taxon suits place and site with nothing to fix: hardy, allowed, right light, moisture, soil, salt and deer. */
export function taxonSuits(taxon: Taxon, site: Bed["site"], place: Pick<ViewPlace, "zone" | "state">): boolean {
  if (place.zone !== null && (place.zone < taxon.zoneLow || place.zone >= taxon.zoneHigh + 1)) return false;
  if (place.state && taxon.regulated.some((r) => r.states.includes(place.state ?? ""))) return false;
  if (taxon.flags.includes("invasive-some-regions")) return false;
  if (!taxon.light.some((l) => LIGHTS.indexOf(l) === LIGHTS.indexOf(site.light))) return false;
  if (!taxon.moisture.some((m) => MOISTURES.indexOf(m) === MOISTURES.indexOf(site.moisture))) return false;
  if (site.ph !== null && (site.ph < taxon.ph[0] || site.ph > taxon.ph[1])) return false;
  if (site.salt !== "none" && taxon.salt === "low") return false;
  if (site.salt === "heavy" && taxon.salt !== "high") return false;
  return site.deer === "none" || taxon.deer === "rarely" || (site.deer === "some" && taxon.deer === "sometimes");
}

/** The shorter side of the box around an outline, feet. */
function narrowSideFt(outline: Outline): number {
  const side = (axis: 0 | 1) => Math.max(...outline.map((p) => p[axis])) - Math.min(...outline.map((p) => p[axis]));
  return Math.min(side(0), side(1));
}

/** Mean interest of one plant in a half-month, 0–1. */
function halfInterest(placed: PlacedTaxon, index: number, place: ViewPlace): number {
  const half = HALF_MONTHS[index];
  if (!half) return 0;
  let sum = 0;
  for (let day = half.startDay; day <= half.endDay; day += 3) sum += plantInterest(placed.season, day, dayIsGrowing(place, day));
  return sum / Math.ceil((half.endDay - half.startDay + 1) / 3);
}

/**
 * Offers for the half-months asked about, the best first: those that close most of the year's gaps with least ground.
 * @param sizeOf the size such a plant is usually set at
 * @param year years after planting, as in the view
 */
export function bedFill(
  bed: Bed,
  halfMonths: readonly HalfMonthInterest[],
  wanted: readonly number[],
  taxa: Iterable<PlacedTaxon>,
  place: ViewPlace,
  year: number,
  sizeOf: (taxon: Taxon) => string,
): FillOffer[] {
  const ground = bedSizeArea(bed.size);
  const present = new Set(bed.rows.map((row) => row.taxonId));
  const widest = WIDEST_SHARE * narrowSideFt(bedSizeOutline(bed.size));
  const offers: (FillOffer & { readonly rank: number })[] = [];
  for (const placed of taxa) {
    const { taxon } = placed;
    if (present.has(taxon.id) || !taxonSuits(taxon, bed.site, place)) continue;
    if ((taxon.spreadFt[0] + taxon.spreadFt[1]) / 2 > widest) continue;
    const gives = wanted.map((index) => halfInterest(placed, index, place));
    const least = Math.min(...gives);
    const mean = gives.reduce((a, b) => a + b, 0) / gives.length;
    if (mean < 0.2) continue;
    const size = sizeOf(taxon);
    const [crownSqFt = 0] = bedRowAreas({ areaSqFt: ground, rows: [{ taxon, quantity: 1, spacingFt: null, sizeText: size, existing: false }] }, year);
    const one = crownSqFt / ground;
    if (one <= 0) continue;
    const lacks = wanted.map((index, i) => {
      const half = halfMonths[index];
      const give = gives[i] ?? 0;
      return half && give > 0 ? Math.max(0, half.target - half.interest) / (give * one) : 0;
    });
    const needed = Math.max(1, Math.ceil(Math.max(...lacks) - 1e-9));
    const most = Math.max(1, Math.floor((SHARE_MAX * ground) / (Math.PI * ((taxon.spreadFt[0] + taxon.spreadFt[1]) / 4) ** 2)));
    const small = taxon.spreadFt[1] <= 4;
    const quantity = Math.min(most, small ? Math.max(GROUP, needed) : needed);
    const added = (index: number) => quantity * one * halfInterest(placed, index, place);
    const closes = halfMonths.filter((h) => h.bare && h.interest + added(h.index) >= h.target).length;
    const worst = wanted.reduce((low, index) => ((halfMonths[index]?.interest ?? 1) < (halfMonths[low]?.interest ?? 1) ? index : low), wanted[0] ?? 0);
    const before = halfMonths[worst]?.interest ?? 0;
    const others = HALF_MONTHS.reduce((sum, h) => sum + halfInterest(placed, h.index, place), 0) / HALF_MONTHS.length;
    offers.push({
      placed,
      quantity,
      size,
      before,
      after: Math.min(1, before + added(worst)),
      closes,
      sentence: seasonSentence(placed.season),
      rank: closes + 2 * mean + least + others - DOUBLING_COSTS * Math.log2(quantity),
    });
  }
  offers.sort((a, b) => b.rank - a.rank || a.placed.taxon.name.localeCompare(b.placed.taxon.name, "en"));
  const seen = new Map<string, number>();
  const more = (key: string, most: number) => {
    const count = seen.get(key) ?? 0;
    if (count >= most) return false;
    seen.set(key, count + 1);
    return true;
  };
  return offers
    .filter(({ placed: { taxon } }) => (seen.get(taxon.kind) ?? 0) < OFFERS_PER_KIND && more(taxon.genus, OFFERS_PER_GENUS) && more(taxon.kind, OFFERS_PER_KIND))
    .slice(0, OFFERS)
    .map(({ rank: _rank, ...offer }) => offer);
}
