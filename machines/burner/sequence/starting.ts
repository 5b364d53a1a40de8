import { burnerSetup } from '../setup.ts';
import { LOCK_OUT_TRIPPED, SHUT_DOWN_SAFELY } from '../transitions.ts';
import { provingBeforeStart, valveProving } from '../valve-proving.ts';
import { lightOff } from './light-off.ts';
import { prePurge } from './pre-purge.ts';

/** From the at-rest check passed to the main flame proved: whatever interrupts it, fuel is shut at once. */
export const starting = burnerSetup.createStateConfig({
  id: 'starting',
  initial: 'prePurge',
  always: {
    guard: 'heatNotWanted',
    target: '#fuelShut',
    actions: 'noteCallEnded',
    meta: { rule: 'SQ-27' },
  },
  on: { trip: [SHUT_DOWN_SAFELY, LOCK_OUT_TRIPPED] },
  states: {
    proving: {
      id: 'proving',
      ...valveProving(provingBeforeStart),
      onDone: { target: 'prePurge', meta: { rule: 'SQ-6' } },
    },
    prePurge,
    lightOff,
  },
});
