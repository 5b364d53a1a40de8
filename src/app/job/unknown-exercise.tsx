import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { PageHeading } from '../shell/page-heading.tsx';
import { WayOut } from '../shell/way-out.tsx';

export function UnknownExercise() {
  return (
    <FrontFrame>
      <WayOut className="back" href="#/practise">
        ← {say('job.to-practise')}
      </WayOut>
      <PageHeading>{say('job.unknown')}</PageHeading>
    </FrontFrame>
  );
}
