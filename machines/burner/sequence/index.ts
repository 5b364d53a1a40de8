import { burnerSetup } from '../setup.ts';
import { atRest } from './at-rest.ts';
import { firing } from './firing.ts';
import { lockout } from './lockout.ts';
import { shutdown } from './shutdown.ts';
import { standby } from './standby.ts';
import { starting } from './starting.ts';

/** The safe start and the way down from it. */
export const sequence = burnerSetup.createStateConfig({
  initial: 'powerUp',
  states: {
    powerUp: {
      always: [
        { guard: 'lockoutSaved', target: 'lockout', meta: { rule: 'SQ-44' } },
        { target: 'standby', actions: 'raiseAwake', meta: { rule: 'SQ-1' } },
      ],
    },
    standby,
    atRest,
    starting,
    firing,
    shutdown,
    lockout,
  },
});
