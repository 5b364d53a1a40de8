import { say, sayWord } from '../../i18n/index.ts';
import { ITEM_KINDS, type ItemKind, QUIZ_MODES, type QuizMode } from '../../quiz/taking/index.ts';
import type { XapiWords } from '../../records/index.ts';

export function xapiWords(): XapiWords {
  const quizzes = QUIZ_MODES.map((mode) => [
    mode,
    say('quiz.xapi.quiz', { mode: sayWord('quiz.mode', mode) }),
  ]);
  const kinds = ITEM_KINDS.map((kind) => [kind, sayWord('quiz.kind', kind)]);
  return {
    quizzes: Object.fromEntries(quizzes) as Record<QuizMode, string>,
    about: say('quiz.xapi.quiz-about'),
    kinds: Object.fromEntries(kinds) as Record<ItemKind, string>,
  };
}
