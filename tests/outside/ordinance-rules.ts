// Published rules on how plants are set and how fast they are to close, transcribed as printed. Lengths in feet unless the name says otherwise.

/** Spacing of covers that still counts as close enough, by the size sold. */
export const COVER_SPACING_MOST = {
  source: "clause collection (lawinsider.com/dictionary/ground-cover)",
  rows: [
    { size: "4 in pot", mostFt: 1.5 },
    { size: "#1", mostFt: 3 },
    { size: "#2", mostFt: 3 },
  ],
} as const;

/** Shares of the planted ground that shrubs and low plants must cover at maturity, and how soon covers must be well established. */
export const COVER_ASKED = [
  { source: "Antioch CA, Ord. 897-C-S 1994 (amlegal antioch_ca/0-0-0-28994)", share: 0.75, by: "maturity" },
  { source: "Anaheim CA (amlegal anaheim_ca/0-0-0-69857): covers well established within 18 months", share: null, by: "18 months" },
] as const;

/** Hedges and screens. apartFt: most between plants of a row; rowsApartFt: most between rows, the second offset by half the spacing. */
export const SCREENS = [
  { source: "York County VA Sec. 5-24 (yorkcounty.gov)", apartFt: 6, rowsApartFt: 6 },
  { source: "Cheboygan MI, large deciduous shrubs (amlegal cheboygan_mi/0-0-0-17172)", apartFt: 4, rowsApartFt: null },
  { source: "Cheboygan MI, narrow evergreens (amlegal cheboygan_mi/0-0-0-17172)", apartFt: 6, rowsApartFt: null },
  { source: "Cheboygan MI, tree-like shrubs (amlegal cheboygan_mi/0-0-0-17172)", apartFt: 10, rowsApartFt: null },
] as const;

/** At least one shrub of 1 to 15 gallons for so many feet of planter. */
export const SHRUB_A_PLANTER_FT = { source: "Ventura County CA 8178-8.4.1.3, Ord. 4492, 2016 (ventura-ca.elaws.us)", feet: 5 } as const;

/** A hedge set 3 ft on center and 36 in high is 8 ft high in three years (southern Florida). */
export const HEDGE_GROWN = { source: "Wellington FL, question and answer 358 (wellingtonfl.gov)", apartFt: 3, fromFt: 3, toFt: 8, years: 3 } as const;

/** Of like plants in groups of at least three, no further apart than their general growth width. */
export const GROUPS = { source: "Ogden UT (amlegal ogdencity_ut/0-0-0-37659)", least: 3 } as const;

/** A planting list may set groups of three, five or seven; odd or even is not seen above seven (one source) or nine (another). */
export const ODD_GROUPS = [
  { source: "Sustainable Technologies (TRCA/STEP), planting design", sizes: [3, 5, 7] },
  { source: "getplants4less.com 2012: odd or even stops being seen above seven", sizes: [3, 5, 7] },
  { source: "Neil Sperry, questions and answers (neilsperry.com): odd numbers matter up to about nine", sizes: [3, 5, 7, 9] },
] as const;
