import { say } from '../../i18n/index.ts';
import { useExercise } from '../job/exercise-context.tsx';
import { ExerciseFront } from '../job/exercise-front.tsx';
import { permittedTools } from '../job/tool-choice.tsx';
import { type Drill, plantTitle } from '../library/exercises.ts';
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
    <ExerciseFront title={drill.title}>
      <p className="front-lead">{drill.question}</p>
      <p className="choices-lead">
        {plantTitle(drill.plant)}. {say('drill.lead', { seconds: drill.limitS })}
      </p>
      <p className="caution">{say('job.card.caution')}</p>
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
    </ExerciseFront>
  );
}
