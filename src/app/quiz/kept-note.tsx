import { say } from '../../i18n/index.ts';
import type { AnswersKept } from './keep-answers.ts';

/** Says what of the kept answers cannot be read; nothing where all can. */
export function KeptNote({ kept: { trouble, aside } }: { readonly kept: AnswersKept }) {
  if (trouble === null && !aside) return null;
  return (
    <p className="quiz-note" role="status">
      {trouble === 'newer version'
        ? say('quiz.kept.newer-version')
        : say(trouble === 'broken' ? 'quiz.kept.broken' : 'quiz.kept.aside')}
    </p>
  );
}
