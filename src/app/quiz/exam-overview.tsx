import { say } from '../../i18n/index.ts';
import type { PlaceState } from './exam-places.ts';

interface Props {
  /** Ids, each once. */
  readonly items: readonly string[];
  /** By place. */
  readonly states: readonly PlaceState[];
  readonly place: number;
  readonly onGo: (place: number) => void;
}

/** Every question of an exam by its number, and how it stands. */
export function ExamOverview({ items, states, place, onGo }: Props) {
  const answered = states.filter((each) => each === 'answered').length;
  return (
    <>
      <h2 id="overview-title">{say('quiz.overview', { answered, count: states.length })}</h2>
      <ol className="quiz-places">
        {items.map((id, i) => (
          <li key={id}>
            <button
              type="button"
              className="button quiz-place"
              data-state={states[i]}
              aria-current={i === place ? 'step' : undefined}
              aria-label={say('quiz.overview.place', {
                number: i + 1,
                state: say(`quiz.place.${states[i] ?? 'open'}`),
              })}
              onClick={() => onGo(i)}
            >
              {i + 1}
              <span aria-hidden="true" className="quiz-place-mark" />
            </button>
          </li>
        ))}
      </ol>
      <p className="quiet">{say('quiz.overview.legend')}</p>
    </>
  );
}
