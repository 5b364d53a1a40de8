import { describeStep } from '../../machines/burner/index.ts';
import { MAX_RUN_S } from './bounds.ts';
import { checkChoice } from './choice-checks.ts';
import type { Drill } from './drill-schema.ts';
import { checkFault } from './fault-checks.ts';
import type { Issue } from './issue.ts';
import { issueAt } from './issue-at.ts';
import type { Job } from './job-schema.ts';
import type { Lesson } from './lesson-schema.ts';
import { phrase } from './phrase.ts';
import type { Path } from './place.ts';
import type { Source } from './read-source.ts';
import type { Loaded } from './read-yaml.ts';
import { checkScripted, checkStart, type Surroundings } from './start-checks.ts';

/** Of a job: its start, its causes among its faults, and a user's error only where nothing is broken. */
export function checkJob({ value: job, source }: Loaded<Job>, around: Surroundings): Issue[] {
  const plant = around.plant(job.plant);
  const { userError, arriveAt } = job;
  return [
    ...checkStart(job, source, around, { actionsUntilS: arriveAt, restUntilS: MAX_RUN_S }),
    ...checkOrigin(job, source),
    ...checkCauses(job.cause, 'cause', job.faults, source, around),
    ...checkNamed(job.accept, 'accept', job.plant, source, around),
    ...checkTopics(job, source),
    ...(userError === undefined
      ? []
      : checkMend(userError.mend, arriveAt, source, (path) =>
          checkScripted(userError.mend, path, source, plant, around, MAX_RUN_S),
        )),
  ];
}

export function checkDrill({ value: drill, source }: Loaded<Drill>, around: Surroundings): Issue[] {
  const { arriveAt, options, claim } = drill;
  return [
    ...checkStart(drill, source, around, { actionsUntilS: arriveAt, restUntilS: MAX_RUN_S }),
    ...((options === undefined) === (claim === undefined)
      ? [oneOf(source, options === undefined ? [] : ['claim'], ['options', 'claim'])]
      : []),
    ...checkCauses(claim, 'claim', drill.faults, source, around),
    ...(options === undefined ? [] : checkChoice(drill, options, source, [])),
  ];
}

export function checkLesson(
  { value: lesson, source }: Loaded<Lesson>,
  around: Surroundings,
): Issue[] {
  const plant = around.plant(lesson.plant);
  const bounds = { actionsUntilS: lesson.until, restUntilS: lesson.until };
  return [
    ...checkStart(lesson, source, around, bounds),
    ...lesson.steps.flatMap(({ step, ask, tryBreaking }, i) => {
      const path = ['steps', i];
      const issues: Issue[] = [];
      if (plant !== null && describeStep(step, plant.variant) === undefined) {
        const expected = phrase('expected.step-of-plant', { plant: plant.id });
        issues.push(issueAt(source, [...path, 'step'], 'not-applicable', expected));
      }
      if (ask !== undefined) {
        issues.push(...checkChoice(ask, ask.options, source, [...path, 'ask']));
      }
      if (tryBreaking !== undefined) {
        const { fault, severity } = tryBreaking;
        const at = (key: string): Path => [...path, 'tryBreaking', key];
        const places = { fault: at('fault'), severity: at('severity') };
        issues.push(...checkFault(fault, severity, source, places, plant, around.faults));
      }
      return issues;
    }),
  ];
}

function checkOrigin({ faults, userError }: Job, source: Source): Issue[] {
  if ((faults.length === 0) !== (userError === undefined)) return [];
  return [oneOf(source, userError === undefined ? [] : ['userError'], ['faults', 'userError'])];
}

function oneOf(source: Source, path: Path, keys: readonly string[]): Issue {
  const code = path.length === 0 ? 'missing-key' : 'exclusive-keys';
  return issueAt(source, path, code, phrase('expected.one-key-of', { keys }));
}

/** A cause is one of what is wrong here; what else may be taken for it stands under accept. */
function checkCauses(
  causes: readonly string[] | undefined,
  key: string,
  faults: Job['faults'],
  source: Source,
  around: Surroundings,
): Issue[] {
  const here = faults.map(({ fault }) => fault);
  // A misspelt fault is told of where it stands, and not once more for its cause.
  if (here.some((name) => !around.faults.some(({ id }) => id === name))) return [];
  return (causes ?? []).flatMap((cause, i) => {
    if (here.includes(cause)) return [];
    const expected =
      here.length === 0
        ? phrase('expected.no-cause')
        : phrase('expected.cause-of-job', { known: here });
    return [issueAt(source, [key, i], 'unknown-name', expected)];
  });
}

function checkNamed(
  names: readonly string[] | undefined,
  key: string,
  plantId: string,
  source: Source,
  around: Surroundings,
): Issue[] {
  const plant = around.plant(plantId);
  return (names ?? []).flatMap((name, i) =>
    checkFault(name, null, source, { fault: [key, i], severity: null }, plant, around.faults),
  );
}

/** Who asks gets one answer of each person. */
function checkTopics({ people }: Job, source: Source): Issue[] {
  return people.flatMap(({ topic, who }, i) =>
    people.findIndex((other) => other.topic === topic && other.who === who) === i
      ? []
      : [issueAt(source, ['people', i, 'topic'], 'duplicate-id', phrase('expected.topic-once'))],
  );
}

function checkMend(
  mend: readonly { readonly at: number }[],
  arriveAt: number,
  source: Source,
  checkRest: (path: Path) => Issue[],
): Issue[] {
  const path = ['userError', 'mend'];
  const early = mend.flatMap(({ at }, i) =>
    at >= arriveAt
      ? []
      : [
          issueAt(
            source,
            [...path, i, 'at'],
            'out-of-range',
            phrase('expected.after-arrival', { t: arriveAt }),
          ),
        ],
  );
  return [...early, ...checkRest(path)];
}
