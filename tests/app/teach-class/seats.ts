import type { SeatState } from '../../../src/classroom/index.ts';

/** A seat at work that has done nothing yet. */
export function stateOf(change: Partial<SeatState>): SeatState {
  return {
    phase: 'working',
    step: 'purge',
    stepS: 12,
    runS: 80,
    running: true,
    lockout: null,
    last: null,
    suspects: [],
    flags: 0,
    readings: 0,
    resets: 0,
    lockouts: 0,
    progress: 0,
    answered: 0,
    right: 0,
    asksHelp: false,
    applied: 0,
    ...change,
  };
}
