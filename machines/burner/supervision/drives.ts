import { burnerSetup } from '../setup.ts';
import type { Cause } from '../terminals.ts';

/**
 * Supervision of positions and speed against the point they were sent to. Light-off is one point
 * for all of them; on the curve each is watched for itself. After a trip there is no such point
 * any more, so both are at once back at rest.
 */
export const drives = burnerSetup.createStateConfig({
  type: 'parallel',
  states: {
    positions: {
      initial: 'kept',
      states: {
        kept: {
          always: { guard: 'positionOff', target: 'off', meta: { rule: 'SQ-39' } },
        },
        off: {
          always: { guard: 'positionKept', target: 'kept', meta: { rule: 'SQ-39' } },
          after: {
            curveDeviationS: [
              {
                guard: 'lightOffLeft',
                ...deviationTrip('light-off position not proved'),
              },
              deviationTrip('position left its curve'),
            ],
          },
        },
      },
    },
    speed: {
      initial: 'kept',
      states: {
        kept: {
          always: { guard: 'speedOff', target: 'off', meta: { rule: 'SQ-39' } },
        },
        off: {
          always: { guard: 'speedKept', target: 'kept', meta: { rule: 'SQ-39' } },
          after: {
            curveDeviationS: deviationTrip('speed left its curve'),
          },
        },
      },
    },
  },
});

function deviationTrip(cause: Cause) {
  return {
    target: 'kept',
    actions: { type: 'trip', params: { cause } },
    meta: { rule: 'SQ-39' },
  } as const;
}
