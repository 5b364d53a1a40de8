import { COMMANDS, describeStep, INPUTS, STEPS, TARGETS } from '../../../machines/burner/index.ts';
import { faultsFor, inputReadings, type Run, type RunSetup } from '../../engine/index.ts';
import { type LearnerLibrary, setupOf } from '../../scenario/index.ts';
import { openFailure, type Stage } from './host-ports.ts';
import { partsOf } from './plant-parts.ts';
import type { Facts } from './protocol.ts';
import { stepFacts } from './step-facts.ts';
import { wiringFacts } from './wiring-facts.ts';

/** A healthy start that has not reached modulation by then will not be waited for. */
const HEALTHY_UNTIL_S = 420;

/** What a scenario of the library sets up, with all that the page needs to explain it. */
export function openStage(library: LearnerLibrary, scenarioId: string): Stage {
  const scenario = library.scenarios.find(({ id }) => id === scenarioId);
  if (scenario === undefined) throw openFailure('unknown scenario', scenarioId);
  const setup = setupOf(library, scenarioId);
  if (setup === null) throw openFailure('scenario does not load', scenarioId);
  return {
    setup,
    healthySetup: healthy(setup),
    healthyUntilS: Math.min(scenario.until, HEALTHY_UNTIL_S),
    facts: (run) => factsOf(setup, run, scenario),
  };
}

type Scenario = LearnerLibrary['scenarios'][number];

function factsOf(setup: RunSetup, run: Run, scenario: Scenario): Facts {
  const { plant, profile } = setup;
  const { id, title, summary, caution } = scenario;
  const parts = partsOf(plant);
  return {
    scenario: { id, title, summary, caution: caution ?? null, plant: plant.id },
    plantTitle: plant.title,
    channels: run.channels.map((channel, place) =>
      parts.hasChannel(channel.id) ? { ...channel } : absentChannel(place),
    ),
    frameS: run.frameS,
    readings: { ...inputReadings(plant, profile) },
    steps: STEPS.flatMap((step) => {
      const described = describeStep(step, plant.variant);
      return described === undefined ? [] : [stepFacts(described, profile.timings)];
    }),
    stepNames: [...STEPS],
    inputs: [...INPUTS],
    plantInputs: INPUTS.filter(parts.hasInput),
    hasLimitReset: parts.hasLimitReset,
    commands: [...COMMANDS],
    targets: [...TARGETS],
    faults: faultsFor(plant).map(({ id: name, family, component, mechanism, severity }) => ({
      id: name,
      family,
      component,
      mechanism,
      means: severity.means,
      unit: severity.unit,
      min: severity.low,
      max: severity.high,
      typical: severity.typical,
    })),
    cocks: plant.gasTrain.edges
      .filter(({ kind }) => kind === 'cock')
      .map((cock) => ({ id: cock.id, channel: `gas.${cock.id}.opening` })),
    wiring: wiringFacts(plant),
    allow: [...scenario.allow],
  };
}

/** Keeps the place of what the plant has not: as a bare word no list or drawing shows it. */
function absentChannel(place: number): Facts['channels'][number] {
  return { id: `absent.${place}`, unit: '1', kind: 'word', part: 'hidden' };
}

function healthy(setup: RunSetup): RunSetup {
  return {
    ...setup,
    faults: [],
    actions: setup.actions.filter(({ type }) => type !== 'insert-fault' && type !== 'clear-fault'),
  };
}
