import type { FaultOnset, FaultOrder, RunSetup, TimedAction } from '../engine/index.ts';
import type { LearnerLibrary, LearnerScenario } from './learner-part.ts';
import type { FaultLine } from './start-pieces.ts';
import { timedAction } from './timed-action.ts';

const PA_PER_BAR = 1e5;
const M_PER_MM = 1e-3;
const ZERO_C = 273.15;

export interface RunChoices {
  readonly seed?: number;
  /** What a person did, on top of what the scenario does by itself. */
  readonly actions?: readonly TimedAction[];
}

type Start = Pick<
  LearnerScenario,
  'plant' | 'profile' | 'initial' | 'load' | 'faults' | 'actions' | 'seed'
>;

/** Everything that makes a run, from a checked library; null when it has no such scenario. */
export function setupOf(
  library: LearnerLibrary,
  scenarioId: string,
  choices: RunChoices = {},
): RunSetup | null {
  const scenario = library.scenarios.find(({ id }) => id === scenarioId);
  return scenario === undefined ? null : setupOfStart(library, scenario, choices);
}

/** The same of anything that starts a plant; null when the library lacks its plant or profile. */
export function setupOfStart(
  library: LearnerLibrary,
  start: Start,
  choices: RunChoices = {},
): RunSetup | null {
  const plant = library.plants.find(({ id }) => id === start.plant);
  const profileId = start.profile ?? plant?.profile;
  const profile = library.profiles.find(({ id }) => id === profileId);
  if (plant === undefined || profile === undefined) return null;
  const { pressureBar, waterC, levelMm, load, hour } = start.initial;
  const actions = [...start.actions.map(timedAction), ...(choices.actions ?? [])];
  return copyOf({
    plant,
    profile,
    initial: {
      vesselGaugePa: (pressureBar ?? 0) * PA_PER_BAR,
      waterTemperatureK: waterC === undefined ? null : waterC + ZERO_C,
      levelM: levelMm * M_PER_MM,
      load,
      hour,
    },
    load: start.load.map(({ at, load: share }) => ({ atS: at, load: share })),
    faults: start.faults.map(faultOrder),
    actions: actions.sort((a, b) => a.t - b.t),
    seed: choices.seed ?? start.seed,
  });
}

function faultOrder({ fault, severity, onset }: FaultLine): FaultOrder {
  return { fault, severity, onset: faultOnset(onset) };
}

function faultOnset(onset: FaultLine['onset']): FaultOnset {
  if (onset === 'start') return { kind: 'start' };
  if (onset.at !== undefined) return { kind: 'time', atS: onset.at };
  if (onset.step !== undefined) return { kind: 'step', step: onset.step };
  const { from, period, duty } = onset.intermittent ?? { from: 0, period: 1, duty: 1 };
  return { kind: 'intermittent', fromS: from, periodS: period, duty };
}

/** A run gets data of its own, since a fault changes parameters in place. */
function copyOf(setup: RunSetup): RunSetup {
  return JSON.parse(JSON.stringify(setup)) as RunSetup;
}
