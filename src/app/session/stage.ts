import { COMMANDS, describeStep, INPUTS, STEPS, TARGETS } from '../../../machines/burner/index.ts';
import { ASK_TOPICS } from '../../../machines/job/index.ts';
import {
  ACTION_TABLES,
  faultsFor,
  inputReadings,
  type Run,
  type RunSetup,
} from '../../engine/index.ts';
import { addText, createHash, digest } from '../../numeric/index.ts';
import {
  answerOfDrill,
  answerOfJob,
  type ExerciseAnswer,
  type ExerciseKind,
  jobSetup,
  type LearnerLibrary,
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

/** The recorder keeps one hour; a run that can be rewound ends there rather than forget its own beginning. */
export const MAX_RUN_S = 3600;
/** A visit is longer than its record: what was earlier than an hour ago can no longer be looked at. */
const MAX_VISIT_S = 8 * 3600;

/** What a scenario or an exercise of the library sets up, with all that the page needs to explain it. */
export function openStage(library: LearnerLibrary, id: string, kind: RunKind = 'watch'): Stage {
  // The start of a quiz item stands in no file; the stage for it is in item-stage.ts.
  if (kind === 'quiz') throw openFailure('unknown scenario', id);
  return kind === 'watch' ? stageOfStart(library, id) : stageOfExercise(library, kind, id);
}

function stageOfStart(library: LearnerLibrary, id: string): Stage {
  const scenario = library.scenarios.find((one) => one.id === id);
  if (scenario === undefined) throw openFailure('unknown scenario', id);
  const setup = setupOf(library, id);
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

function stageOfExercise(library: LearnerLibrary, kind: ExerciseKind, id: string): Stage {
  const all = { job: library.jobs, drill: library.drills, lesson: library.lessons }[kind];
  const exercise = all.find((one) => one.id === id);
  if (exercise === undefined) throw openFailure('unknown scenario', id);
  const found = jobSetup(library, kind, id);
  if (found === null) throw openFailure('scenario does not load', id);
  const { arriveAt, ...setup } = found;
  const isLesson = kind === 'lesson';
  return stageOf(setup, {
    kind,
    card: { id, title: exercise.title, summary: '', caution: exercise.caution ?? null },
    allow: isLesson ? null : ACTS_ON_A_VISIT,
    arriveS: arriveAt,
    endS: isLesson ? MAX_RUN_S : MAX_VISIT_S,
    // On a visit nobody lays the expected run beside what happens.
    healthyUntilS: isLesson ? HEALTHY_UNTIL_S : 0,
    answer: answerOf(library, kind, id, setup),
  });
}

function answerOf(
  { jobs, drills }: LearnerLibrary,
  kind: ExerciseKind,
  id: string,
  { plant }: RunSetup,
): ExerciseAnswer | null {
  const isIt = (one: { readonly id: string }) => one.id === id;
  const job = kind === 'job' ? jobs.find(isIt) : undefined;
  if (job !== undefined) return answerOfJob(job, plant);
  const drill = kind === 'drill' ? drills.find(isIt) : undefined;
  return drill === undefined ? null : answerOfDrill(drill, plant);
}

/** On a visit faults come and go by what hands do, not by name. */
const ACTS_ON_A_VISIT = Object.keys(ACTION_TABLES).filter(
  (type) => type !== 'insert-fault' && type !== 'clear-fault',
);

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
    work: { kind, rewinds: rewinds(kind), allow, seed: setup.seed, setupHash: hashOf(setup) },
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
    actions: setup.actions.filter(({ type }) => type !== 'insert-fault' && type !== 'clear-fault'),
  };
}

/** A plant at work cannot be taken back; one that is shown can. */
function rewinds(kind: RunKind): boolean {
  return kind === 'watch' || kind === 'lesson' || kind === 'quiz';
}

function hashOf(setup: RunSetup): string {
  const hash = createHash();
  addText(hash, JSON.stringify(setup));
  return digest(hash);
}
