import { burnerSetup } from '../setup.ts';
import { tripFor } from '../transitions.ts';

/**
 * Supervision of the mains and of the control circuit behind it. Without volts in their band
 * neither fuse nor relay is judged: what they show then is the supply's doing.
 */
export const supply = burnerSetup.createStateConfig({
  initial: 'silent',
  on: { 'locked out': '.silent' },
  states: {
    inBand: {
      always: [
        {
          guard: 'supplyOut',
          target: 'out',
          actions: { type: 'trip', params: { cause: 'supply out of band' } },
          meta: { rule: 'SQ-40' },
        },
        { guard: 'fuseOpen', ...tripFor('control fuse open', 'SQ-41') },
        { guard: 'relayLost', ...tripFor('safety relay did not follow', 'SQ-42') },
      ],
    },
    out: {
      always: { guard: 'supplyBack', target: 'inBand', meta: { rule: 'SQ-40' } },
    },
    silent: {
      on: { awake: 'inBand' },
    },
  },
});
