// Published tables of plants per area, transcribed as printed, errors and all. Square grid throughout ("spacing in both directions").
// Printed figures are facts of the publications named in `source`; what is wrong in them is asserted in the tests beside.

/** printed[i][j] plants for areasSqFt[i] at spacingsIn[j]. Fractions where the table is a multiplier for one square foot. */
export type PlantsPerAreaTable = {
  readonly source: string;
  readonly spacingsIn: readonly number[];
  readonly areasSqFt: readonly number[];
  readonly printed: readonly (readonly number[])[];
};

export const EXTENSION_TABLE: PlantsPerAreaTable = {
  source: "Mississippi State Univ. Extension, Ground Covers (msucares.com/lawn/lawn/grasses/covers.html)",
  spacingsIn: [6, 8, 9, 12, 18, 24],
  areasSqFt: [100, 200, 300, 400, 500, 600, 700, 800, 900, 1000],
  printed: [
    [400, 225, 178, 100, 45, 25],
    [800, 450, 356, 200, 90, 50],
    [1200, 675, 534, 300, 135, 75],
    [1600, 900, 712, 400, 180, 100],
    [2000, 1125, 890, 500, 225, 125],
    [2400, 1350, 1068, 600, 270, 150],
    [2800, 1575, 1246, 700, 315, 175],
    [3200, 1800, 1425, 800, 360, 200],
    [3600, 2025, 1602, 900, 405, 225],
    [4000, 2250, 1780, 1000, 450, 250],
  ],
};

export const GROUNDCOVER_CHART: PlantsPerAreaTable = {
  source: "Glover Perennials, Groundcover Spacing Chart (gloverperennials.com/?p=2150)",
  spacingsIn: [4, 6, 8, 10, 12, 15, 18, 24, 36],
  areasSqFt: [50, 100, 150, 200, 250, 300, 400, 500, 600, 700, 800, 900, 1000],
  printed: [
    [450, 200, 113, 72, 50, 32, 22, 13, 5],
    [900, 400, 225, 144, 100, 64, 44, 25, 11],
    [1350, 600, 338, 216, 150, 96, 66, 38, 17],
    [1800, 800, 450, 288, 200, 128, 88, 50, 22],
    [2250, 1000, 563, 360, 250, 160, 110, 63, 28],
    [2700, 1200, 675, 432, 300, 192, 132, 75, 33],
    [3600, 1600, 900, 576, 400, 256, 176, 100, 44],
    [4500, 2000, 1125, 720, 500, 320, 220, 125, 56],
    [5400, 2400, 1350, 864, 600, 384, 264, 150, 66],
    [6300, 2800, 1575, 1008, 700, 448, 308, 175, 77],
    [7200, 3200, 1800, 1152, 800, 512, 352, 200, 88],
    [8100, 3600, 2025, 1296, 900, 576, 396, 225, 99],
    [9000, 4000, 2250, 1440, 1000, 640, 440, 250, 111],
  ],
};

export const MULTIPLIERS: PlantsPerAreaTable = {
  source: "Wenke Garden Center, Groundcover Spacing (wenkegardencenter.com/groundcover-spacing)",
  spacingsIn: [4, 6, 8, 10, 12, 15, 18, 24],
  areasSqFt: [1],
  printed: [[9, 4, 2.28, 1.44, 1, 0.64, 0.44, 0.24]],
};

/** Single rows of a page: spacing in inches, area in square feet, plants as printed. */
export const SINGLE_ROWS = {
  source: "Hanover Farms, Planting and Spacing (hanoverfarms.com/planting-and-spacing/)",
  rows: [
    { spacingIn: 4, areaSqFt: 1, printed: 9 },
    { spacingIn: 6, areaSqFt: 1, printed: 4 },
    { spacingIn: 8, areaSqFt: 1, printed: 2.25 },
    { spacingIn: 12, areaSqFt: 1, printed: 1 },
    { spacingIn: 18, areaSqFt: 1000, printed: 444 },
  ],
} as const;
