/** Square feet that a cubic yard covers one inch deep: 27 cu ft × 12. */
export const SQ_FT_INCHES_PER_CU_YD = 324;

/** Cubic yards of mulch for an area in square feet at a depth in inches (not in feet: dividing feet by 324 is a published slip). Not rounded. */
export function mulchCuYd(areaSqFt: number, depthIn: number): number {
  return (areaSqFt * depthIn) / SQ_FT_INCHES_PER_CU_YD;
}
