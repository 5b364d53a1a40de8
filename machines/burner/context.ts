import type { Cause, StepName, Variant } from './terminals.ts';
import type { Timings } from './timings.ts';
import type { WatchName } from './watches.ts';

/** Every press of the reset, accepted or not: a count is evidence of how someone worked. */
export interface ResetRecord {
  readonly accepted: number;
  /** Pressed while the cause still stood. */
  readonly refused: number;
  readonly held: number;
  /** Times of accepted resets within the profile's window, ms of the simulated clock. */
  readonly timesMs: readonly number[];
  /** As many within the window as the profile calls repeated; never taken back. */
  readonly repeated: boolean;
}
export const NO_RESETS: ResetRecord = {
  accepted: 0,
  refused: 0,
  held: 0,
  timesMs: [],
  repeated: false,
};

/** What outlasts a loss of power. */
export interface SavedLockout {
  readonly cause: Cause | null;
  readonly step: StepName | null;
  readonly resets: ResetRecord;
}

export interface BurnerInput {
  readonly variant: Variant;
  readonly timings: Timings;
  /** The inputs as they stand when the machine is powered. */
  readonly word: number;
  readonly nowMs: () => number;
  readonly saved?: SavedLockout | undefined;
}

export interface BurnerContext {
  readonly variant: Variant;
  readonly timings: Timings;
  readonly nowMs: () => number;
  readonly word: number;
  readonly step: StepName;
  readonly watch: WatchName;
  readonly cause: Cause | null;
  readonly lockoutStep: StepName | null;
  /** Why the burner last left firing or starting without a lockout. */
  readonly stopReason: Cause | 'call for heat ended' | null;
  readonly recycles: number;
  /** Valve proving completed since fuel was last commanded. */
  readonly valvesProved: boolean;
  readonly resets: ResetRecord;
}

export function contextFrom(input: BurnerInput): BurnerContext {
  return {
    variant: input.variant,
    timings: input.timings,
    nowMs: input.nowMs,
    word: input.word,
    step: 'standby',
    watch: 'rest',
    cause: input.saved?.cause ?? null,
    lockoutStep: input.saved?.step ?? null,
    stopReason: null,
    recycles: 0,
    valvesProved: false,
    resets: input.saved?.resets ?? NO_RESETS,
  };
}
