/**
 * How much colder it is higher up, °F per 1,000 ft, by month: first for minima, then for maxima. Fitted to the stations of the
 * contiguous states against their neighbors (scripts/calibrate-climate.ts prints the fit); within the spans of model.md §1 but
 * for winter nights, when cold air lies in the valleys.
 */
const MINIMA_F_A_THOUSAND = [1.7, 2.2, 2.5, 2.5, 2.5, 2.6, 2.5, 2.5, 2.2, 1.9, 1.7, 1.8] as const;
const MAXIMA_F_A_THOUSAND = [2.6, 3.3, 3.9, 4, 3.9, 3.8, 3.8, 3.7, 3.7, 3.5, 3.2, 2.6] as const;

/** Degrees to add to twelve monthly minima and maxima when they are carried up by `riseFt` (down when negative). */
export function lapseShiftsF(riseFt: number): { readonly minima: readonly number[]; readonly maxima: readonly number[] } {
  const shift = (rate: number) => (-rate * riseFt) / 1000;
  return { minima: MINIMA_F_A_THOUSAND.map(shift), maxima: MAXIMA_F_A_THOUSAND.map(shift) };
}
