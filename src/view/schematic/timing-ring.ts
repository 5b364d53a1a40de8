/** The last so many costs of a frame, for tests and for the page's own report. */
export interface TimingRing {
  add(ms: number): void;
  readonly count: number;
  median(): number;
  p95(): number;
  clear(): void;
}

const KEPT = 600;

export function createTimingRing(kept = KEPT): TimingRing {
  const costs = new Float64Array(kept);
  let added = 0;
  const quantile = (share: number): number => {
    const count = Math.min(added, kept);
    if (count === 0) return 0;
    const sorted = costs.slice(0, count).sort();
    return sorted[Math.min(count - 1, Math.floor(share * count))];
  };
  return {
    add(ms) {
      costs[added % kept] = ms;
      added += 1;
    },
    get count() {
      return Math.min(added, kept);
    },
    median: () => quantile(0.5),
    p95: () => quantile(0.95),
    clear() {
      added = 0;
    },
  };
}
