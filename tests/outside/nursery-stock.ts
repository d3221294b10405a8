// Published facts of nursery stock: true volumes of containers, trees and root balls by caliper, growth classes, and how far apart covers are set.

/** True volumes by container class; liters as printed. */
export const CONTAINER_VOLUMES = [
  {
    source: "Note on pot sizes (bookcliffgardens.com): true volumes as required by the Colorado Department of Agriculture and NIST",
    rows: [
      ["#1", 0.74, 2.8],
      ["#2", 1.6, 6.0],
      ["#3", 2.4, 9.0],
      ["#5", 3.9, 14.9],
      ["#6", 5.0, 19.0],
      ["#7", 6.5, 24.6],
      ["#10", 9.0, 34.1],
      ["#15", 14.5, 54.9],
      ["#20", 19.6, 74.2],
      ["#24 (24 in fiber)", 29.6, 112.2],
      ["#25", 27.6, 104.5],
    ],
  },
  {
    source: "Supplier's table quoted at davesgarden.com, forum thread 1290516",
    rows: [
      ["#1T", 0.75, 2.84],
      ["#2T", 1.6, 6.06],
      ["#3T", 2.8, 10.6],
      ["#5T", 4.1, 15.52],
      ["#7T", 6.2, 23.47],
      ["#15", 14.35, 54.31],
      ["#25", 25.7, 97.31],
    ],
  },
  {
    source: "Blow-molded pots, bonsainut.com posts/1098490; liters not given",
    rows: [
      ["#1", 0.734, null],
      ["#2", 1.66, null],
      ["#3", 2.296, null],
      ["#5", 3.843, null],
    ],
  },
] as const satisfies readonly { source: string; rows: readonly (readonly [label: string, gallons: number, liters: number | null])[] }[];

/** Shade trees by caliper: smallest root ball, least height of usual and of slower-grown kinds (null: not given). */
export const SHADE_TREES = [
  {
    size: "1.5 in cal",
    ballIn: 20,
    heightFt: 8,
    slowHeightFt: null,
    source: "Batavia, Illinois city code (codelibrary.amlegal.com/codes/bataviail/latest/batavia_il/0-0-0-5657), after the nursery stock standard",
  },
  { size: "2 in cal", ballIn: 24, heightFt: 10, slowHeightFt: 8, source: "UF/IFAS, Root ball size standards (1996 stock standard), as quoted on other pages" },
  { size: "3 in cal", ballIn: 32, heightFt: 12, slowHeightFt: 9.5, source: "same" },
  { size: "4 in cal", ballIn: 42, heightFt: 14, slowHeightFt: 10.5, source: "same" },
] as const;

/** Calipers of container trees. No source: common practice, from memory of the stock standard. */
export const CONTAINER_TREES = [
  { size: "#5", caliperIn: [0.5, 0.75], source: "practice" },
  { size: "#7", caliperIn: [0.75, 1], source: "practice" },
  { size: "#15", caliperIn: [1, 1.5], heightFt: [8, 10], source: "practice" },
  { size: "#25", caliperIn: [1.75, 2], heightFt: [10, 12], source: "practice" },
] as const;

/** Inches of growth in a year by class; null: open. */
export const GROWTH_CLASSES = [
  { source: "Missouri Department of Conservation, Tree Growth Information (mdc.mo.gov)", slow: [null, 12], medium: [12, 24], fast: [24, null] },
  { source: "Tree and Shrub Growth Rates (melindamyers.com)", slow: [null, 12], medium: [13, 24], fast: [25, null] },
] as const;

/** Spacing of groundcovers and the time to cover, as published. */
export const COVER_TIMES = [
  { plant: "pachysandra", spacing: "8 in", seasons: 1, said: "begins to fill by end of summer", source: "agardenforthehouse.com 2009" },
  { plant: "periwinkle", spacing: "12 in", seasons: 2, said: "fastest", source: "Question and answer 50644, 2007 (garden.org/nga/searchqa/answer/50644/)" },
  { plant: "periwinkle", spacing: "18 in", seasons: 4, said: "reasonable coverage in a few years", source: "same" },
] as const;

/** The widest that the same answer goes, "if the budget is tight": slower than 18 in. */
export const COVER_WIDEST = { plant: "periwinkle", spacing: "24 in", source: "Question and answer 50644, 2007 (garden.org/nga/searchqa/answer/50644/)" } as const;

/** Seasons to fill at the closest, the usual and the farthest spacing printed on a cover's tag. */
export const TAG_SEASONS = { closest: 1, usual: 1.5, farthest: 2, source: "Wenke Garden Center, Groundcover Spacing (wenkegardencenter.com/groundcover-spacing)" } as const;

/** Most covers, spacing in inches: "about one year to establish and begin filling". */
export const MOST_COVERS = { spacingIn: [8, 18], years: 1, source: "Greenwood Nursery (greenwoodnursery.com/planting-ground-cover-plants)" } as const;

/** Trailing roses, Virginia creeper and other large covers: no closer than so many feet. */
export const LARGE_COVERS = { leastFt: 5, source: "agroconection.com/planting-ground-covers.html (text as in a USDA Home and Garden Bulletin on ground covers)" } as const;

/** Conifers by the feet they reach in ten years and the inches they grow in one; null: open. */
export const CONIFER_CLASSES = {
  source: "American Conifer Society, as given by Melinda Myers",
  rows: [
    { label: "miniature", inchesAYear: [0, 1], feetAtTen: [0, 1] },
    { label: "dwarf", inchesAYear: [1, 6], feetAtTen: [1, 6] },
    { label: "intermediate", inchesAYear: [6, 12], feetAtTen: [6, 15] },
    { label: "large", inchesAYear: [12, null], feetAtTen: [15, null] },
  ],
} as const;

/** The nursery trade's classes, inches a year: "24 (12–24)" and "36 (24–36)" from slow-moderate to moderate-fast; beyond is very fast. */
export const TRADE_CLASSES = { slow: [1, 12], medium: [12, 24], fast: [24, 36], source: "Question and answer 30657, 2004 (garden.org/frogs/view/30657/)" } as const;

/** Years at which a label's "mature size" is reached. */
export const LABEL_YEARS = { years: 10, source: "Midwest Garden Tips; G. Weigel 2012: nearly always the size at ten years" } as const;

/** Usual centers of covers, as published. */
export const USUAL_CENTERS = [
  {
    plants: ["ivy", "pachysandra", "periwinkle"],
    spacing: "1 ft",
    source: "agroconection.com/planting-ground-covers.html (text as in a USDA Home and Garden Bulletin on ground covers)",
  },
  { plants: ["cranberry cotoneaster", "spreading juniper", "wintercreeper"], spacing: "3 ft", source: "same" },
] as const;
