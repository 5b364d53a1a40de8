/** Times by rank, ms. */
export interface Times {
  readonly count: number;
  readonly p50Ms: number;
  readonly p99Ms: number;
  readonly mostMs: number;
}

export function timesOf(times: readonly number[]): Times {
  const sorted = Float64Array.from(times).sort();
  const at = (share: number): number =>
    sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
  return { count: sorted.length, p50Ms: at(0.5), p99Ms: at(0.99), mostMs: at(1) };
}
