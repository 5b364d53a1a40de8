import fc from 'fast-check';
import { SKILLS } from '../../../machines/job/index.ts';
import { CONFIDENCES, type GivenAnswer, ITEM_KINDS, QUIZ_MODES } from '../../../src/quiz/index.ts';
import type { KeptQuiz } from '../../../src/records/answers/index.ts';

const instant = fc
  .integer({ min: 0, max: 100 })
  .map((hours) => new Date(Date.UTC(2026, 0, 1) + hours * 3_600_000).toISOString());
/** A file knows no minus nought. */
const number = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => value + 0);

/** Few names and few times, so that the same answer comes up again. */
export const anyAnswer: fc.Arbitrary<GivenAnswer> = fc.record({
  item: fc.constantFrom('cause/dairy/1', 'cause/dairy/2', 'order/school/3'),
  kind: fc.constantFrom(...ITEM_KINDS),
  plant: fc.constantFrom('dairy', 'school', ''),
  topic: fc.constantFrom('cause/air switch', 'order/purge'),
  skills: fc.subarray([...SKILLS], { minLength: 1, maxLength: 3 }),
  difficulty: number(-6, 6),
  mode: fc.constantFrom(...QUIZ_MODES),
  quizStartedISO: instant,
  atISO: instant,
  response: fc.oneof(
    fc.record({ is: fc.constant('choice' as const), option: fc.integer({ min: 0, max: 3 }) }),
    fc.record({ is: fc.constant('order' as const), order: fc.constant([2, 0, 1]) }),
    fc.record({ is: fc.constant('number' as const), value: number(-1e5, 1e5) }),
  ),
  right: fc.boolean(),
  confidence: fc.constantFrom(...CONFIDENCES),
});

export const anyQuiz: fc.Arbitrary<KeptQuiz> = fc.record({
  startedISO: instant,
  closedISO: instant,
  mode: fc.constantFrom(...QUIZ_MODES),
  skill: fc.constantFrom(...SKILLS, null),
  items: fc.constant(['cause/dairy/1', 'order/school/3']),
});

export const ANSWER: GivenAnswer = {
  item: 'cause/dairy/1',
  kind: 'cause',
  plant: 'dairy',
  topic: 'cause/air switch',
  skills: ['air'],
  difficulty: -1,
  mode: 'short',
  quizStartedISO: '2026-05-04T09:00:00.000Z',
  atISO: '2026-05-04T09:01:00.000Z',
  response: { is: 'choice', option: 2 },
  right: true,
  confidence: 75,
};

export const QUIZ: KeptQuiz = {
  startedISO: ANSWER.quizStartedISO,
  closedISO: '2026-05-04T09:10:00.000Z',
  mode: 'short',
  skill: null,
  items: ['cause/dairy/1', 'cause/dairy/2'],
};
