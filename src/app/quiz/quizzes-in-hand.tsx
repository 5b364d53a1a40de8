import { foldQuiz, type QuizState } from '../../../machines/quiz/index.ts';
import { say } from '../../i18n/index.ts';
import { SureButton } from '../front/sure-button.tsx';
import { dayOf } from '../learner/skill-words.ts';
import { hrefOf } from '../shell/route.ts';
import { countAnswers } from './count-answer.ts';
import { dropOpenQuiz, openQuiz } from './device-open.ts';
import { closedQuiz, type OpenQuiz } from './open-quiz.ts';
import { quizTitle } from './quiz-words.ts';
import type { QuizDevice } from './use-quiz-device.ts';

/** Quizzes under way: each to go on with, or to put away. */
export function QuizzesInHand({ device }: { readonly device: QuizDevice }) {
  const entries = device.open.flatMap((name) => {
    const open = openQuiz(name);
    if (open === null) return [];
    return [{ name, open, state: foldQuiz(open.entries) }];
  });
  if (entries.length === 0) return null;
  return (
    <section className="quiz-part" aria-labelledby="in-hand-title">
      <h2 id="in-hand-title">{say('quiz.in-hand')}</h2>
      <ul className="quiz-in-hand">
        {entries.map((entry) => (
          <InHand
            key={entry.name}
            {...entry}
            onPutAway={() => {
              putAway(entry.name, entry.open, entry.state);
              device.renew();
            }}
          />
        ))}
      </ul>
    </section>
  );
}

interface Props {
  readonly name: string;
  readonly open: OpenQuiz;
  readonly state: QuizState;
  readonly onPutAway: () => void;
}

function InHand({ name, open, state, onPutAway }: Props) {
  const { mode, answers, items, startedISO, phase } = state;
  if (mode === null || startedISO === null) return null;
  const title = quizTitle(mode, open.skill);
  const answered = answers.filter((answer) => answer !== null).length;
  const isOver = phase === 'over';
  return (
    <li>
      <p>
        <strong>{title}</strong>{' '}
        <span className="quiet">
          {say('quiz.in-hand.state', { answered, count: items.length, when: dayOf(startedISO) })}
        </span>
      </p>
      <div className="buttons">
        <a
          className="button primary"
          href={hrefOf({ page: isOver ? 'quiz-result' : 'quiz-taking', quiz: name })}
        >
          {say(isOver ? 'quiz.to-result' : 'quiz.go-on')}
        </a>
        {isOver ? null : (
          <SureButton
            label={say('quiz.put-away')}
            name={say('quiz.put-away.named', { quiz: title })}
            ask={say(mode === 'exam' ? 'quiz.put-away.exam' : 'quiz.put-away.ask')}
            sure={say('quiz.put-away')}
            keep={say('quiz.put-away.keep')}
            onSure={onPutAway}
          />
        )}
      </div>
    </li>
  );
}

/** What was told on stays among the answers; of an exam that is not handed in nothing counts. */
function putAway(name: string, open: OpenQuiz, state: QuizState): void {
  const { mode, startedISO, answers } = state;
  const counts = mode !== 'exam' && answers.some((answer) => answer !== null);
  if (counts && startedISO !== null) {
    const ended = { ...state, endedISO: new Date().toISOString() };
    countAnswers(startedISO, [], closedQuiz(ended, open.skill));
  }
  dropOpenQuiz(name);
}
