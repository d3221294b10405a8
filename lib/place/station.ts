/** The tables the normals come from: shown wherever one of their figures is. No 1991–2020 table could be had. */
export const NORMALS_PERIOD = "1981–2010";
export const NORMALS_SOURCE = "NOAA 1981–2010 US Climate Normals";

/**
 * A station's 32 °F dates, days of year of the season they belong to: a first freeze after New Year is over 365,
 * a last freeze before New Year under 1. NOAA's 90 % columns are the *mild* tail: the last freeze comes on that
 * date or later in nine years of ten, the first on that date or earlier.
 */
export type StationFreeze =
  | { readonly kind: "dates"; readonly lastDay: number; readonly lastMildDay: number; readonly firstDay: number; readonly firstMildDay: number }
  /** No freeze in the median year. */
  | { readonly kind: "never" }
  /** A risk of frost all the year round. */
  | { readonly kind: "all year" }
  | { readonly kind: "not recorded" };

/** One weather station's normals. Arrays hold twelve months, January first. */
export type Station = {
  readonly id: string;
  readonly name: string;
  readonly state: string;
  readonly lat: number;
  readonly lon: number;
  readonly elevationFt: number;
  readonly tminF: readonly number[];
  readonly tmaxF: readonly number[];
  /** Inches; null where the station has temperatures only. */
  readonly rainIn: readonly number[] | null;
  /** Day-to-day standard deviation of the daily mean, °F: the common monthly figure times the station's k. */
  readonly sdF: readonly number[];
  readonly freeze: StationFreeze;
  /** NOAA's own degree days base 50 °F of a year, kept to check ours against. */
  readonly degreeDaysYear: number;
};
