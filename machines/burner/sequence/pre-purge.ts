import { describedAs, entering, type StateMeta, VENT_OPEN } from '../meta.ts';
import { burnerSetup } from '../setup.ts';
import { lockOut } from '../transitions.ts';

const VARIABLE_SPEED = { fan: ['variable speed'] } as const;
const purgeProofs = [
  { input: 'damperAtPurge', wanted: true },
  { input: 'fanAtPurgeSpeed', wanted: true, when: VARIABLE_SPEED },
  { input: 'airProved', wanted: true },
] satisfies StateMeta['waitsFor'];
const lostProofs = [
  { cause: 'purge position not proved' },
  { cause: 'purge speed not proved', when: VARIABLE_SPEED },
  { cause: 'airflow not proved' },
] satisfies StateMeta['failsAs'];

const driveToPurge = {
  step: 'drive to purge',
  waitsFor: purgeProofs,
  drives: [{ command: 'safetyRelay' }, { command: 'fan' }, VENT_OPEN],
  target: 'purge',
  limit: 'drivePurgeLimitS',
  failsAs: lostProofs,
  watch: 'purging',
} as const;
const purge = {
  ...driveToPurge,
  step: 'purge',
  drives: [...driveToPurge.drives, { command: 'countAir' }],
  limit: 'purgeLimitS',
} as const;

/** What is missing when a drive to purge, or all of the pre-purge, has taken too long. */
const missingProof = (rule: string) => [
  { guard: 'purgePositionLost' as const, ...lockOut('purge position not proved', rule) },
  { guard: 'purgeSpeedLost' as const, ...lockOut('purge speed not proved', rule) },
  lockOut('airflow not proved', rule),
];

/**
 * Drive to purge and purge. They stand in one state with a limit of its own: a proof that comes
 * and goes would otherwise begin the purge again for ever.
 */
export const prePurge = burnerSetup.createStateConfig({
  id: 'prePurge',
  initial: 'drive',
  after: { prePurgeLimitS: missingProof('SQ-15') },
  states: {
    drive: {
      ...entering(driveToPurge),
      initial: 'moving',
      after: { drivePurgeLimitS: missingProof('SQ-12') },
      states: {
        moving: {
          ...describedAs({
            ...driveToPurge,
            phase: 'moving',
            lasts: null,
            rules: ['SQ-11', 'SQ-12'],
          }),
          always: { guard: 'purgeProved', target: 'steady', meta: { rule: 'SQ-11' } },
        },
        steady: {
          ...describedAs({
            ...driveToPurge,
            phase: 'steady',
            lasts: 'purgeDwellS',
            rules: ['SQ-11', 'SQ-12'],
          }),
          always: { guard: 'purgeProofLost', target: 'moving', meta: { rule: 'SQ-11' } },
          after: { purgeDwellS: { target: '#purge', meta: { rule: 'SQ-11' } } },
        },
      },
    },
    purge: {
      id: 'purge',
      ...entering(purge),
      initial: 'timing',
      always: [
        {
          guard: 'purgePositionLostForGood',
          ...lockOut('purge position not proved', 'SQ-13'),
        },
        { guard: 'purgeSpeedLostForGood', ...lockOut('purge speed not proved', 'SQ-13') },
        { guard: 'purgeAirLostForGood', ...lockOut('airflow not proved', 'SQ-13') },
        { guard: 'purgeProofLost', target: 'drive', meta: { rule: 'SQ-13' } },
      ],
      after: { purgeLimitS: lockOut('airflow not proved', 'SQ-14') },
      states: {
        timing: {
          ...describedAs({ ...purge, phase: 'timing', lasts: 'purgeS', rules: ['SQ-13', 'SQ-14'] }),
          after: { purgeS: { target: 'counting', meta: { rule: 'SQ-14' } } },
        },
        counting: {
          ...describedAs({
            ...purge,
            waitsFor: [...purgeProofs, { input: 'airChangesCounted', wanted: true }],
            phase: 'counting',
            lasts: null,
            rules: ['SQ-13', 'SQ-14'],
          }),
          always: { guard: 'purgeComplete', target: '#lightOff', meta: { rule: 'SQ-14' } },
        },
      },
    },
  },
});
