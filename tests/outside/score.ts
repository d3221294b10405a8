// How far computed dates lie from observed ones.

/** One comparison, in days or in months; positive error = computed too late. */
export type Comparison = { readonly name: string; readonly observed: number; readonly computed: number };

export type Score = {
  readonly n: number;
  readonly meanError: number;
  readonly meanAbsoluteError: number;
  readonly shareWithin: number;
  readonly worst: readonly Comparison[];
  readonly comparisons: readonly Comparison[];
};

export function scoreOf(comparisons: readonly Comparison[], tolerance: number): Score {
  const n = comparisons.length;
  const errors = comparisons.map((c) => c.computed - c.observed);
  const mean = (values: readonly number[]) => (n === 0 ? 0 : values.reduce((sum, x) => sum + x, 0) / n);
  return {
    n,
    meanError: mean(errors),
    meanAbsoluteError: mean(errors.map(Math.abs)),
    shareWithin: mean(errors.map((e) => (Math.abs(e) <= tolerance ? 1 : 0))),
    worst: [...comparisons].sort((a, b) => Math.abs(b.computed - b.observed) - Math.abs(a.computed - a.observed)).slice(0, 6),
    comparisons,
  };
}

/** Ranks 1…n, ties sharing their mean rank. */
function ranksOf(values: readonly number[]): readonly number[] {
  const sorted = [...values].sort((a, b) => a - b);
  return values.map((v) => (sorted.indexOf(v) + sorted.lastIndexOf(v)) / 2 + 1);
}

/** Spearman's rank correlation of computed against observed; 1 when fewer than three are there to order. */
export function rankCorrelation(comparisons: readonly Comparison[]): number {
  if (comparisons.length < 3) return 1;
  const [a, b] = [ranksOf(comparisons.map((c) => c.observed)), ranksOf(comparisons.map((c) => c.computed))];
  const mean = (comparisons.length + 1) / 2;
  const product = (x: readonly number[], y: readonly number[]) => x.reduce((sum, v, i) => sum + (v - mean) * ((y[i] ?? mean) - mean), 0);
  return product(a, b) / Math.sqrt(product(a, a) * product(b, b));
}
