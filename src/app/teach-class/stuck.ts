import type { SeatState } from '../../classroom/index.ts';

/** No act for so long, s of the wall clock. */
export const STUCK_AFTER_S = 240;
/** So many lockouts, or resets, without a reading between. */
export const STUCK_LOCKOUTS = 2;
export const STUCK_RESETS = 3;

export const STUCK_REASONS = ['asks for help', 'lockouts', 'resets', 'no act'] as const;
export type StuckReason = (typeof STUCK_REASONS)[number];

/** How a seat's counts stood when it last read something. */
export interface SinceReading {
  readonly readings: number;
  readonly lockouts: number;
  readonly resets: number;
}

/** @param before null where nothing is known of the seat yet */
export function sinceReading(before: SinceReading | null, state: SeatState): SinceReading {
  const { readings, lockouts, resets } = state;
  const now = { readings, lockouts, resets };
  // Whoever has read nothing yet has had every lockout without a reading.
  if (before === null) return readings === 0 ? { readings, lockouts: 0, resets: 0 } : now;
  const hasRead = readings !== before.readings;
  const beganAnew = lockouts < before.lockouts || resets < before.resets;
  return hasRead || beganAnew ? now : before;
}

export interface StuckAround {
  readonly since: SinceReading;
  /** Its run stands still because the instructor wants it so, or because it only follows. */
  readonly heldUp: boolean;
  /** Since the work began, s of the wall clock: counts where nothing was done yet. */
  readonly begunAgoS: number;
}

/** Why somebody ought to look after a seat; null where it gets on. */
export function stuckOf(state: SeatState, around: StuckAround): StuckReason | null {
  const { since, heldUp, begunAgoS } = around;
  if (state.phase !== 'working') return null;
  if (state.asksHelp) return 'asks for help';
  if (state.lockouts - since.lockouts >= STUCK_LOCKOUTS) return 'lockouts';
  if (state.resets - since.resets >= STUCK_RESETS) return 'resets';
  const idleS = state.last?.agoS ?? begunAgoS;
  return !heldUp && idleS >= STUCK_AFTER_S ? 'no act' : null;
}
