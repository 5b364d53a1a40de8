import { asStep, VENT_OPEN } from '../meta.ts';
import { burnerSetup } from '../setup.ts';
import { LOCK_OUT_TRIPPED, lockOut, RECYCLE, SHUT_DOWN_SAFELY } from '../transitions.ts';
import { provingAfterRunDown, valveProving } from '../valve-proving.ts';
import { FIRING_DRIVES } from './firing.ts';

const AIR_AND_VENT = [{ command: 'fan' }, VENT_OPEN] as const;

/** Run down, valve proving where it comes after, and post-purge. A self-clearing trip only hastens it. */
export const shutdown = burnerSetup.createStateConfig({
  initial: 'runDown',
  on: {
    trip: [
      { guard: 'tripClearsItself', meta: { rule: 'SQ-36' } },
      // A flame lost in the very instant that another cause shut the fuel counts all the same.
      { guard: 'recycleAllowed', actions: ['noteStop', 'countRecycle'], meta: { rule: 'SQ-34' } },
      LOCK_OUT_TRIPPED,
    ],
  },
  states: {
    runDown: {
      id: 'runDown',
      ...asStep({
        step: 'run down',
        phase: 'to low fire',
        waitsFor: [
          { input: 'flame', wanted: true },
          { input: 'airProved', wanted: true },
        ],
        drives: FIRING_DRIVES,
        target: 'low-fire',
        lasts: 'runDownS',
        limit: 'runDownS',
        failsAs: [{ cause: 'flame lost in service' }, { cause: 'airflow lost in service' }],
        rules: ['SQ-28', 'SQ-33', 'SQ-38'],
        watch: 'firing',
      }),
      on: {
        trip: [RECYCLE, SHUT_DOWN_SAFELY, LOCK_OUT_TRIPPED],
      },
      after: { runDownS: { target: 'fuelShut', meta: { rule: 'SQ-28' } } },
    },
    fuelShut: {
      id: 'fuelShut',
      ...shutsFuel(),
      always: { guard: 'valvesProvedClosed', target: 'shut', meta: { rule: 'SQ-29' } },
      after: {
        valveCloseLimitS: [
          { guard: 'notClosedInTime', ...lockOut('valve not proved closed', 'SQ-29') },
          { target: 'shut', meta: { rule: 'SQ-29' } },
        ],
      },
    },
    shut: {
      always: [
        { guard: 'provingDueAfterRunDown', target: 'proving', meta: { rule: 'SQ-30' } },
        { target: 'postPurge', meta: { rule: 'SQ-31' } },
      ],
    },
    proving: {
      ...valveProving(provingAfterRunDown),
      on: {
        trip: [
          {
            guard: 'tripClearsItself',
            target: 'postPurge',
            actions: 'noteStop',
            meta: { rule: 'SQ-36' },
          },
          LOCK_OUT_TRIPPED,
        ],
      },
      onDone: { target: 'postPurge', meta: { rule: 'SQ-30' } },
    },
    postPurge: {
      ...asStep({
        step: 'post-purge',
        phase: 'post-purge',
        waitsFor: [],
        drives: AIR_AND_VENT,
        target: 'light-off',
        lasts: 'postPurgeS',
        limit: 'postPurgeS',
        failsAs: [{ cause: 'flame seen at rest' }],
        rules: ['SQ-31', 'SQ-32'],
        watch: 'rest',
      }),
      after: { postPurgeS: { target: '#standby', meta: { rule: 'SQ-31' } } },
    },
  },
});

function shutsFuel() {
  const step = asStep({
    step: 'run down',
    phase: 'fuel shut',
    waitsFor: [
      { input: 'upstreamValveClosed', wanted: true, when: { proofOfClosure: [true] } },
      { input: 'downstreamValveClosed', wanted: true, when: { proofOfClosure: [true] } },
    ],
    drives: [{ command: 'safetyRelay' }, ...AIR_AND_VENT],
    target: 'light-off',
    lasts: null,
    limit: 'valveCloseLimitS',
    failsAs: [
      { cause: 'valve not proved closed', when: { proofOfClosure: [true] } },
      { cause: 'flame seen at rest' },
    ],
    rules: ['SQ-29', 'SQ-32'],
    watch: 'rest',
  });
  return { ...step, entry: [...step.entry, 'raiseFuelShut' as const] };
}
