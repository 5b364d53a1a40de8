/** Where in the page the exercise of a package is, and that one stays there. */
import type { Packaged } from '../../records/lms/index.ts';
import { beginWith } from '../quiz/begin-quiz.ts';
import { openQuiz } from '../quiz/device-open.ts';
import { keptAnswers } from '../quiz/keep-answers.ts';
import { OPEN_PREFIX } from '../quiz/open-quiz.ts';
import { startedOf } from '../quiz/quiz-name.ts';
import type { Route } from '../shell/route.ts';
import { keyOfWork } from '../work/keep-work.ts';
import { deviceShelf } from '../work/shelf.ts';

export interface PackagedPlace {
  readonly home: Route;
  routeFor(route: Route): Route;
}

/** Under which keys the device keeps the work that a learning system is to keep too. */
export function isWorkKey({ exercise }: Packaged, key: string): boolean {
  return exercise.kind === 'quiz' ? key.startsWith(OPEN_PREFIX) : key === keyOfWork(exercise);
}

/**
 * @param key of work that is there already; null where there is none
 * @returns null where there is nothing to ask
 */
export function packagedPlace({ exercise }: Packaged, key: string | null): PackagedPlace | null {
  if (exercise.kind === 'quiz') {
    const quiz = quizThere(key) ?? beginWith(exercise.mode, exercise.items);
    return quiz === null ? null : quizPlace(quiz);
  }
  const { kind: page, id } = exercise;
  const home: Route = { page, id };
  const isHere = (route: Route): boolean =>
    (route.page === page || (page === 'job' && route.page === 'branch')) && route.id === id;
  return { home, routeFor: (route) => (isHere(route) ? route : home) };
}

function quizPlace(quiz: string): PackagedPlace {
  const isThere = (route: Route): boolean =>
    (route.page === 'quiz-taking' || route.page === 'quiz-result') && route.quiz === quiz;
  const home = (): Route => ({
    page: openQuiz(quiz) === null ? 'quiz-result' : 'quiz-taking',
    quiz,
  });
  return { home: home(), routeFor: (route) => (isThere(route) ? route : home()) };
}

/** Under way, or over and among the answers. */
function quizThere(key: string | null): string | null {
  if (key === null || !key.startsWith(OPEN_PREFIX)) return null;
  const name = key.slice(OPEN_PREFIX.length);
  const startedISO = startedOf(name);
  const isOver = keptAnswers(deviceShelf).record.quizzes.some(
    (quiz) => quiz.startedISO === startedISO,
  );
  return isOver || openQuiz(name) !== null ? name : null;
}
