import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { PageHeading } from '../shell/page-heading.tsx';
import { useClassPart } from './class-context.ts';
import { PinNote } from './pin-note.tsx';
import { STATE_AT_FIRST } from './state-of-quiz.ts';
import { useTellState } from './use-tell-state.ts';
import { plantOfClass, titleOfClass } from './what-words.ts';

/** Before the first word of the server. */
export function ComingIn() {
  const link = useClassPart((now) => now.link);
  return (
    <FrontFrame>
      <PageHeading>{say('class.coming.title')}</PageHeading>
      <p className="front-lead" role="status">
        {say(link === 'away' ? 'class.coming.away' : 'class.coming.lead')}
      </p>
    </FrontFrame>
  );
}

/** Until the work begins: what it will be. */
export function WaitingPage() {
  useTellState(() => STATE_AT_FIRST);
  const what = useClassPart((now) => now.book.what);
  const way = useClassPart((now) => now.book.way);
  if (what === null) return <ComingIn />;
  const plant = plantOfClass(what);
  return (
    <FrontFrame>
      <p className="quiet">{say('class.waiting.in')}</p>
      <PageHeading>{titleOfClass(what)}</PageHeading>
      {plant === null ? null : <p className="front-lead">{plant.title}</p>}
      <p className="front-lead">
        {say(`class.waiting.${way === 'together' ? 'together' : what.kind}`)}
      </p>
      {plant === null ? null : <p className="choices-lead">{plant.description}</p>}
      <p className="class-waiting" role="status">
        <span className="class-waiting-dots" aria-hidden="true" />
        {say('class.waiting.begin')}
      </p>
      <aside className="class-pin-note" aria-label={say('class.pin.word')}>
        <PinNote />
      </aside>
    </FrontFrame>
  );
}
