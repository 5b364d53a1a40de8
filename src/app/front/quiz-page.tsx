import { say } from '../../i18n/index.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { BackToFront } from './back-to-front.tsx';
import { FrontFrame } from './front-frame.tsx';

/** Nobody is led here, but an address someone typed deserves an honest answer. */
export function QuizPage() {
  return (
    <FrontFrame>
      <BackToFront />
      <PageHeading>{say('app.quiz.title')}</PageHeading>
      <p className="front-lead">{say('app.quiz.not-built')}</p>
    </FrontFrame>
  );
}
