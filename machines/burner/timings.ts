/**
 * Timings and limits of a practice profile: one table, from which the type, the scenario
 * schema and the machine's delays are read.
 *
 * Shaped like the parameter tables of the plant, but written out here, because a machine
 * knows its terminals and imports nothing of the simulator.
 */
interface Seconds {
  readonly kind: 'number';
  readonly unit: 's';
  readonly min: number;
  readonly max: number;
  readonly doc: string;
}
interface Count {
  readonly kind: 'number';
  readonly unit: '1';
  readonly min: number;
  readonly max: number;
  readonly doc: string;
}

export const timingParameters = {
  relaySettleS: seconds(0.2, 10, 'time the safety relay has to follow, each way'),
  atRestLimitS: seconds(
    5,
    600,
    'longest wait for air switch, flame, valves and gas to be right at rest',
  ),
  startBlockedLimitS: seconds(
    60,
    86_400,
    'longest a call for heat may stand against an open self-clearing limit',
  ),
  vpEmptyS: seconds(0.5, 60, 'valve proving: how long the interspace is opened to empty'),
  vpHoldEmptyS: seconds(1, 600, 'valve proving: how long the empty interspace is watched'),
  vpFillS: seconds(0.5, 60, 'valve proving: how long the upstream valve is opened to fill'),
  vpHoldFullS: seconds(1, 600, 'valve proving: how long the full interspace is watched'),
  drivePurgeLimitS: seconds(5, 600, 'longest drive to purge'),
  purgeDwellS: seconds(
    0.1,
    30,
    'how long the three purge proofs must stand together before purge counts',
  ),
  purgeS: seconds(5, 1800, 'purge time, run only while all proofs hold'),
  purgeLimitS: seconds(10, 3600, 'longest one purge may last while air changes are still missing'),
  prePurgeLimitS: seconds(
    20,
    7200,
    'longest drive to purge and purge together, however often begun again',
  ),
  driveLightOffLimitS: seconds(5, 600, 'longest drive to light-off'),
  lightOffDwellS: seconds(0.1, 30, 'how long the light-off proofs must stand together'),
  sparkCheckS: seconds(0.5, 30, 'spark with no fuel'),
  pilotTrialS: seconds(1, 15, 'pilot trial for ignition'),
  pilotProvingS: seconds(1, 60, 'pilot alone, spark off'),
  mainTrialS: seconds(1, 15, 'main trial for ignition'),
  mainProvingS: seconds(1, 60, 'main flame proved steady'),
  lowFireHoldS: seconds(0, 3600, 'least time at low fire'),
  warmUpLimitS: seconds(10, 86_400, 'longest low-fire hold'),
  curveDeviationS: seconds(0.5, 60, 'how long a position or speed may be off its commanded point'),
  runDownS: seconds(0, 300, 'time at low fire before fuel is shut'),
  valveCloseLimitS: seconds(0.5, 30, 'time the main valves have to be proved closed'),
  postPurgeS: seconds(0, 1800, 'air alone after fuel is shut'),
  flameOutS: seconds(
    0.5,
    60,
    'time after fuel is shut within which a flame signal may still stand',
  ),
  flameFailureResponseS: seconds(
    0.2,
    10,
    'flame relay: from flame gone to relay dropped; lives in the field',
  ),
  resetPressS: seconds(0.2, 30, 'longest press of the reset button that counts as deliberate'),
  resetWindowS: seconds(10, 86_400, 'window within which resets count as repeated'),
  repeatedResets: count(2, 20, 'resets within the window that make them repeated'),
  recyclesAllowed: count(
    0,
    1,
    'automatic restarts after a flame lost in service, per call for heat',
  ),
  requiredAirChanges: count(1, 30, 'air changes to be counted in purge; counted in the field'),
  lostProofInPurge: {
    kind: 'choice',
    options: ['drive again', 'lockout'],
    doc: 'answer to a proof lost in purge',
  },
} as const;

type Table = typeof timingParameters;
export type TimingName = keyof Table;
/** The timings the machine may wait for. */
export type DurationName = {
  [K in TimingName]: Table[K] extends { readonly unit: 's' } ? K : never;
}[TimingName];
export type Timings = {
  -readonly [K in TimingName]: Table[K] extends { readonly options: readonly (infer Option)[] }
    ? Option
    : number;
};

export const DURATIONS: readonly DurationName[] = (
  Object.keys(timingParameters) as TimingName[]
).filter((name): name is DurationName => {
  const parameter = timingParameters[name];
  return parameter.kind === 'number' && parameter.unit === 's';
});

function seconds(min: number, max: number, doc: string): Seconds {
  return { kind: 'number', unit: 's', min, max, doc };
}
function count(min: number, max: number, doc: string): Count {
  return { kind: 'number', unit: '1', min, max, doc };
}
