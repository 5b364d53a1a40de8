import '../styles/job/forms.css';
import '../styles/quiz.css';
import { useEffect } from 'react';
import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { preloadItem } from '../quiz-item/item-maker.ts';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { hrefOf } from '../shell/route.ts';
import { ExamQuiz } from './exam-quiz.tsx';
import { troubleWords } from './import-words.ts';
import { NoSuchQuiz } from './no-such-quiz.tsx';
import { QuizHeading } from './quiz-heading.tsx';
import { quizTitle } from './quiz-words.ts';
import { ToldQuiz } from './told-quiz.tsx';
import { useOpenQuiz } from './use-open-quiz.ts';

/** The start of the question shown is run first; what follows waits so long, ms. */
const SHOWN_MS = 1500;

interface Props {
  /** By when it was begun, digits alone. */
  readonly quiz: string;
  readonly surroundings: Store<Surroundings>;
}

/** A quiz under way, a question at a time. */
export function QuizTakingPage({ quiz: name, surroundings }: Props) {
  const quiz = useOpenQuiz(name);
  const isOver = quiz?.state.phase === 'over';
  const following = quiz?.state.items[quiz.state.place + 1];
  useEffect(() => {
    if (isOver) location.replace(hrefOf({ page: 'quiz-result', quiz: name }));
  }, [isOver, name]);
  useEffect(() => {
    if (following === undefined) return;
    const later = setTimeout(() => preloadItem(following), SHOWN_MS);
    return () => clearTimeout(later);
  }, [following]);
  if (quiz === null) return <NoSuchQuiz name={name} />;
  const { state, open, trouble } = quiz;
  const { mode, place, items } = state;
  if (isOver || mode === null) return <p className="loading">{say('app.loading')}</p>;
  const number = place + 1;
  const Quiz = mode === 'exam' ? ExamQuiz : ToldQuiz;
  return (
    <FrontFrame units={true}>
      <div className="quiz-taking">
        <div className="quiz-bar">
          <a className="back" href={hrefOf({ page: 'quiz' })}>
            ← {say('quiz.leave')}
          </a>
          <QuizHeading of={place}>
            {say('quiz.progress', { number, count: items.length })}
          </QuizHeading>
          <p className="quiet">{quizTitle(mode, open.skill)}</p>
          <span className="quiz-progress" aria-hidden="true">
            <span style={{ width: `${(100 * number) / items.length}%` }} />
          </span>
        </div>
        {trouble === null ? null : (
          <p className="quiz-note" role="status">
            {troubleWords(trouble)}
          </p>
        )}
        <Quiz quiz={quiz} surroundings={surroundings} />
      </div>
    </FrontFrame>
  );
}
