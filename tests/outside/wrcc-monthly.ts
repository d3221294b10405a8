// Monthly and yearly degree days base 50 °F of twelve stations, over periods of their own, whole years of raw daily means: (max + min) / 2 − base, negative days
// discarded; no correction for the hour of observation, no ceiling.
// Latitude, longitude and elevation are the towns', to a mile and a hundred feet or so.
// Source: Western Regional Climate Center, growing degree day summaries of cooperative stations (wrcc.dri.edu/cgi-bin/cliGCStG.pl, a page a station).

export type MonthlyDegreeDays = {
  readonly coop: string;
  readonly name: string;
  readonly lat: number;
  readonly lon: number;
  readonly elevationFt: number;
  readonly state: string;
  readonly period: string;
  readonly months: readonly number[];
  /** The same page's row for base 40 °F: nearly (mean − 40) × days, so it tells the mean temperature of each month of the same years. */
  readonly monthsBase40: readonly number[];
  readonly year: number;
};

export const WRCC_MONTHLY: readonly MonthlyDegreeDays[] = [
  {
    coop: "052790",
    name: "EVERGREEN",
    lat: 39.63,
    lon: -105.32,
    elevationFt: 7000,
    state: "CO",
    period: "1961–2012",
    months: [0, 0, 1, 10, 80, 260, 444, 389, 178, 25, 1, 0],
    monthsBase40: [6, 9, 42, 117, 306, 552, 754, 698, 447, 192, 43, 8],
    year: 1388,
  },
  {
    coop: "056925",
    name: "RED FEATHER LAKES 2 SE",
    lat: 40.79,
    lon: -105.57,
    elevationFt: 8200,
    state: "CO",
    period: "1941–1990",
    months: [0, 0, 0, 2, 24, 153, 326, 281, 100, 16, 0, 0],
    monthsBase40: [3, 3, 9, 50, 180, 419, 635, 588, 344, 146, 16, 3],
    year: 902,
  },
  {
    coop: "053027",
    name: "FORT LUPTON 2 SE",
    lat: 40.07,
    lon: -104.79,
    elevationFt: 4910,
    state: "CO",
    period: "1910–1976",
    months: [0, 2, 10, 68, 253, 513, 719, 656, 359, 109, 4, 1],
    monthsBase40: [12, 29, 88, 257, 540, 811, 1029, 966, 649, 344, 70, 17],
    year: 2694,
  },
  {
    coop: "050370",
    name: "ASPEN",
    lat: 39.19,
    lon: -106.82,
    elevationFt: 7913,
    state: "CO",
    period: "1948–1979",
    months: [0, 0, 0, 2, 49, 201, 382, 319, 132, 17, 0, 0],
    monthsBase40: [0, 1, 7, 69, 265, 486, 692, 628, 405, 175, 14, 0],
    year: 1103,
  },
  {
    coop: "356546",
    name: "PENDLETON WSO AIRPORT",
    lat: 45.7,
    lon: -118.84,
    elevationFt: 1487,
    state: "OR",
    period: "1928–2006",
    months: [3, 5, 21, 89, 268, 462, 714, 671, 409, 129, 12, 4],
    monthsBase40: [45, 67, 173, 331, 570, 762, 1024, 981, 707, 391, 112, 55],
    year: 2788,
  },
  {
    coop: "352564",
    name: "ECHO",
    lat: 45.74,
    lon: -119.2,
    elevationFt: 640,
    state: "OR",
    period: "1903–1971",
    months: [3, 5, 32, 134, 347, 548, 779, 703, 427, 159, 15, 4],
    monthsBase40: [44, 75, 215, 405, 655, 848, 1089, 1013, 726, 432, 128, 54],
    year: 3157,
  },
  {
    coop: "350858",
    name: "BOARDMAN",
    lat: 45.84,
    lon: -119.7,
    elevationFt: 300,
    state: "OR",
    period: "1971–2012",
    months: [1, 3, 23, 114, 324, 527, 758, 716, 423, 122, 12, 2],
    monthsBase40: [32, 61, 197, 378, 632, 827, 1068, 1026, 722, 389, 124, 37],
    year: 3024,
  },
  {
    coop: "358780",
    name: "UNITY",
    lat: 44.43,
    lon: -118.19,
    elevationFt: 4030,
    state: "OR",
    period: "1908–2007",
    months: [0, 0, 1, 12, 87, 221, 451, 410, 184, 30, 0, 0],
    monthsBase40: [1, 3, 32, 120, 317, 504, 760, 719, 453, 191, 16, 2],
    year: 1395,
  },
  {
    coop: "473244",
    name: "GRANTSBURG",
    lat: 45.78,
    lon: -92.68,
    elevationFt: 1100,
    state: "WI",
    period: "1950–2012",
    months: [0, 0, 4, 48, 221, 439, 603, 531, 255, 71, 3, 0],
    monthsBase40: [0, 1, 25, 176, 491, 737, 913, 841, 531, 237, 31, 1],
    year: 2176,
  },
  {
    coop: "478349",
    name: "SUPERIOR",
    lat: 46.7,
    lon: -92.03,
    elevationFt: 630,
    state: "WI",
    period: "1909–2012",
    months: [0, 0, 1, 12, 84, 269, 503, 472, 223, 49, 1, 0],
    monthsBase40: [0, 1, 10, 75, 283, 555, 812, 782, 501, 217, 25, 1],
    year: 1615,
  },
  {
    coop: "325730",
    name: "MC HENRY 3 W",
    lat: 47.57,
    lon: -98.66,
    elevationFt: 1510,
    state: "ND",
    period: "1909–2012",
    months: [0, 0, 1, 32, 175, 384, 566, 510, 223, 47, 1, 0],
    monthsBase40: [0, 0, 13, 133, 422, 679, 876, 819, 483, 187, 15, 0],
    year: 1938,
  },
  {
    coop: "213587",
    name: "HAWLEY 3 NE",
    lat: 46.92,
    lon: -96.28,
    elevationFt: 1200,
    state: "MN",
    period: "1948–2012",
    months: [0, 0, 3, 36, 220, 441, 635, 561, 242, 67, 1, 0],
    monthsBase40: [0, 0, 20, 155, 480, 739, 945, 871, 511, 230, 21, 1],
    year: 2206,
  },
];
