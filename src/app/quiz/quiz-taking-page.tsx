import '../styles/job/forms.css';
import '../styles/quiz.css';
import { useEffect } from 'react';
import type { QuizEntry } from '../../../machines/quiz/index.ts';
import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { preloadItem } from '../quiz-item/item-maker.ts';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { packagedPage } from '../shell/packaged.ts';
import { hrefOf } from '../shell/route.ts';
import { WayOut } from '../shell/way-out.tsx';
import { useWorkPlace } from '../work/work-place.ts';
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
  /** Hears of all that was said in it, at first and with each answer. */
  readonly onEntries?: (entries: readonly QuizEntry[]) => void;
}

/** A quiz under way, a question at a time. */
export function QuizTakingPage({ quiz: name, surroundings, onEntries }: Props) {
  const quiz = useOpenQuiz(name);
  const { isClass } = useWorkPlace();
  const isOver = quiz?.state.phase === 'over';
  const entries = quiz?.open.entries;
  useEffect(() => {
    if (entries !== undefined) onEntries?.(entries);
  }, [entries, onEntries]);
  const following = quiz?.state.items[quiz.state.place + 1];
  useEffect(() => {
    if (isOver && !isClass) location.replace(hrefOf({ page: 'quiz-result', quiz: name }));
  }, [isOver, isClass, name]);
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
          <WayOut className="back" href={hrefOf({ page: 'quiz' })}>
            ← {say('quiz.leave')}
          </WayOut>
          <QuizHeading of={place}>
            {say('quiz.progress', { number, count: items.length })}
          </QuizHeading>
          <p className="quiet">{packagedPage()?.title ?? quizTitle(mode, open.skill)}</p>
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
