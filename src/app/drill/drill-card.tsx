import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { useExercise } from '../job/exercise-context.tsx';
import { Notices } from '../job/notices.tsx';
import { permittedTools } from '../job/tool-choice.tsx';
import { type Drill, plantTitle } from '../library/exercises.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { useSession, useSessionPart } from '../working/session-context.tsx';

/** What is asked, before the time begins to run. */
export function DrillCard({ drill }: { readonly drill: Drill }) {
  const { take } = useExercise();
  const session = useSession();
  const open = useSessionPart((state) => state.phase === 'open');
  function begin(): void {
    take({ type: 'arrive', tools: [...permittedTools(drill.tools)] });
    if (take({ type: 'begin' }) === null) session.play(1);
  }
  return (
    <FrontFrame>
      <a className="back" href="#/practise">
        ← {say('job.to-practise')}
      </a>
      <Notices />
      <PageHeading>{drill.title}</PageHeading>
      <p className="front-lead">{drill.question}</p>
      <p className="choices-lead">
        {plantTitle(drill.plant)}. {say('drill.lead', { seconds: drill.limitS })}
      </p>
      <p className="caution">
        <strong>{say('app.caution.short')}</strong> {say('job.card.caution')}
      </p>
      <p className="front-actions">
        <button type="button" className="button primary" disabled={!open} onClick={begin}>
          {say('drill.begin')}
        </button>
      </p>
      {open ? null : (
        <p className="quiet" role="status">
          {say('job.card.not-ready')}
        </p>
      )}
    </FrontFrame>
  );
}
