import { asStep, describedAs, entering, VENT_OPEN } from '../meta.ts';
import { burnerSetup } from '../setup.ts';
import { lockOut } from '../transitions.ts';

const PILOT_FITTED = { ignition: ['interrupted pilot', 'intermittent pilot'] } as const;
const DIRECT_SPARK = { ignition: ['direct spark'] } as const;
const AIR_AND_RELAY = [{ command: 'safetyRelay' }, { command: 'fan' }] as const;
const MAIN_VALVES = [{ command: 'upstreamValve' }, { command: 'downstreamValve' }] as const;
const FLAME = { input: 'flame', wanted: true } as const;
const NO_FLAME = { input: 'flame', wanted: false } as const;
const AIR = { input: 'airProved', wanted: true } as const;

const driveToLightOff = {
  step: 'drive to light-off',
  waitsFor: [
    { input: 'damperAtLightOff', wanted: true },
    { input: 'fanAtLightOffSpeed', wanted: true, when: { fan: ['variable speed'] } },
    { input: 'fuelValveAtLightOff', wanted: true },
    AIR,
    NO_FLAME,
  ],
  drives: [...AIR_AND_RELAY, VENT_OPEN],
  target: 'light-off',
  limit: 'driveLightOffLimitS',
  failsAs: [{ cause: 'light-off position not proved' }, { cause: 'flame seen before fuel' }],
  rules: ['SQ-16', 'SQ-17', 'SQ-32'],
  watch: 'approaching',
} as const;

/** From the end of purge to a main flame that stands alone. */
export const lightOff = burnerSetup.createStateConfig({
  id: 'lightOff',
  initial: 'drive',
  states: {
    drive: {
      ...entering(driveToLightOff),
      initial: 'moving',
      after: { driveLightOffLimitS: lockOut('light-off position not proved', 'SQ-17') },
      states: {
        moving: {
          ...describedAs({ ...driveToLightOff, phase: 'moving', lasts: null }),
          always: { guard: 'lightOffProved', target: 'steady', meta: { rule: 'SQ-16' } },
        },
        steady: {
          ...describedAs({ ...driveToLightOff, phase: 'steady', lasts: 'lightOffDwellS' }),
          always: { guard: 'lightOffProofLost', target: 'moving', meta: { rule: 'SQ-16' } },
          after: { lightOffDwellS: { target: '#sparkCheck', meta: { rule: 'SQ-16' } } },
        },
      },
    },
    sparkCheck: {
      id: 'sparkCheck',
      ...asStep({
        step: 'spark check',
        phase: 'spark check',
        waitsFor: [NO_FLAME, AIR],
        drives: [...AIR_AND_RELAY, { command: 'spark' }, VENT_OPEN],
        target: 'light-off',
        lasts: 'sparkCheckS',
        limit: 'sparkCheckS',
        failsAs: [{ cause: 'flame seen before fuel' }],
        rules: ['SQ-18', 'SQ-32'],
        watch: 'lighting',
      }),
      after: {
        sparkCheckS: [
          { guard: 'pilotFitted', target: 'pilotTrial', meta: { rule: 'SQ-18' } },
          { target: 'mainTrial', meta: { rule: 'SQ-23' } },
        ],
      },
    },
    pilotTrial: {
      ...opensFuel({
        step: 'pilot trial',
        phase: 'pilot trial',
        when: PILOT_FITTED,
        waitsFor: [FLAME, AIR],
        drives: [...AIR_AND_RELAY, { command: 'spark' }, { command: 'pilotValve' }, VENT_OPEN],
        target: 'light-off',
        lasts: 'pilotTrialS',
        limit: 'pilotTrialS',
        failsAs: [{ cause: 'pilot not lit' }],
        rules: ['SQ-19'],
        watch: 'lighting',
      }),
      after: {
        pilotTrialS: [
          {
            guard: 'flameSeen',
            target: 'pilotProving',
            actions: 'raiseFlameProved',
            meta: { rule: 'SQ-19' },
          },
          lockOut('pilot not lit', 'SQ-19'),
        ],
      },
    },
    pilotProving: {
      ...asStep({
        step: 'pilot proving',
        phase: 'pilot proving',
        when: PILOT_FITTED,
        waitsFor: [FLAME, AIR],
        drives: [...AIR_AND_RELAY, { command: 'pilotValve' }, VENT_OPEN],
        target: 'light-off',
        lasts: 'pilotProvingS',
        limit: 'pilotProvingS',
        failsAs: [{ cause: 'pilot lost' }],
        rules: ['SQ-20', 'SQ-33'],
        watch: 'lighting',
      }),
      after: { pilotProvingS: { target: 'mainTrial', meta: { rule: 'SQ-20' } } },
    },
    mainTrial: {
      ...opensFuel({
        step: 'main trial',
        phase: 'main trial',
        waitsFor: [FLAME, AIR],
        drives: [
          ...AIR_AND_RELAY,
          { command: 'spark', when: DIRECT_SPARK },
          { command: 'pilotValve', when: PILOT_FITTED },
          ...MAIN_VALVES,
        ],
        target: 'light-off',
        lasts: 'mainTrialS',
        limit: 'mainTrialS',
        failsAs: [{ cause: 'main not lit' }],
        rules: ['SQ-21', 'SQ-23', 'SQ-33'],
        watch: 'lighting',
      }),
      after: {
        mainTrialS: [
          {
            guard: 'flameSeen',
            target: 'mainProving',
            actions: 'raiseFlameProved',
            meta: { rule: 'SQ-21' },
          },
          lockOut('main not lit', 'SQ-21'),
        ],
      },
    },
    mainProving: {
      ...asStep({
        step: 'main proving',
        phase: 'main proving',
        waitsFor: [FLAME, AIR],
        drives: [
          ...AIR_AND_RELAY,
          { command: 'pilotValve', when: { ignition: ['intermittent pilot'] } },
          ...MAIN_VALVES,
        ],
        target: 'light-off',
        lasts: 'mainProvingS',
        limit: 'mainProvingS',
        failsAs: [{ cause: 'main lost' }],
        rules: ['SQ-22', 'SQ-24', 'SQ-33'],
        watch: 'lighting',
      }),
      after: { mainProvingS: { target: '#firing', meta: { rule: 'SQ-22' } } },
    },
  },
});

/** A state that opens fuel: no flame is proved yet, and neither purge nor valve proving is fresh any more. */
function opensFuel(meta: Parameters<typeof asStep>[0]) {
  const step = asStep(meta);
  return {
    ...step,
    entry: [...step.entry, 'forgetValvesProved' as const, 'raiseFuelOpened' as const],
  };
}
