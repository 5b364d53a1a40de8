import { burnerSetup } from '../setup.ts';

/**
 * Supervision of the reset button. It counts only from lockout on, and only a press that began
 * there and ended within its time; a button already in, or held, must first be let go.
 */
export const reset = burnerSetup.createStateConfig({
  initial: 'notNeeded',
  states: {
    notNeeded: {
      on: { 'locked out': 'armed' },
    },
    armed: {
      always: [
        { guard: 'resetPressed', target: 'held', meta: { rule: 'SQ-46' } },
        { target: 'released', meta: { rule: 'SQ-45' } },
      ],
    },
    released: {
      always: { guard: 'resetPressed', target: 'pressed', meta: { rule: 'SQ-45' } },
    },
    pressed: {
      always: [
        {
          guard: 'resetReleasedAndAccepted',
          target: 'notNeeded',
          actions: 'raiseReset',
          meta: { rule: 'SQ-45' },
        },
        {
          guard: 'resetReleased',
          target: 'released',
          actions: 'countRefusedReset',
          meta: { rule: 'SQ-47' },
        },
      ],
      after: { resetPressS: { target: 'held', meta: { rule: 'SQ-46' } } },
    },
    held: {
      entry: 'countHeldReset',
      always: { guard: 'resetReleased', target: 'released', meta: { rule: 'SQ-46' } },
    },
  },
});
