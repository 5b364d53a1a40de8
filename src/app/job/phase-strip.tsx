import { type DeskPhase, JOB_PHASES } from '../../../machines/job/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import { useExercise } from './exercise-context.tsx';

const SHOWN: readonly DeskPhase[] = JOB_PHASES.filter((phase) => phase !== 'card');

/** How far the job is, from arriving to the debrief. */
export function PhaseStrip() {
  const { desk } = useExercise();
  const here = SHOWN.indexOf(desk.phase);
  return (
    <ol className="phases" aria-label={say('job.steps')}>
      {SHOWN.map((phase, place) => (
        <li
          key={phase}
          data-state={place < here ? 'past' : place === here ? 'here' : 'to come'}
          aria-current={place === here ? 'step' : undefined}
        >
          <span className={place === here ? '' : 'for-readers'}>{sayWord('job.phase', phase)}</span>
        </li>
      ))}
    </ol>
  );
}
