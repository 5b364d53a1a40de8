/**
 * What a technician can put a plant through. A start answers for most faults; some speak up only
 * in one of the others.
 */
import {
  createRun,
  type InitialCondition,
  type Run,
  type RunSetup,
  type TimedAction,
} from '../../src/engine/index.ts';
import type { Fault } from '../../src/faults/index.ts';
import { library, shippedSetup } from '../support/library.ts';

export interface Exercise {
  readonly name: string;
  readonly untilS: number;
  readonly actions: readonly TimedAction[];
  /** How the vessel stands at first, where that is not as in the plant's own start. */
  readonly initial?: (setup: RunSetup) => InitialCondition;
}

export const START: Exercise = {
  name: 'a start, a change of load and a stop',
  untilS: 290,
  actions: [
    { t: 6, type: 'set-load', load: 1 },
    { t: 245, type: 'set-load', load: 0.5 },
    { t: 265, type: 'call-for-heat', on: false },
  ],
};

/** As far as into service: enough for what the sequence must never do. */
export const START_ALONE: Exercise = {
  name: 'a start',
  untilS: 235,
  actions: [{ t: 6, type: 'set-load', load: 1 }],
};

/** In the order of their cost. */
export const FURTHER: readonly Exercise[] = [
  {
    name: 'a vessel that needs no heat',
    untilS: 30,
    actions: [],
    initial: (setup) => vesselPast(setup, 'callForHeat'),
  },
  {
    name: 'a vessel past its limit',
    untilS: 30,
    actions: [],
    initial: (setup) => vesselPast(setup, 'highLimitMade'),
  },
  {
    name: 'a look late in the evening',
    untilS: 30,
    actions: [],
    initial: ({ initial }) => ({ ...initial, hour: 23 }),
  },
  {
    name: 'the gas shut off in service',
    untilS: 280,
    actions: [{ t: 230, type: 'turn-cock', cock: 'cock', opening: 0 }],
  },
  {
    name: 'a flame that must fail',
    untilS: 280,
    actions: [{ t: 240, type: 'insert-fault', fault: 'downstream valve coil open', severity: 1 }],
  },
  {
    name: 'a drain until the water cut-offs must act',
    untilS: 600,
    actions: [
      { t: 6, type: 'insert-fault', fault: 'feed pump fails', severity: 1 },
      { t: 6, type: 'insert-fault', fault: 'blow-down valve passes', severity: 3 },
    ],
  },
  {
    name: 'the load taken away',
    untilS: 900,
    actions: [
      { t: 6, type: 'set-load', load: 0.5 },
      { t: 300, type: 'set-load', load: 0 },
    ],
  },
];

/** After a lockout nothing more is to be learnt. */
const AFTER_LOCKOUT_S = 10;
const LOOK_EVERY_S = 5;

/** A sound start of a plant, as its own shipped scenario has it. */
export function soundSetup(plant: string): RunSetup {
  const scenario = library.scenarios.find(
    (one) => one.plant === plant && one.faults.length === 0 && one.expect.reaches === 'modulation',
  );
  if (scenario === undefined) throw new Error(`no sound start of ${plant}`);
  return shippedSetup(scenario.id);
}

export function withFault(setup: RunSetup, fault: Fault, severity: number): RunSetup {
  return { ...setup, faults: [{ fault: fault.id, severity, onset: { kind: 'start' } }] };
}

export function exercised(setup: RunSetup, exercise: Exercise): Run {
  const actions = [...setup.actions, ...exercise.actions].sort((a, b) => a.t - b.t);
  const initial = exercise.initial?.(setup) ?? setup.initial;
  const run = createRun({ ...setup, initial, load: [], actions });
  while (run.timeS() < exercise.untilS && run.status().lockout === null) {
    run.advanceTo(Math.min(exercise.untilS, run.timeS() + LOOK_EVERY_S));
  }
  if (run.timeS() < exercise.untilS) run.advanceTo(run.timeS() + AFTER_LOCKOUT_S);
  return run;
}

/** A vessel a little past the point where the switch of an input breaks. */
function vesselPast(
  { plant, initial }: RunSetup,
  feeds: 'callForHeat' | 'highLimitMade',
): InitialCondition {
  const onPressure = plant.field.switches.find((s) => s.feeds === feeds);
  const onTemperature = plant.field.temperatureSwitches.find((s) => s.feeds === feeds);
  return {
    ...initial,
    ...(onPressure === undefined ? {} : { vesselGaugePa: 1.02 * onPressure.breakPa }),
    ...(onTemperature === undefined ? {} : { waterTemperatureK: 275.15 + onTemperature.breakC }),
  };
}
