import { describedAs, entering, type StateMeta, VENT_OPEN } from '../meta.ts';
import { burnerSetup } from '../setup.ts';
import { LOCK_OUT_TRIPPED, lockOut } from '../transitions.ts';

const atRestCheck = {
  step: 'at-rest check',
  target: 'rest',
  watch: 'rest',
} as const;
const relayFailure = [{ cause: 'safety relay did not follow' }] satisfies StateMeta['failsAs'];

/** The at-rest check: nothing has moved yet, so everything must be seen at rest. */
export const atRest = burnerSetup.createStateConfig({
  id: 'atRest',
  ...entering(atRestCheck),
  initial: 'relayDropped',
  always: { guard: 'heatNotWanted', target: '#standby', meta: { rule: 'SQ-5' } },
  on: {
    trip: [
      {
        guard: 'tripClearsItself',
        target: '#standby',
        actions: 'noteStop',
        meta: { rule: 'SQ-36' },
      },
      LOCK_OUT_TRIPPED,
    ],
  },
  states: {
    relayDropped: {
      ...describedAs({
        ...atRestCheck,
        phase: 'relay dropped',
        waitsFor: [{ input: 'safetyRelayFeedback', wanted: false }],
        drives: [VENT_OPEN],
        lasts: 'relaySettleS',
        limit: 'relaySettleS',
        failsAs: relayFailure,
        rules: ['SQ-3'],
      }),
      after: {
        relaySettleS: [
          { guard: 'relayDroppedOut', target: 'relayPickedUp', meta: { rule: 'SQ-3' } },
          lockOut('safety relay did not follow', 'SQ-3'),
        ],
      },
    },
    relayPickedUp: {
      ...describedAs({
        ...atRestCheck,
        phase: 'relay picked up',
        waitsFor: [{ input: 'safetyRelayFeedback', wanted: true }],
        drives: [{ command: 'safetyRelay' }, VENT_OPEN],
        lasts: 'relaySettleS',
        limit: 'relaySettleS',
        failsAs: relayFailure,
        rules: ['SQ-3'],
      }),
      after: {
        relaySettleS: [
          { guard: 'relayPickedUp', target: 'rest', meta: { rule: 'SQ-3' } },
          lockOut('safety relay did not follow', 'SQ-3'),
        ],
      },
    },
    rest: {
      ...describedAs({
        ...atRestCheck,
        phase: 'rest',
        waitsFor: [
          { input: 'safetyRelayFeedback', wanted: true },
          { input: 'airProved', wanted: false },
          { input: 'flame', wanted: false },
          { input: 'upstreamValveClosed', wanted: true, when: { proofOfClosure: [true] } },
          { input: 'downstreamValveClosed', wanted: true, when: { proofOfClosure: [true] } },
          { input: 'gasPressureAboveLow', wanted: true },
          { input: 'gasPressureBelowHigh', wanted: true },
        ],
        drives: [{ command: 'safetyRelay' }, VENT_OPEN],
        lasts: null,
        limit: 'atRestLimitS',
        failsAs: [
          { cause: 'safety relay did not follow' },
          { cause: 'air proved with fan at rest' },
          { cause: 'flame seen at rest' },
          { cause: 'valve not proved closed', when: { proofOfClosure: [true] } },
          { cause: 'gas pressure low' },
          { cause: 'gas pressure high' },
        ],
        rules: ['SQ-4', 'SQ-32'],
      }),
      always: [
        {
          guard: 'readyToProveValves',
          target: '#proving',
          actions: 'raiseRestProved',
          meta: { rule: 'SQ-6' },
        },
        {
          guard: 'readyToPurge',
          target: '#prePurge',
          actions: 'raiseRestProved',
          meta: { rule: 'SQ-4' },
        },
      ],
      after: {
        atRestLimitS: [
          {
            guard: 'relayDroppedOut',
            ...lockOut('safety relay did not follow', 'SQ-4'),
          },
          {
            guard: 'airStillProved',
            ...lockOut('air proved with fan at rest', 'SQ-4'),
          },
          {
            guard: 'flameSeen',
            ...lockOut('flame seen at rest', 'SQ-4'),
          },
          {
            guard: 'valvesNotProvedClosed',
            ...lockOut('valve not proved closed', 'SQ-4'),
          },
          {
            guard: 'gasPressureLow',
            ...lockOut('gas pressure low', 'SQ-4'),
          },
          lockOut('gas pressure high', 'SQ-4'),
        ],
      },
    },
  },
});
