import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { type GivenAnswer, readItemId } from '../../quiz/index.ts';
import { ItemReasons } from '../quiz-item/item-reasons.tsx';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { confidenceWord } from './confidence-words.ts';
import { ItemPlace } from './item-place.tsx';
import { kindName, plantName } from './quiz-words.ts';
import type { QuizResult } from './use-quiz-result.ts';

interface Props {
  readonly result: QuizResult;
  readonly surroundings: Store<Surroundings>;
}

/** Every question of a quiz, to be opened with its reasons. */
export function ResultQuestions({ result, surroundings }: Props) {
  return (
    <section className="quiz-part" aria-labelledby="questions-title">
      <h2 id="questions-title">{say('quiz.questions')}</h2>
      <ol className="quiz-questions">
        {result.items.map((id, place) => (
          <Question
            key={id}
            id={id}
            number={place + 1}
            answer={result.answers.find(({ item }) => item === id) ?? null}
            surroundings={surroundings}
          />
        ))}
      </ol>
    </section>
  );
}

function Question(props: {
  readonly id: string;
  readonly number: number;
  readonly answer: GivenAnswer | null;
  readonly surroundings: Store<Surroundings>;
}) {
  const { id, number, answer, surroundings } = props;
  const [open, setOpen] = useState(false);
  return (
    <li>
      <details
        className="fold"
        open={open}
        onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
      >
        <summary data-right={answer?.right ?? 'open'}>
          <span className="quiz-question-number">{number}</span>
          <span>{aboutWords(id, answer)}</span>
          <span className="quiz-question-state">{stateWords(answer)}</span>
        </summary>
        {open ? (
          <ItemPlace id={id} surroundings={surroundings}>
            {(item) => (
              <ItemReasons
                key={id}
                item={item}
                response={answer?.response ?? null}
                surroundings={surroundings}
                level={3}
              />
            )}
          </ItemPlace>
        ) : null}
      </details>
    </li>
  );
}

/** What kind of question it was, and of which plant. */
function aboutWords(id: string, answer: GivenAnswer | null): string {
  const { kind, plant } = answer ?? readItemId(id) ?? { kind: null, plant: '' };
  if (kind === null) return say('quiz.question.written');
  const title = plantName(plant);
  return title === ''
    ? kindName(kind)
    : say('quiz.question.about', { kind: kindName(kind), plant: title });
}

function stateWords(answer: GivenAnswer | null): string {
  if (answer === null) return say('quiz.question.open');
  return say(answer.right ? 'quiz.question.right' : 'quiz.question.wrong', {
    word: confidenceWord(answer.confidence),
    percent: answer.confidence,
  });
}
