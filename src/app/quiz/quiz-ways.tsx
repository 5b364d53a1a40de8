import { useMemo } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import type { QuizMode } from '../../quiz/index.ts';
import { dayOf } from '../learner/skill-words.ts';
import { type Offer, type QuizGround, quizOffers } from './quiz-offers.ts';
import { modeName } from './quiz-words.ts';
import type { BankNow } from './use-bank.ts';

interface Props {
  readonly bank: BankNow;
  readonly ground: QuizGround;
  readonly onBegin: (mode: QuizMode) => void;
}

/** What one can begin with; what there is nothing for says so, and when there will be. */
export function QuizWays({ bank, ground, onBegin }: Props) {
  const { offers, nextDueISO } = useMemo(() => quizOffers(ground), [ground]);
  if (bank.state === 'failed') {
    return (
      <div className="quiz-note" role="alert">
        <p>{say('quiz.bank.failed')}</p>
        <p className="buttons">
          <button type="button" className="button primary" onClick={() => bank.again()}>
            {say('quiz.item.again')}
          </button>
        </p>
      </div>
    );
  }
  const loading = bank.state === 'loading';
  return (
    <section className="quiz-part" aria-labelledby="ways-title" aria-busy={loading}>
      <h2 id="ways-title">{say('quiz.ways')}</h2>
      <ul className="quiz-ways">
        {offers.map((offer) => (
          <li key={offer.mode}>
            <button
              type="button"
              className="quiz-way"
              data-mode={offer.mode}
              aria-disabled={loading || offer.count === 0}
              onClick={() => (offer.count === 0 ? undefined : onBegin(offer.mode))}
            >
              <strong>{modeName(offer.mode)}</strong>
              <span className="quiz-way-count">
                {loading ? say('quiz.bank.loading') : countWords(offer, nextDueISO)}
              </span>
              <span>{sayWord('quiz.way', offer.mode)}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function countWords({ mode, count }: Offer, nextDueISO: string | null): string {
  if (count > 0) return count === 1 ? say('quiz.count.one') : say('quiz.count', { count });
  if (mode === 'got wrong') return say('quiz.none.got-wrong');
  if (mode !== 'due') return say('quiz.none');
  return nextDueISO === null
    ? say('quiz.none.due')
    : say('quiz.none.due-next', { when: dayOf(nextDueISO) });
}
