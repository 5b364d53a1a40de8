import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { KeptQuiz, QuizRecord } from '../../records/answers/index.ts';
import { dayOf } from '../learner/skill-words.ts';
import { hrefOf } from '../shell/route.ts';
import { quizName } from './quiz-name.ts';
import { quizTitle } from './quiz-words.ts';

/** So many are shown at first. */
const FEW = 6;

/** Quizzes that are over, the latest first. */
export function RecentQuizzes({ record }: { readonly record: QuizRecord }) {
  const [all, setAll] = useState(false);
  const quizzes = [...record.quizzes].reverse();
  return (
    <section className="quiz-part" aria-labelledby="recent-title">
      <h2 id="recent-title">{say('quiz.recent')}</h2>
      {quizzes.length === 0 ? (
        <p className="choices-lead">{say('quiz.recent.none')}</p>
      ) : (
        <ul className="quiz-recent">
          {(all ? quizzes : quizzes.slice(0, FEW)).map((quiz) => (
            <Recent key={quiz.startedISO} quiz={quiz} right={rightIn(record, quiz)} />
          ))}
        </ul>
      )}
      {all || quizzes.length <= FEW ? null : (
        <p className="buttons">
          <button type="button" className="button" onClick={() => setAll(true)}>
            {say('quiz.recent.more', { count: quizzes.length })}
          </button>
        </p>
      )}
    </section>
  );
}

function Recent({ quiz, right }: { readonly quiz: KeptQuiz; readonly right: number }) {
  const { mode, skill, startedISO, items } = quiz;
  return (
    <li>
      <a className="choice" href={hrefOf({ page: 'quiz-result', quiz: quizName(startedISO) })}>
        <strong>{quizTitle(mode, skill)}</strong>
        <span>
          {say('quiz.recent.line', { right, count: items.length, when: dayOf(startedISO) })}
        </span>
      </a>
    </li>
  );
}

function rightIn({ answers }: QuizRecord, { startedISO }: KeptQuiz): number {
  return answers.filter(({ quizStartedISO, right }) => quizStartedISO === startedISO && right)
    .length;
}
