import { say } from '../../i18n/index.ts';
import type { AnswerCounted } from './count-answer.ts';
import { troubleWords } from './import-words.ts';

/** Says what of an answer could not be kept; nothing where all of it is. */
export function CountedTrouble({ counted }: { readonly counted: AnswerCounted | null }) {
  if (counted === null) return null;
  const { answer, result } = counted;
  const words =
    answer === 'erased'
      ? say('quiz.kept.erased')
      : answer !== 'kept'
        ? troubleWords(answer)
        : result === 'counted'
          ? null
          : say(`learner.counted.${result.replaceAll(' ', '-') as ResultSlug}`);
  return words === null ? null : <p className="quiz-note">{words}</p>;
}

type ResultSlug = 'erased' | 'newer-version' | 'no-room' | 'storage-refused';
