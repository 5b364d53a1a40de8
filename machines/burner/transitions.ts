import type { Cause } from './terminals.ts';

/** To lockout, with the cause kept and the rule that says so. */
export function lockOut(cause: Cause, rule: string) {
  return {
    target: '#lockout',
    actions: { type: 'lockOut', params: { cause } },
    meta: { rule },
  } as const;
}

/** To lockout with the cause that supervision tripped on. */
export const LOCK_OUT_TRIPPED = {
  target: '#lockout',
  actions: 'lockOutTripped',
  meta: { rule: 'SQ-43' },
} as const;

/** Fuel shut at once, for a cause that the profile lets the burner start again from. */
export const RECYCLE = {
  guard: 'recycleAllowed',
  target: '#fuelShut',
  actions: ['noteStop', 'countRecycle'],
  meta: { rule: 'SQ-34' },
} as const;

/** Fuel shut at once, for a cause that needs no reset. */
export const SHUT_DOWN_SAFELY = {
  guard: 'tripClearsItself',
  target: '#fuelShut',
  actions: 'noteStop',
  meta: { rule: 'SQ-36' },
} as const;

/** From supervision: a trip, and from then on silence until lockout is left. */
export function tripFor(cause: Cause, rule: string) {
  return {
    target: 'silent',
    actions: { type: 'trip', params: { cause } },
    meta: { rule },
  } as const;
}
