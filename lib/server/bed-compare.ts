// A bed dated at a second place, for the page that sets the two side by side.
import { type BedComparison, bedComparison, type ComparedSide, comparedSide } from "../papers/bed-compare";
import type { PlacedTaxon } from "../papers/bed-view";
import { type Place, placeLabel } from "../place/place";
import { type BedContext, bedContext } from "./bed-context";
import { viewPlaceOf } from "./job-context";
import { neighborFind, type PlaceKey, placeFind, placeYearOf } from "./places";
import { seasonOf, taxaHeld } from "./taxa";

/** Miles of a degree of latitude. */
const DEGREE_MILES = 69;
const FAR_MILES = 300;
/** A town so near the point 300 miles off still is 300 miles off. */
const ABOUT_MILES = 60;

export type SuggestedPlace = { readonly label: string; readonly zip: string };

export type BedCompareAnswer = {
  readonly context: BedContext;
  readonly here: ComparedSide;
  readonly suggestions: readonly SuggestedPlace[];
  /** Null until a place is asked for that has a climate. */
  readonly other: { readonly place: Place; readonly there: ComparedSide; readonly comparison: BedComparison } | null;
  readonly fault: { readonly field: string; readonly message: string } | null;
};

/** ZIP codes some 300 miles to the north and south of a place, where there are any. */
async function suggestedPlaces({ lat, lon }: Pick<Place, "lat" | "lon">): Promise<SuggestedPlace[]> {
  if (lat === null || lon === null) return [];
  const sides = [
    ["north", 1],
    ["south", -1],
  ] as const;
  const found = await Promise.all(
    sides.map(async ([side, sign]) => {
      const near = await neighborFind(lat + (sign * FAR_MILES) / DEGREE_MILES, lon, ABOUT_MILES);
      return near ? [{ label: `about ${FAR_MILES} miles ${side}: ${[near.state, near.zip].filter(Boolean).join(" ")}`, zip: near.zip }] : [];
    }),
  );
  return found.flat();
}

async function sideAt(context: BedContext, place: Place): Promise<ComparedSide | null> {
  const year = placeYearOf(place);
  if (!year) return null;
  const held = await taxaHeld();
  const placed: Record<string, PlacedTaxon> = Object.fromEntries(Object.entries(context.placed).map(([id, { taxon }]) => [id, { taxon, season: seasonOf(held, taxon, year) }]));
  return comparedSide(placeLabel(place), context.stored.bed, placed, viewPlaceOf(place), context.job.job.targets);
}

/**
 * A bed at its own place and at another; null when the bed is gone. The spot, the climate and the spring planned for are the
 * job's at both, so that only the place differs.
 * @param key the other place; null when none is asked for yet
 */
export async function bedCompare(bedId: string, key: PlaceKey | null): Promise<BedCompareAnswer | null> {
  const context = await bedContext(bedId);
  if (!context) return null;
  const { place } = context.job;
  const here = comparedSide(placeLabel(place), context.stored.bed, context.placed, context.job.viewPlace, context.job.job.targets);
  const answer = { context, here, suggestions: await suggestedPlaces(place), other: null, fault: null };
  if (!key) return answer;
  const found = await placeFind({ ...key, ...place.setting });
  if (found.kind === "fault") return { ...answer, fault: { field: found.field, message: found.message } };
  const there = await sideAt(context, found.place);
  if (!there) return { ...answer, fault: { field: key.zip ? "zip" : "lat", message: found.place.fault ?? "No climate is known there." } };
  return { ...answer, other: { place: found.place, there, comparison: bedComparison(here, there) } };
}
