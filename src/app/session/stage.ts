import { COMMANDS, describeStep, INPUTS, STEPS, TARGETS } from '../../../machines/burner/index.ts';
import { ASK_TOPICS } from '../../../machines/job/index.ts';
import {
  FAULT_ACTS,
  faultsFor,
  inputReadings,
  type Run,
  type RunSetup,
} from '../../engine/index.ts';
import { exerciseSetup, MAX_RUN_S, setupHash } from '../../judging/work/index.ts';
import {
  type ExerciseAnswer,
  type ExerciseKind,
  type LearnerLibrary,
  type RunChoices,
  setupOf,
} from '../../scenario/index.ts';
import { benchPort } from './bench-port.ts';
import { openFailure, type Stage } from './host-ports.ts';
import { partsOf } from './plant-parts.ts';
import type { Facts } from './protocol.ts';
import { stepFacts } from './step-facts.ts';
import { wiringFacts } from './wiring-facts.ts';
import type { RunKind } from './work-protocol.ts';

/** A healthy start that has not reached modulation by then will not be waited for. */
export const HEALTHY_UNTIL_S = 420;

/** What a scenario or an exercise of the library sets up, with all that the page needs to explain it. */
export function openStage(
  library: LearnerLibrary,
  id: string,
  kind: RunKind = 'watch',
  choices: Pick<RunChoices, 'seed'> = {},
): Stage {
  // The start of a quiz item stands in no file; the stage for it is in item-stage.ts.
  if (kind === 'quiz') throw openFailure('unknown scenario', id);
  return kind === 'watch'
    ? stageOfStart(library, id, choices)
    : stageOfExercise(library, kind, id, choices);
}

function stageOfStart(library: LearnerLibrary, id: string, choices: RunChoices): Stage {
  const scenario = library.scenarios.find((one) => one.id === id);
  if (scenario === undefined) throw openFailure('unknown scenario', id);
  const setup = setupOf(library, id, choices);
  if (setup === null) throw openFailure('scenario does not load', id);
  const { title, summary, caution, allow, until } = scenario;
  return stageOf(setup, {
    kind: 'watch',
    card: { id, title, summary, caution: caution ?? null },
    allow: [...allow],
    arriveS: 0,
    endS: MAX_RUN_S,
    healthyUntilS: Math.min(until, HEALTHY_UNTIL_S),
    answer: null,
  });
}

function stageOfExercise(
  library: LearnerLibrary,
  kind: ExerciseKind,
  id: string,
  choices: RunChoices,
): Stage {
  const all = { job: library.jobs, drill: library.drills, lesson: library.lessons }[kind];
  const exercise = all.find((one) => one.id === id);
  if (exercise === undefined) throw openFailure('unknown scenario', id);
  const found = exerciseSetup(library, kind, id, choices);
  if (found === null) throw openFailure('scenario does not load', id);
  const { setup, allow, arriveS, endS, answer } = found;
  return stageOf(setup, {
    kind,
    card: { id, title: exercise.title, summary: '', caution: exercise.caution ?? null },
    allow: allow === null ? null : [...allow],
    arriveS,
    endS,
    // On a visit nobody lays the expected run beside what happens.
    healthyUntilS: kind === 'lesson' ? HEALTHY_UNTIL_S : 0,
    answer,
  });
}

interface Frame {
  readonly kind: RunKind;
  readonly card: Omit<Facts['scenario'], 'plant'>;
  readonly allow: string[] | null;
  readonly arriveS: number;
  readonly endS: number;
  readonly healthyUntilS: number;
  readonly answer: ExerciseAnswer | null;
}

export function stageOf(setup: RunSetup, frame: Frame): Stage {
  const { healthyUntilS, endS, answer } = frame;
  const healthySetup = healthy(setup);
  return {
    setup,
    healthySetup,
    healthyUntilS,
    answer,
    endS,
    facts: (run) => factsOf(setup, run, frame),
  };
}

function factsOf(setup: RunSetup, run: Run, frame: Frame): Facts {
  const { plant, profile } = setup;
  const { kind, card, allow, arriveS } = frame;
  const parts = partsOf(plant);
  return {
    scenario: { ...card, plant: plant.id },
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
    allow,
    work: { kind, rewinds: rewinds(kind), allow, seed: setup.seed, setupHash: setupHash(setup) },
    arriveS,
    parts: run.parts().map((part) => ({ ...part, ways: [...part.ways] })),
    settings: [...run.settings()],
    sheet: rewinds(kind) ? [] : [...benchPort.sheet(healthy(setup))],
    lookPlaces: [...run.lookPlaces()],
    tools: [...benchPort.tools],
    testPoints: [...benchPort.testPoints(plant)],
    panel: [...benchPort.panelChannels],
    topics: kind === 'job' ? [...ASK_TOPICS] : [],
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
    actions: setup.actions.filter(({ type }) => !FAULT_ACTS.includes(type)),
  };
}

/** A plant at work cannot be taken back; one that is shown can. */
function rewinds(kind: RunKind): boolean {
  return kind === 'watch' || kind === 'lesson' || kind === 'quiz';
}
