import { useCallback, useState } from 'react';
import { type ClassWhat, paceOfSeat } from '../../../machines/class/index.ts';
import {
  createQuiz,
  foldQuiz,
  type QuizEntry,
  takeQuizEntry,
} from '../../../machines/quiz/index.ts';
import type { QuizMode } from '../../quiz/index.ts';
import { keepOpenQuiz } from '../quiz/device-open.ts';
import { listOpen } from '../quiz/open-quiz.ts';
import { quizName } from '../quiz/quiz-name.ts';
import { QuizResultPage } from '../quiz/quiz-result-page.tsx';
import { QuizTakingPage } from '../quiz/quiz-taking-page.tsx';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { type ClassSeat, useClass, useClassPart } from './class-context.ts';
import { bookOfTry } from './seat-book.ts';
import { stateOfQuiz } from './state-of-quiz.ts';
import { useTellState } from './use-tell-state.ts';

interface Props {
  readonly what: ClassWhat;
  readonly surroundings: Store<Surroundings>;
}

/** The class's quiz: its questions in its order, each with the learner's own answer. */
export function OwnQuiz({ what, surroundings }: Props) {
  const seat = useClass();
  const [name] = useState(() => listOpen(seat.shelf)[0] ?? beginQuiz(seat, what));
  const [entries, setEntries] = useState<readonly QuizEntry[]>([]);
  const frozen = useClassPart(({ book }) => paceOfSeat(book, seat.place.seat).frozen);
  const told = useCallback(
    (all: readonly QuizEntry[]) => {
      setEntries(all);
      tellQuiz(seat, all);
    },
    [seat],
  );
  const state = foldQuiz(entries);
  useTellState(() => stateOfQuiz(state, seat.client.store.read().entries.length));
  return (
    <div inert={frozen && state.phase !== 'over'} className="class-quiz">
      {state.phase === 'over' ? (
        <QuizResultPage quiz={name} surroundings={surroundings} />
      ) : (
        <QuizTakingPage quiz={name} surroundings={surroundings} onEntries={told} />
      )}
    </div>
  );
}

/** @returns its name on the shelf */
function beginQuiz({ client, shelf }: ClassSeat, { items = [], mode }: ClassWhat): string {
  const atISO = new Date().toISOString();
  const begun = takeQuizEntry(createQuiz(), {
    type: 'begin',
    atISO,
    mode: (mode ?? 'standard') as QuizMode,
    seed: client.store.read().book.seed,
    items: [...items],
  });
  // The server has checked the list when the class was opened.
  if (!begun.ok) throw new Error(`a quiz that cannot begin: ${begun.refusal}`);
  keepOpenQuiz({ skill: null, entries: begun.state.entries, drafts: [] }, shelf);
  return quizName(atISO);
}

function tellQuiz({ client, book }: ClassSeat, entries: readonly QuizEntry[]): void {
  const [first] = entries;
  // Once the class is over the quiz is the learner's own.
  if (first === undefined || client.store.read().book.phase === 'closed') return;
  const tried = bookOfTry(book.read(), first.atISO);
  if (tried !== book.read()) book.write(tried);
  client.tellWork({
    attempt: tried.attempt,
    headS: 0,
    hash: null,
    setupHash: '',
    startedMs: Date.parse(first.atISO),
    applied: client.store.read().entries.length,
    acts: [],
    desk: entries.map((entry) => ({ ...entry })),
  });
}
