import { asStep, describedAs, entering } from '../meta.ts';
import { burnerSetup } from '../setup.ts';
import { LOCK_OUT_TRIPPED, lockOut, RECYCLE, SHUT_DOWN_SAFELY } from '../transitions.ts';

/** Everything a burner with a main flame drives. */
export const FIRING_DRIVES = [
  { command: 'safetyRelay' },
  { command: 'fan' },
  { command: 'pilotValve', when: { ignition: ['intermittent pilot'] } },
  { command: 'upstreamValve' },
  { command: 'downstreamValve' },
] as const;

const lowFireHold = {
  step: 'low-fire hold',
  drives: FIRING_DRIVES,
  target: 'low-fire',
  limit: 'warmUpLimitS',
  failsAs: [
    { cause: 'flame lost in service' },
    { cause: 'airflow lost in service' },
    { cause: 'warm-up not satisfied' },
  ],
  rules: ['SQ-25', 'SQ-33', 'SQ-34', 'SQ-38'],
  watch: 'firing',
} as const;

/** In service: held at low fire until warm, then released to the load. */
export const firing = burnerSetup.createStateConfig({
  id: 'firing',
  initial: 'lowFireHold',
  always: {
    guard: 'heatNotWanted',
    target: '#runDown',
    actions: 'noteCallEnded',
    meta: { rule: 'SQ-27' },
  },
  on: {
    trip: [RECYCLE, SHUT_DOWN_SAFELY, LOCK_OUT_TRIPPED],
  },
  states: {
    lowFireHold: {
      ...entering(lowFireHold),
      initial: 'holding',
      after: { warmUpLimitS: lockOut('warm-up not satisfied', 'SQ-25') },
      states: {
        holding: {
          ...describedAs({
            ...lowFireHold,
            phase: 'holding',
            waitsFor: [
              { input: 'flame', wanted: true },
              { input: 'airProved', wanted: true },
            ],
            lasts: 'lowFireHoldS',
          }),
          after: { lowFireHoldS: { target: 'warming', meta: { rule: 'SQ-25' } } },
        },
        warming: {
          ...describedAs({
            ...lowFireHold,
            phase: 'warming',
            waitsFor: [
              { input: 'warmUpSatisfied', wanted: true },
              { input: 'flame', wanted: true },
              { input: 'airProved', wanted: true },
            ],
            lasts: null,
          }),
          always: { guard: 'warmUpSatisfied', target: '#modulation', meta: { rule: 'SQ-25' } },
        },
      },
    },
    modulation: {
      id: 'modulation',
      ...asStep({
        step: 'modulation',
        phase: 'modulation',
        waitsFor: [
          { input: 'callForHeat', wanted: true },
          { input: 'flame', wanted: true },
          { input: 'airProved', wanted: true },
          { input: 'positionsOnCurve', wanted: true },
          { input: 'speedOnCurve', wanted: true, when: { fan: ['variable speed'] } },
        ],
        drives: FIRING_DRIVES,
        target: 'curve',
        lasts: null,
        limit: null,
        failsAs: [
          { cause: 'flame lost in service' },
          { cause: 'airflow lost in service' },
          { cause: 'position left its curve' },
          { cause: 'speed left its curve', when: { fan: ['variable speed'] } },
        ],
        rules: ['SQ-26', 'SQ-33', 'SQ-34', 'SQ-38', 'SQ-39'],
        watch: 'modulating',
      }),
    },
  },
});
