import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createQuiz,
  foldQuiz,
  type QuizEntry,
  type QuizEvent,
  takeQuizEntry,
} from '../../../machines/index.ts';
import { answer, atMinute, begin, FINISH, goTo, NEXT, pass } from './story.ts';

const SEED = 43;
const EVENTS: readonly QuizEvent[] = [
  begin('exam'),
  begin('short'),
  begin('due', []),
  ...[0, 1, 2].flatMap((place) => [answer(place), answer(place, 1, 95), goTo(place), pass(place)]),
  NEXT,
  NEXT,
  NEXT,
  FINISH,
];
/** The begin comes first in most stories; without it nothing else is to be seen. */
const stories = fc
  .tuple(
    fc.constantFrom(begin('exam'), begin('short'), NEXT),
    fc.array(
      fc.record({
        event: fc.constantFrom(...EVENTS),
        minute: fc.integer({ min: 0, max: 59 }),
      }),
      { maxLength: 30 },
    ),
  )
  .map(([first, rest]): QuizEntry[] => [
    { atISO: atMinute(0), ...first },
    ...rest.map(({ event, minute }) => ({ atISO: atMinute(minute), ...event })),
  ]);

function throughJson<Value>(value: Value): Value {
  return JSON.parse(JSON.stringify(value));
}

describe('leaving a quiz and coming back', () => {
  it('[QZ-13] gives the same quiz from the entries alone, at every point, in any story', () => {
    let phases = 0;
    const seen = new Set<string>();
    fc.assert(
      fc.property(stories, (entries) => {
        let live = createQuiz();
        for (const entry of entries) {
          const taken = takeQuizEntry(throughJson(live), entry);
          if (taken.ok) live = taken.state;
          expect(foldQuiz(throughJson(live.entries))).toEqual(live);
          seen.add(live.phase);
          phases += 1;
        }
      }),
      { seed: SEED, numRuns: 80 },
    );
    expect(phases).toBeGreaterThan(400);
    expect([...seen].sort()).toEqual(['answered', 'asked', 'not begun', 'over', 'sitting']);
  });
  it('[QZ-13] passes over what is refused, and loses nothing by it', () => {
    const entries = [begin('short'), NEXT, answer(2), answer(0, 1), answer(0, 2), NEXT];
    const quiz = foldQuiz(entries.map((event, minute) => ({ atISO: atMinute(minute), ...event })));
    expect(quiz).toMatchObject({ phase: 'asked', place: 1 });
    expect(quiz.answers[0]?.response).toEqual({ is: 'choice', option: 1 });
    expect(quiz.entries.map(({ type }) => type)).toEqual(['begin', 'answer', 'next']);
  });
  it('[QZ-13] takes an answer after the clock of the device went back', () => {
    const quiz = foldQuiz([
      { atISO: atMinute(30), ...begin('short') },
      { atISO: atMinute(10), ...answer(0) },
    ]);
    expect(quiz.answers[0]?.atISO).toBe(atMinute(10));
  });
});
