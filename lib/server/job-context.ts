// A job with its place worked out: what every screen of the job starts from.
import type { ViewPlace } from "../papers/bed-view";
import type { Place } from "../place/place";
import { REFERENCE_YEAR } from "../place/reference";
import type { Taxon } from "../plants/taxon";
import type { TaxonSeason } from "../season/window";
import { jobFind, jobPlace, type StoredJob } from "./jobs";
import { placeYearOf } from "./places";
import { seasonOf, taxaHeld } from "./taxa";

export type JobContext = {
  readonly job: StoredJob;
  readonly place: Place;
  readonly viewPlace: ViewPlace;
  /** False: the place has no climate, so the dates shown are the reference climate's. */
  readonly dated: boolean;
  readonly seasonOf: (taxon: Taxon) => TaxonSeason;
};

export function viewPlaceOf(place: Place): ViewPlace {
  const climate = place.climate ?? REFERENCE_YEAR.climate;
  return { zone: place.zone, state: place.state, lastFreezeDay: climate.lastFreezeDay, firstFreezeDay: climate.firstFreezeDay };
}

/** The job's context; null when there is no such job. */
export async function jobContext(jobId: string): Promise<JobContext | null> {
  const job = await jobFind(jobId);
  if (!job) return null;
  const [place, held] = await Promise.all([jobPlace(job), taxaHeld()]);
  const year = placeYearOf(place) ?? REFERENCE_YEAR;
  return { job, place, viewPlace: viewPlaceOf(place), dated: place.climate !== null, seasonOf: (taxon) => seasonOf(held, taxon, year) };
}
