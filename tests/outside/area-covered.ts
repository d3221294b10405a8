// Published tables of the area that a flat of plants covers, transcribed as printed, errors and all.
import type { Grid } from "../../lib/ground/spacing";

/** rows: spacing on center in inches, square feet as printed for so many plants. */
export type AreaCoveredTable = {
  readonly source: string;
  readonly grid: Grid;
  readonly plants: number;
  readonly rows: readonly (readonly [spacingIn: number, printedSqFt: number])[];
};

export const AREA_COVERED: readonly AreaCoveredTable[] = [
  {
    source: "Mississippi State Univ. Extension, Ground Covers (msucares.com/lawn/lawn/grasses/covers.html)",
    grid: "square",
    plants: 100,
    rows: [
      [4, 11],
      [6, 25],
      [8, 44],
      [10, 70],
      [12, 100],
      [15, 156],
      [18, 225],
      [24, 400],
    ],
  },
  {
    source: "W&W Nursery blog 2015-06-16, Ground Covers (blog.wwnursery.com/2015/06/ground-covers.html)",
    grid: "square",
    plants: 1,
    rows: [
      [4, 0.11],
      [5, 0.25],
      [8, 0.44],
      [10, 0.7],
      [12, 1.0],
      [15, 1.56],
      [18, 2.25],
      [24, 4.0],
      [36, 9.0],
      [48, 16.0],
    ],
  },
  {
    source: "Sunset, Bedding plants chart (sunset.com/garden/garden-basics/bedding-plants)",
    grid: "triangular",
    plants: 48,
    rows: [
      [4, 4.5],
      [6, 10],
      [8, 18],
      [10, 28.5],
      [12, 41.5],
    ],
  },
  {
    source: "Sunset, Bedding plants chart (sunset.com/garden/garden-basics/bedding-plants)",
    grid: "triangular",
    plants: 64,
    rows: [
      [4, 6],
      [6, 13.5],
      [8, 24.5],
      [10, 38.5],
      [12, 55.5],
    ],
  },
  {
    source: "McShane's Nursery, How to space flowers & ground covers (mcshanesnursery.com), cites Sunset Western Garden Book",
    grid: "triangular",
    plants: 48,
    rows: [
      [4, 4.5],
      [6, 10],
      [8, 18],
      [10, 28.5],
      [12, 41.5],
      [15, 64.5],
      [18, 92],
      [24, 165.5],
    ],
  },
  {
    source: "McShane's Nursery, How to space flowers & ground covers (mcshanesnursery.com), cites Sunset Western Garden Book",
    grid: "triangular",
    plants: 36,
    rows: [
      [4, 3.4],
      [6, 7.5],
      [8, 10.5],
      [10, 21.4],
      [12, 31],
      [15, 48.4],
      [18, 69],
      [24, 124],
    ],
  },
];
