import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { PageHeading } from '../shell/page-heading.tsx';

export function UnknownExercise() {
  return (
    <FrontFrame>
      <a className="back" href="#/practise">
        ← {say('job.to-practise')}
      </a>
      <PageHeading>{say('job.unknown')}</PageHeading>
    </FrontFrame>
  );
}
