import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { WayOut } from '../shell/way-out.tsx';
import type { QuizResultNow } from './use-quiz-result.ts';

interface Props {
  readonly name: string;
  readonly now: Exclude<QuizResultNow, { state: 'there' | 'unknown' }>;
}

/** Before a result is there: it is being worked out, could not be, or the quiz is not over. */
export function ResultWaiting({ name, now }: Props) {
  return (
    <FrontFrame>
      <WayOut className="back" href={hrefOf({ page: 'quiz' })}>
        ← {say('quiz.title')}
      </WayOut>
      <PageHeading>{say('app.title.quiz-result')}</PageHeading>
      {now.state === 'judging' ? (
        <p className="front-lead" role="status">
          {say('quiz.judging', { done: now.done, count: now.count })}
        </p>
      ) : now.state === 'failed' ? (
        <>
          <p className="front-lead" role="alert">
            {say('quiz.judging.failed')}
          </p>
          <p className="front-actions">
            <button type="button" className="button primary" onClick={() => now.again()}>
              {say('quiz.item.again')}
            </button>
          </p>
        </>
      ) : (
        <>
          <p className="front-lead">{say('quiz.under-way')}</p>
          <p className="front-actions">
            <a className="button primary" href={hrefOf({ page: 'quiz-taking', quiz: name })}>
              {say('quiz.go-on')}
            </a>
          </p>
        </>
      )}
    </FrontFrame>
  );
}
