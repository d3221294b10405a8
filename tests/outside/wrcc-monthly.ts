// Monthly and yearly degree days base 50 °F of twelve stations, over periods of their own.
// Latitude, longitude and elevation are the towns', to a mile and a hundred feet or so.
// Source: Western Regional Climate Center, growing degree day summaries of cooperative stations (wrcc.dri.edu).

export type MonthlyDegreeDays = {
  readonly coop: string;
  readonly name: string;
  readonly lat: number;
  readonly lon: number;
  readonly elevationFt: number;
  readonly state: string;
  readonly period: string;
  readonly months: readonly number[];
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
    year: 2206,
  },
];
