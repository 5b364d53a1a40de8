import { say } from '../../i18n/index.ts';
import { SureButton } from '../front/sure-button.tsx';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { AnswerForm } from './answer-form.tsx';
import { ExamOverview } from './exam-overview.tsx';
import { chosenAt, isWhole, type PlaceState, placeStates } from './exam-places.ts';
import { ItemPlace } from './item-place.tsx';
import type { OpenQuizNow } from './use-open-quiz.ts';

interface Props {
  readonly quiz: OpenQuizNow;
  readonly surroundings: Store<Surroundings>;
}

/** Questions that lie open until they are handed in; nothing is told before. */
export function ExamQuiz({ quiz, surroundings }: Props) {
  const { state, open, take, choose } = quiz;
  const { place, items } = state;
  const id = items[place] ?? '';
  const isLast = place === items.length - 1;
  const states = placeStates(state, open.drafts);
  /** What is whole is an answer, however one leaves its question. */
  const keepWhole = () => {
    for (const draft of open.drafts.filter(isWhole)) {
      take({ type: 'go to', place: draft.place });
      take({ type: 'answer', ...draft });
    }
  };
  const goTo = (to: number) => {
    keepWhole();
    take({ type: 'go to', place: to });
  };
  const handIn = () => {
    keepWhole();
    take({ type: 'finish' });
  };
  const onward = (
    <button type="button" className="button" disabled={isLast} onClick={() => goTo(place + 1)}>
      {say('quiz.next')}
    </button>
  );
  return (
    <>
      <ItemPlace id={id} surroundings={surroundings} unanswered={true} otherwise={onward}>
        {(item) => (
          <AnswerForm
            key={id}
            item={item}
            surroundings={surroundings}
            chosen={chosenAt(state, open.drafts, place)}
            onChoose={(chosen) => choose({ place, ...chosen })}
            label={say(isLast ? 'quiz.keep' : 'quiz.keep-and-next')}
            onAnswer={() => goTo(isLast ? place : place + 1)}
          />
        )}
      </ItemPlace>
      <section className="quiz-exam" aria-labelledby="overview-title">
        <div className="buttons quiz-exam-moves">
          <button
            type="button"
            className="button"
            disabled={place === 0}
            onClick={() => goTo(place - 1)}
          >
            {say('quiz.back')}
          </button>
          {onward}
          <SureButton
            label={say('quiz.hand-in')}
            ask={askWords(states)}
            sure={say('quiz.hand-in')}
            keep={say('quiz.go-on-answering')}
            onSure={handIn}
          />
        </div>
        <ExamOverview items={items} states={states} place={place} onGo={goTo} />
      </section>
    </>
  );
}

function askWords(states: readonly PlaceState[]): string {
  const missing = states.filter((each) => each !== 'answered').length;
  if (missing === 0) return say('quiz.hand-in.all');
  return missing === 1 ? say('quiz.hand-in.one') : say('quiz.hand-in.some', { count: missing });
}
