// Worked examples of degree days with the publication each comes from.

export type WorkedExample = {
  readonly method: "average" | "modified" | "single sine" | "single triangle";
  readonly max: number;
  readonly min: number;
  readonly base: number;
  readonly upper: number | null;
  readonly expected: number;
  readonly source: string;
};

export const WORKED_EXAMPLES: readonly WorkedExample[] = [
  { method: "average", max: 65, min: 40, base: 50, upper: null, expected: 2.5, source: 'Michigan State University, "Calculating Growing Degree Days"' },
  { method: "average", max: 60, min: 35, base: 50, upper: null, expected: 0, source: "Michigan State University (average method gives zero though max > base)" },
  { method: "average", max: 67, min: 46, base: 50, upper: null, expected: 6.5, source: 'Cornell NEWA blog "what are"' },
  { method: "average", max: 76, min: 44, base: 50, upper: null, expected: 10, source: "Cornell Plant Pathology, Christmas-tree GDD page" },
  { method: "average", max: 95, min: 51, base: 60, upper: null, expected: 13, source: "Western Regional Climate Center, GDD summary footnote" },
  { method: "average", max: 63, min: 43, base: 50, upper: null, expected: 3, source: "OSU Extension column, Springfield News-Sun" },
  { method: "average", max: 64, min: 62, base: 50, upper: null, expected: 13, source: "OSU Extension column, Akron Beacon Journal 2019-03-07" },
  { method: "average", max: 21, min: 15, base: 10, upper: null, expected: 8, source: "Univ. Wisconsin SAGE atlas (°C)" },
  { method: "average", max: 65, min: 40, base: 50, upper: null, expected: 2.5, source: "a Massachusetts growers' note, degree days from 1 March" },
  { method: "modified", max: 70, min: 50, base: 50, upper: 86, expected: 10, source: "Iowa State Agron 541 lesson 2b" },
  { method: "modified", max: 100, min: 86, base: 50, upper: 86, expected: 36, source: "Iowa State Agron 541: 36 is the maximum possible daily value" },
  { method: "modified", max: 54, min: 40, base: 50, upper: 86, expected: 2, source: "Bangor Daily News column 2006-04-15 (50,86 method)" },
  { method: "modified", max: 61, min: 30, base: 50, upper: 86, expected: 5.5, source: "OSU BYGL node 1452 (high 61 -> +5.5; low below base)" },
  { method: "modified", max: 67, min: 30, base: 50, upper: 86, expected: 8.5, source: "OSU BYGL node 1452 (high 67 -> +8.5)" },
  { method: "single sine", max: 14, min: 7, base: 12, upper: 33, expected: 0.47, source: "documented output of an R package for thermal ecology, degree_days() (°C)" },
  { method: "single triangle", max: 14, min: 7, base: 12, upper: 33, expected: 0.29, source: "documented output of an R package for thermal ecology, degree_days() (°C)" },
];
