/** Simulated people at a quiz: whoever reads the evidence rightly, and whoever only guesses. */
import { foldQuiz, type QuizEvent, type QuizState, takeQuizEntry } from '../../machines/index.ts';
import { createRandom, nextUniform } from '../../src/numeric/index.ts';
import {
  type Confidence,
  type GivenAnswer,
  givenAnswer,
  type Item,
  type QuizMode,
  type Response,
} from '../../src/quiz/index.ts';
import { isoOfMs } from '../../src/quiz/taking/instant.ts';

export interface Taker {
  /** @param turn how many questions came before */
  answer(
    item: Item,
    turn: number,
  ): { readonly response: Response; readonly confidence: Confidence };
}

/** Answers as every proved item can be answered from what it shows. */
export const BY_THE_KEY: Taker = {
  answer: (item) => ({ response: keyOf(item), confidence: 95 }),
};

/** Knows nothing and says so; every answer that the item offers is as likely. */
export function guesser(seed: number): Taker {
  return {
    answer(item, turn) {
      const random = createRandom(seed, turn);
      const draw = (count: number) => Math.floor(count * nextUniform(random));
      switch (item.answer) {
        case 'choice':
        case 'spot':
          return { response: { is: 'choice', option: draw(item.options.length) }, confidence: 35 };
        case 'order': {
          const left = item.steps.map((_, place) => place);
          const order = item.steps.flatMap(() => left.splice(draw(left.length), 1));
          return { response: { is: 'order', order }, confidence: 35 };
        }
        case 'number':
          return {
            response: { is: 'number', value: item.key * 4 * nextUniform(random) },
            confidence: 35,
          };
      }
    },
  };
}

/** A whole quiz through its chart, a question a minute; throws where an entry is refused. */
export function takeQuiz(
  items: readonly Item[],
  mode: QuizMode,
  taker: Taker,
  startMs: number,
): { readonly quiz: QuizState; readonly given: readonly GivenAnswer[] } {
  let quiz = foldQuiz([]);
  let minute = 0;
  const say = (event: QuizEvent): void => {
    const taken = takeQuizEntry(quiz, { atISO: isoOfMs(startMs + 60_000 * minute), ...event });
    if (!taken.ok) throw new Error(`${event.type}: ${taken.refusal}`);
    quiz = taken.state;
  };
  say({ type: 'begin', mode, seed: 1, items: items.map(({ id }) => id) });
  items.forEach((item, place) => {
    minute += 1;
    say({ type: 'answer', place, ...taker.answer(item, place) });
    if (mode !== 'exam' || place < items.length - 1) say({ type: 'next' });
  });
  if (mode === 'exam') say({ type: 'finish' });
  const startedISO = quiz.startedISO ?? '';
  const given = quiz.answers.flatMap((answer, place) =>
    answer === null ? [] : [givenAnswer(items[place] as Item, answer, { mode, startedISO })],
  );
  return { quiz, given };
}

function keyOf(item: Item): Response {
  switch (item.answer) {
    case 'choice':
    case 'spot':
      return { is: 'choice', option: item.key };
    case 'order':
      return { is: 'order', order: item.key };
    case 'number':
      return { is: 'number', value: item.key };
  }
}
