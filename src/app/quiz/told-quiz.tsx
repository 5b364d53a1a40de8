import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { type Confidence, type Item, isRight, type Response } from '../../quiz/index.ts';
import { ItemReasons } from '../quiz-item/item-reasons.tsx';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { AnswerForm } from './answer-form.tsx';
import { type AnswerCounted, answerAt, countAnswers } from './count-answer.ts';
import { CountedTrouble } from './counted-trouble.tsx';
import { ItemPlace } from './item-place.tsx';
import type { OpenQuizNow } from './use-open-quiz.ts';
import { Verdict } from './verdict.tsx';

interface Props {
  readonly quiz: OpenQuizNow;
  readonly surroundings: Store<Surroundings>;
}

/** A question that is told on as soon as it is answered. */
export function ToldQuiz({ quiz, surroundings }: Props) {
  const { state, open, take, choose } = quiz;
  const { place, items } = state;
  const id = items[place] ?? '';
  const answer = state.answers[place] ?? null;
  const [answeredNow, setAnsweredNow] = useState<number | null>(null);
  const [counted, setCounted] = useState<AnswerCounted | null>(null);
  const draft = open.drafts.find((each) => each.place === place);
  const give = (item: Item, response: Response, confidence: Confidence) => {
    const after = take({ type: 'answer', place, response, confidence });
    if (typeof after === 'string') return;
    setAnsweredNow(place);
    const given = answerAt(after, place, item);
    if (given !== null) setCounted(countAnswers(given.quizStartedISO, [given]));
  };
  const leave = (
    <>
      <button type="button" className="button" onClick={() => take({ type: 'pass', place })}>
        {say('quiz.leave-out')}
      </button>
      {place === items.length - 1 ? null : (
        <button type="button" className="button" onClick={() => take({ type: 'finish' })}>
          {say('quiz.end-here')}
        </button>
      )}
    </>
  );
  return (
    <ItemPlace id={id} surroundings={surroundings} unanswered={answer === null} otherwise={leave}>
      {(item) => (
        <>
          <div role="status">
            {answer === null ? null : (
              <Verdict
                key={id}
                right={isRight(item, answer.response)}
                confidence={answer.confidence}
                fresh={answeredNow === place}
              />
            )}
          </div>
          {answer === null ? (
            <AnswerForm
              key={id}
              item={item}
              surroundings={surroundings}
              chosen={{
                response: draft?.response ?? null,
                confidence: draft?.confidence ?? null,
              }}
              onChoose={(chosen) => choose({ place, ...chosen })}
              label={say('quiz.answer')}
              onAnswer={(response, confidence) => give(item, response, confidence)}
            />
          ) : (
            <>
              <CountedTrouble counted={counted} />
              <ItemReasons
                key={id}
                item={item}
                response={answer.response}
                surroundings={surroundings}
                level={3}
              />
              <p className="buttons quiz-give">
                <button
                  type="button"
                  className="button primary"
                  onClick={() => take({ type: 'next' })}
                >
                  {say(place === items.length - 1 ? 'quiz.to-result' : 'quiz.next')}
                </button>
              </p>
            </>
          )}
        </>
      )}
    </ItemPlace>
  );
}
