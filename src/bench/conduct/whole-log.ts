import type { TimedAction } from '../../engine/index.ts';

/** A log that already holds what the setup brings is the whole; else the two together. */
export function wholeLog(
  brought: readonly TimedAction[],
  log: readonly TimedAction[],
): TimedAction[] {
  const known = new Set(log.map((action) => JSON.stringify(action)));
  const missing = brought.filter((action) => !known.has(JSON.stringify(action)));
  return [...missing, ...log].sort((a, b) => a.t - b.t);
}
