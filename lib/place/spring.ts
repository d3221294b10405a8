/** A spring as springs go, one that comes early, one that comes late: one year in six is milder than "mild", one in six harder than "hard". */
export const SPRINGS = ["mild", "normal", "hard"] as const;
export type Spring = (typeof SPRINGS)[number];

/**
 * One standard deviation of the mean of a season, as a share of the day-to-day standard deviation of its days. Weather lasts
 * for days, so that a season averages over fewer than ninety independent ones. Set so that the leaf-out dates of a spring
 * scatter as they do at Harvard Forest (scripts/calibrate-phenology.ts).
 */
export const SEASON_SD_SHARE = 0.3;

/** How many sd of the season this spring lies above the normal. */
export const SPRING_SIGN: Readonly<Record<Spring, number>> = { mild: 1, normal: 0, hard: -1 };
