/** What a run that follows another remembers of what it was told. */
import type { Run, TimedAction } from '../../engine/index.ts';
import type { ToldChange } from './to-worker.ts';

export interface Following {
  /** As it was told. */
  log: readonly TimedAction[];
  headS: number;
  mode: ToldChange['mode'];
  speed: number;
  /** Moments that it has not passed yet, with what the other run's hash was there; in order. */
  checks: readonly Check[];
  /** How often it was found to be another run. */
  differed: number;
  /** Between frames. */
  atS: number;
  lastMs: number;
}
/** A moment whose hash was told. */
export interface Check {
  readonly s: number;
  readonly hash: string;
}

export function startFollowing(told: ToldChange, run: Run, nowMs: number): Following {
  return {
    log: told.add,
    headS: told.headS,
    mode: told.mode,
    speed: told.speed,
    checks: [],
    differed: 0,
    atS: run.timeS(),
    lastMs: nowMs,
  };
}
