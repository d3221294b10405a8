import type { Climate } from "./climate";
import { type PlaceYear, placeYear } from "./place-year";

/**
 * The climate the dataset's windows are written for: Wooster, Ohio, where published degree-day calendars were made.
 * NOAA 1981–2010 normals of station USC00339312, Wooster Experiment Station, 1,020 ft; a constant, so that a new table
 * of normals does not move the meaning of "early Apr". The hard tenth of freeze dates by symmetry (see climate-at.ts).
 */
export const REFERENCE_CLIMATE: Climate = {
  lat: 40.78,
  lon: -81.92,
  elevationFt: 1020,
  tminF: [18.2, 19.9, 27.3, 37.5, 47.3, 56.5, 60.2, 58.4, 50.8, 40.1, 32.1, 22.8],
  tmaxF: [34.5, 38.1, 48, 61, 70.9, 79.5, 83.1, 81.7, 74.6, 62.7, 50.7, 38.4],
  rainIn: [2.29, 1.97, 2.79, 3.65, 4.45, 4.45, 4.28, 3.88, 3.43, 3.07, 3.11, 2.71],
  // The common monthly sd times the station's k, 0.96.
  sdF: [11.48, 11.07, 10.32, 8.97, 7.56, 6.01, 5.4, 5.57, 6.91, 8.21, 9.34, 10.51],
  lastFreezeDay: 121,
  firstFreezeDay: 280,
  lastFreezeLateDay: 134,
  firstFreezeEarlyDay: 265,
  stations: [{ name: "WOOSTER EXP STN", state: "OH", miles: 0, weight: 1 }],
};

/** The reference climate's year; every date at a place is carried from here. */
export const REFERENCE_YEAR: PlaceYear = placeYear(REFERENCE_CLIMATE);
