// Degree days base 50 °F from 1 January that came together by a date in single years.

export type ObservedByDate = {
  readonly place: string;
  readonly lat: number;
  readonly lon: number;
  readonly dayOfYear: number;
  readonly years: string;
  readonly range: readonly [number, number];
  readonly method: "average" | "modified";
  readonly source: string;
};

export const OBSERVED_BY_DATE: readonly ObservedByDate[] = [
  {
    place: "Wooster, Ohio",
    lat: 40.78,
    lon: -81.92,
    dayOfYear: 78,
    years: "2018–2020",
    range: [36, 57],
    method: "modified",
    source: "Ohio State University Extension, BYGL node 1452",
  },
  {
    place: "Toledo, Ohio",
    lat: 41.6,
    lon: -83.7,
    dayOfYear: 135,
    years: "2010–2016",
    range: [275, 568],
    method: "modified",
    source: "Ohio State University Extension, BYGL node 296",
  },
  {
    place: "Milwaukee, Wisconsin",
    lat: 43.0,
    lon: -87.95,
    dayOfYear: 138,
    years: "2010–2011, and the stated norm 274",
    range: [143, 295],
    method: "modified",
    source: "degree-day tool of Michigan State University as quoted in 2011",
  },
];
