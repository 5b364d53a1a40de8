import { describedAs, entering, VENT_OPEN } from '../meta.ts';
import { burnerSetup } from '../setup.ts';
import { LOCK_OUT_TRIPPED, lockOut } from '../transitions.ts';

const atStandby = {
  step: 'standby',
  waitsFor: [
    { input: 'callForHeat', wanted: true },
    { input: 'emergencyStopClear', wanted: true },
    { input: 'supplyInBand', wanted: true },
    { input: 'controlFuseMade', wanted: true },
    { input: 'waterAboveFirst', wanted: true },
    { input: 'waterAboveSecond', wanted: true },
    { input: 'highLimitMade', wanted: true },
    { input: 'furnacePressureInBand', wanted: true },
  ],
  drives: [VENT_OPEN],
  target: 'rest',
  lasts: null,
  watch: 'rest',
} as const;

/** Standby: ready, or called for and held back by a limit that clears itself. */
export const standby = burnerSetup.createStateConfig({
  id: 'standby',
  ...entering(atStandby),
  initial: 'idle',
  on: { trip: [{ guard: 'tripClearsItself', meta: { rule: 'SQ-2' } }, LOCK_OUT_TRIPPED] },
  states: {
    idle: {
      ...describedAs({
        ...atStandby,
        phase: 'idle',
        limit: null,
        failsAs: [{ cause: 'flame seen at rest' }],
        rules: ['SQ-1', 'SQ-32'],
      }),
      always: [
        { guard: 'startAllowed', target: '#atRest', actions: 'beginStart', meta: { rule: 'SQ-1' } },
        { guard: 'heatWanted', target: 'blocked', meta: { rule: 'SQ-2' } },
      ],
    },
    blocked: {
      ...describedAs({
        ...atStandby,
        phase: 'blocked',
        limit: 'startBlockedLimitS',
        failsAs: [
          { cause: 'flame seen at rest' },
          { cause: 'supply out of band' },
          { cause: 'water low' },
        ],
        rules: ['SQ-2', 'SQ-32'],
      }),
      always: [
        { guard: 'startAllowed', target: '#atRest', actions: 'beginStart', meta: { rule: 'SQ-1' } },
        { guard: 'heatNotWanted', target: 'idle', meta: { rule: 'SQ-2' } },
      ],
      after: {
        startBlockedLimitS: [
          {
            guard: 'supplyOut',
            ...lockOut('supply out of band', 'SQ-2'),
          },
          lockOut('water low', 'SQ-2'),
        ],
      },
    },
  },
});
