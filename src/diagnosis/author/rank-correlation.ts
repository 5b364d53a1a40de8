/**
 * How far two lists order the same things alike: 1 the same order, 0 none of it, −1 reversed.
 *
 * Equation: Spearman's, the correlation of the ranks; equal values share the mean of their ranks.
 */
export function rankCorrelation(a: readonly number[], b: readonly number[]): number {
  const x = centred(ranksOf(a));
  const y = centred(ranksOf(b));
  const dot = (p: readonly number[], q: readonly number[]) =>
    p.reduce((sum, one, i) => sum + one * (q[i] ?? 0), 0);
  const spread = Math.sqrt(dot(x, x) * dot(y, y));
  return spread === 0 ? 0 : dot(x, y) / spread;
}

function ranksOf(values: readonly number[]): readonly number[] {
  return values.map((value) => {
    const below = values.filter((one) => one < value).length;
    const same = values.filter((one) => one === value).length;
    return below + (same - 1) / 2;
  });
}

function centred(values: readonly number[]): readonly number[] {
  const mean = values.reduce((a, b) => a + b, 0) / values.length;
  return values.map((value) => value - mean);
}
