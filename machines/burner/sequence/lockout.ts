import { asStep, VENT_OPEN } from '../meta.ts';
import { burnerSetup } from '../setup.ts';

const step = asStep({
  step: 'lockout',
  phase: 'lockout',
  waitsFor: [{ input: 'resetPressed', wanted: true }],
  drives: [{ command: 'alarm' }, VENT_OPEN],
  target: 'rest',
  lasts: null,
  limit: null,
  failsAs: [],
  rules: ['SQ-43', 'SQ-44', 'SQ-45', 'SQ-46', 'SQ-47', 'SQ-48'],
  watch: 'rest',
});

/** Lockout: not an end, but nothing save an accepted reset leads on. */
export const lockout = burnerSetup.createStateConfig({
  id: 'lockout',
  ...step,
  entry: [...step.entry, 'raiseLockedOut'],
  on: {
    reset: {
      target: '#standby',
      actions: ['clearLockout', 'countReset', 'raiseAwake'],
      meta: { rule: 'SQ-45' },
    },
    trip: {
      guard: 'tripOutranksCause',
      actions: 'lockOutTripped',
      meta: { rule: 'SQ-43' },
    },
  },
});
