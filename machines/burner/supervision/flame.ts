import { burnerSetup } from '../setup.ts';

/**
 * Supervision of the flame. The relay's failure response time is the field's: what arrives here
 * has already stood for that long.
 */
export const flame = burnerSetup.createStateConfig({
  initial: 'silent',
  on: { 'locked out': '.silent' },
  states: {
    /** Fuel has just been shut, or the burner just powered: a flame signal may still be dying. */
    settling: {
      on: { 'rest proved': 'dark' },
      after: { flameOutS: { target: 'dark', meta: { rule: 'SQ-32' } } },
    },
    dark: {
      always: {
        guard: 'flameSeen',
        target: 'silent',
        actions: 'tripFlameSeen',
        meta: { rule: 'SQ-32' },
      },
      on: { 'fuel opened': 'trial' },
    },
    trial: {
      on: { 'flame proved': 'lit', 'fuel shut': 'settling' },
    },
    lit: {
      always: {
        guard: 'flameNotSeen',
        target: 'lost',
        actions: 'tripFlameLost',
        meta: { rule: 'SQ-33' },
      },
      on: { 'fuel shut': 'settling' },
    },
    lost: {
      on: { 'fuel shut': 'settling' },
    },
    silent: {
      on: { awake: 'settling' },
    },
  },
});
