// The places that plants can be looked at: those of the jobs, and the reference climate.

import type { ViewPlace } from "../papers/bed-view";
import { type Place, placeLabel } from "../place/place";
import type { PlaceYear } from "../place/place-year";
import { REFERENCE_YEAR } from "../place/reference";
import { NORMAL_SETTING } from "../place/setting";
import { zipState } from "../place/zip-state";
import type { SeenAt } from "../plants/own-taxon";
import { viewPlaceOf } from "./job-context";
import { jobFind, jobList, jobPlace } from "./jobs";
import { placeYearOf } from "./places";

/** A choice of the select; `key` is a job's id, or "reference". */
export type PlaceChoice = { readonly key: string; readonly label: string };
export const REFERENCE_KEY = "reference";
const REFERENCE_LABEL = "Wooster, Ohio (reference climate)";

/** The place plants are looked at. */
export type PlantPlace = PlaceChoice & {
  readonly viewPlace: ViewPlace;
  readonly year: PlaceYear;
  /** What a window seen here is stored with. */
  readonly seenAt: SeenAt;
};

const REFERENCE_PLACE: PlantPlace = {
  key: REFERENCE_KEY,
  label: REFERENCE_LABEL,
  viewPlace: { zone: null, state: null, lastFreezeDay: REFERENCE_YEAR.climate.lastFreezeDay, firstFreezeDay: REFERENCE_YEAR.climate.firstFreezeDay },
  year: REFERENCE_YEAR,
  seenAt: null,
};

function plantPlaceOf(jobId: string, place: Place): PlantPlace | null {
  const year = placeYearOf(place);
  if (!year) return null;
  const label = placeLabel(place);
  const { lat, lon, elevationFt } = year.climate;
  return { key: jobId, label, viewPlace: viewPlaceOf(place), year, seenAt: { label, lat, lon, elevationFt } };
}

/**
 * The choices and the one chosen: the one asked for, else the place of the job last worked on, else the reference climate.
 * Jobs at one place are one choice; jobs without a place are none.
 */
export async function plantPlaces(asked: string | null): Promise<{ readonly choices: readonly PlaceChoice[]; readonly chosen: PlantPlace }> {
  const jobs = (await jobList()).filter((job) => !job.archived);
  const seen = new Map<string, PlaceChoice>();
  for (const job of jobs) {
    const { zip, lat } = job.placeKey;
    const label = placeLabel({
      zip: zip ?? null,
      town: job.placeKey.town ?? "",
      state: job.placeKey.state ?? (zip ? zipState(zip) : null),
      lat: lat ?? null,
      lon: job.placeKey.lon ?? null,
    });
    if ((zip || lat != null) && (!seen.has(label) || job.id === asked)) seen.set(label, { key: job.id, label });
  }
  const choices = [...seen.values(), { key: REFERENCE_KEY, label: REFERENCE_LABEL }];
  const candidates = asked === REFERENCE_KEY ? [] : [asked, ...choices.map((c) => c.key)];
  for (const key of candidates) {
    const job = key && key !== REFERENCE_KEY ? await jobFind(key) : null;
    // Open ground and a normal spring: what is seen and corrected here is carried by the place, not by one job's wall.
    const chosen = job ? plantPlaceOf(job.id, await jobPlace({ ...job, placeKey: { ...job.placeKey, ...NORMAL_SETTING } })) : null;
    if (chosen) return { choices, chosen };
  }
  return { choices, chosen: REFERENCE_PLACE };
}
