/** What the engine knows of a place's weather: NOAA 1981–2010 normals, interpolated. Arrays hold twelve months, January first. */
export type Climate = {
  readonly lat: number;
  readonly lon: number;
  readonly elevationFt: number;
  readonly tminF: readonly number[];
  readonly tmaxF: readonly number[];
  readonly rainIn: readonly number[];
  /** Day-to-day standard deviation of the daily mean, °F, already scaled by the stations' k (model.md §1). */
  readonly sdF: readonly number[];
  /** Day of year of the median last and first 32 °F; null where frost does not come (or comes all year). */
  readonly lastFreezeDay: number | null;
  readonly firstFreezeDay: number | null;
  /** The last freeze that is passed in nine years of ten, and the first that comes in one year of ten. */
  readonly lastFreezeLateDay: number | null;
  readonly firstFreezeEarlyDay: number | null;
  /** Stations used, nearest first, with their weight. */
  readonly stations: readonly { readonly name: string; readonly state: string; readonly miles: number; readonly weight: number }[];
};
