import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import { WayOut } from '../shell/way-out.tsx';
import { deviceShelf } from '../work/shelf.ts';
import { keptAnswers } from './keep-answers.ts';
import { startedOf } from './quiz-name.ts';

/** An address of a quiz that is over, or that this device does not know. */
export function NoSuchQuiz({ name }: { readonly name: string }) {
  const startedISO = startedOf(name);
  const isOver = keptAnswers(deviceShelf).record.quizzes.some(
    (quiz) => quiz.startedISO === startedISO,
  );
  return (
    <FrontFrame>
      <WayOut className="back" href={hrefOf({ page: 'quiz' })}>
        ← {say('quiz.title')}
      </WayOut>
      <PageHeading>{say(isOver ? 'quiz.is-over' : 'quiz.unknown')}</PageHeading>
      <p className="front-lead">{say(isOver ? 'quiz.is-over.lead' : 'quiz.unknown.lead')}</p>
      <p className="front-actions">
        {isOver ? (
          <a className="button primary" href={hrefOf({ page: 'quiz-result', quiz: name })}>
            {say('quiz.to-result')}
          </a>
        ) : (
          <WayOut className="button primary" href={hrefOf({ page: 'quiz' })}>
            {say('quiz.to-quizzes')}
          </WayOut>
        )}
      </p>
    </FrontFrame>
  );
}
