/**
 * Cumulative normal degree days of New York, Central Park (USW00094728), at the end of days of year.
 * Source: NOAA US Climate Normals 1991–2020, as published.
 */
export const NEW_YORK_CUMULATIVE: readonly { readonly dayOfYear: number; readonly degreeDays: number }[] = [
  { dayOfYear: 90, degreeDays: 45 },
  { dayOfYear: 105, degreeDays: 99 },
  { dayOfYear: 120, degreeDays: 206 },
  { dayOfYear: 135, degreeDays: 374 },
  { dayOfYear: 151, degreeDays: 617 },
  { dayOfYear: 181, degreeDays: 1278 },
  { dayOfYear: 212, degreeDays: 2131 },
  { dayOfYear: 243, degreeDays: 2940 },
  { dayOfYear: 273, degreeDays: 3517 },
  { dayOfYear: 304, degreeDays: 3780 },
  { dayOfYear: 365, degreeDays: 3868 },
];

/** Monthly mean maxima and minima of the same station and period, °F. Source: NOAA US Climate Normals 1991–2020. */
export const NEW_YORK_1991_2020 = {
  tmaxF: [39.5, 42.2, 49.9, 61.8, 71.4, 79.7, 84.9, 83.3, 76.2, 64.5, 54, 44.3],
  tminF: [27.9, 29.5, 35.8, 45.5, 55, 64.4, 70.1, 68.9, 62.3, 51.4, 42, 33.8],
} as const;
