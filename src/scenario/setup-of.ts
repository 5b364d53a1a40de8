import type { FaultOnset, FaultOrder, RunSetup, TimedAction } from '../engine/index.ts';
import type { LearnerLibrary } from './learner-part.ts';
import type { FaultLine } from './scenario-schema.ts';
import { timedAction } from './timed-action.ts';

const PA_PER_BAR = 1e5;
const M_PER_MM = 1e-3;
const ZERO_C = 273.15;

export interface RunChoices {
  readonly seed?: number;
  /** What a person did, on top of what the scenario does by itself. */
  readonly actions?: readonly TimedAction[];
}

/** Everything that makes a run, from a checked library; null when it has no such scenario. */
export function setupOf(
  library: LearnerLibrary,
  scenarioId: string,
  choices: RunChoices = {},
): RunSetup | null {
  const scenario = library.scenarios.find(({ id }) => id === scenarioId);
  const plant = library.plants.find(({ id }) => id === scenario?.plant);
  const profileId = scenario?.profile ?? plant?.profile;
  const profile = library.profiles.find(({ id }) => id === profileId);
  if (scenario === undefined || plant === undefined || profile === undefined) return null;
  const { pressureBar, waterC, levelMm, load, hour } = scenario.initial;
  const actions = [...scenario.actions.map(timedAction), ...(choices.actions ?? [])];
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
    load: scenario.load.map(({ at, load: share }) => ({ atS: at, load: share })),
    faults: scenario.faults.map(faultOrder),
    actions: actions.sort((a, b) => a.t - b.t),
    seed: choices.seed ?? scenario.seed,
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
