// A smooth year through twelve monthly means.

export const DAYS = 365;
export const MONTH_LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
/**
 * A constant, five harmonics and the sine of the sixth: four harmonics carry the year's shape, and the rest is what it takes
 * for every month to keep its mean exactly (twelve coefficients for twelve means). With four alone, months of dry western
 * stations miss theirs by 0.6 °F, which is a tenth of April's degree days.
 */
const HARMONICS = 5;
const LAST = 6;

/** 1, cos, sin, cos 2, sin 2 … sin 6 on a day of year; mid-day, so that day 1 stands half a day into the year. */
function basisOnDay(dayOfYear: number): number[] {
  const angle = (2 * Math.PI * (dayOfYear - 0.5)) / DAYS;
  return [1, ...Array.from({ length: HARMONICS }, (_, i) => [Math.cos((i + 1) * angle), Math.sin((i + 1) * angle)]).flat(), Math.sin(LAST * angle)];
}

const DAILY_BASIS: readonly (readonly number[])[] = Array.from({ length: DAYS }, (_, i) => basisOnDay(i + 1));

/** The basis averaged over each month: fitting these keeps monthly means, fitting mid-month values would flatten the year. */
const MONTHLY_BASIS: readonly (readonly number[])[] = (() => {
  let day = 0;
  return MONTH_LENGTHS.map((length) => {
    const rows = DAILY_BASIS.slice(day, day + length);
    day += length;
    return rows[0]?.map((_, column) => rows.reduce((sum, row) => sum + (row[column] ?? 0), 0) / length) ?? [];
  });
})();

/** Gauss–Jordan with pivoting; `matrix` is square and regular, `right` has as many rows. */
function linearSolve(matrix: readonly (readonly number[])[], right: readonly (readonly number[])[]): number[][] {
  const rows = matrix.map((row, i) => [...row, ...(right[i] ?? [])]);
  const size = matrix.length;
  for (let c = 0; c < size; c++) {
    let best = c;
    for (let r = c + 1; r < size; r++) if (Math.abs(rows[r]?.[c] ?? 0) > Math.abs(rows[best]?.[c] ?? 0)) best = r;
    const pivotRow = rows[best] ?? [];
    rows[best] = rows[c] ?? [];
    rows[c] = pivotRow;
    const pivot = pivotRow[c] ?? 1;
    for (let j = 0; j < pivotRow.length; j++) pivotRow[j] = (pivotRow[j] ?? 0) / pivot;
    rows.forEach((row, r) => {
      const factor = row[c] ?? 0;
      if (r === c || factor === 0) return;
      for (let j = 0; j < row.length; j++) row[j] = (row[j] ?? 0) - factor * (pivotRow[j] ?? 0);
    });
  }
  return rows.map((row) => row.slice(size));
}

/** Solved once for all: coefficients = FIT · monthly means. */
const FIT: readonly (readonly number[])[] = linearSolve(
  MONTHLY_BASIS,
  MONTHLY_BASIS.map((_, row) => MONTHLY_BASIS.map((_, column) => (row === column ? 1 : 0))),
);

const dot = (a: readonly number[], b: readonly number[]): number => a.reduce((sum, x, i) => sum + x * (b[i] ?? 0), 0);

/**
 * A daily series (365, 1 January first) whose means over the months are exactly the ones given: harmonics
 * fitted to the monthly means of the harmonics themselves, not to mid-month values (model.md §1).
 * @param monthly twelve means, any unit, January first
 */
export function harmonicSeries(monthly: readonly number[]): readonly number[] {
  const coefficients = FIT.map((row) => dot(row, monthly));
  return DAILY_BASIS.map((basis) => dot(basis, coefficients));
}

/** Means over the months of a daily series of 365. */
export function monthlyMeans(daily: readonly number[]): readonly number[] {
  let day = 0;
  return MONTH_LENGTHS.map((length) => {
    const sum = daily.slice(day, day + length).reduce((total, x) => total + x, 0);
    day += length;
    return sum / length;
  });
}
