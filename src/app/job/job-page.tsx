import '../styles/working/index.css';
import '../styles/job/index.css';
import { useMemo } from 'react';
import { Debriefing } from '../debrief/debriefing.tsx';
import type { Job } from '../library/exercises.ts';
import type { Store } from '../session/store.ts';
import { useStore } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { useJobOf } from '../work/use-exercise-of.ts';
import { useSession, useSessionPart } from '../working/session-context.tsx';
import { CardPage } from './card-page.tsx';
import { useExercise } from './exercise-context.tsx';
import { ExerciseShell } from './exercise-shell.tsx';
import { JobWorking } from './job-working.tsx';
import { UnknownExercise } from './unknown-exercise.tsx';
import { WorkFrame } from './work-frame.tsx';

interface Props {
  readonly id: string;
  readonly surroundings: Store<Surroundings>;
}

/** A job, from its card to the debrief. */
export function JobPage({ id, surroundings }: Props) {
  const job = useJobOf(id);
  const look = useStore(surroundings);
  const plan = useMemo(() => ({ tools: job?.tools ?? 'all' }), [job]);
  if (job === null) return <UnknownExercise />;
  return (
    <ExerciseShell kind="job" id={id} plan={plan}>
      <ByPhase job={job} look={look} />
    </ExerciseShell>
  );
}

function ByPhase({ job, look }: { readonly job: Job; readonly look: Surroundings }) {
  const { desk } = useExercise();
  const session = useSession();
  const open = useSessionPart((state) => state.phase === 'open');
  if (desk.phase === 'card') return <CardPage job={job} ready={open} />;
  if (desk.phase !== 'debrief') {
    return (
      <WorkFrame session={session} kind="job">
        <JobWorking job={job} look={look} />
      </WorkFrame>
    );
  }
  return <Debriefing job={job} look={look} />;
}
