import '../styles/working/index.css';
import '../styles/job/index.css';
import { useMemo, useState } from 'react';
import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { CardPage } from '../job/card-page.tsx';
import { useExercise } from '../job/exercise-context.tsx';
import { ExerciseShell } from '../job/exercise-shell.tsx';
import { JobWorking } from '../job/job-working.tsx';
import { UnknownExercise } from '../job/unknown-exercise.tsx';
import { useWorkAround } from '../job/work-context.tsx';
import { WorkFrame } from '../job/work-frame.tsx';
import { type Job, jobOf } from '../library/exercises.ts';
import type { Store } from '../session/store.ts';
import { useStore, useStorePart } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { hrefOf } from '../shell/route.ts';
import type { WorkRecord } from '../work/work-record.ts';
import { useSession, useSessionPart } from '../working/session-context.tsx';
import { BranchStrip } from './branch-strip.tsx';
import { Comparison } from './comparison.tsx';

interface Props {
  readonly id: string;
  readonly branch: number;
  readonly surroundings: Store<Surroundings>;
}

/** A job gone on with otherwise from a moment of it, and the two ways side by side at its end. */
export function BranchPage({ id, branch, surroundings }: Props) {
  const job = jobOf(id);
  const look = useStore(surroundings);
  const plan = useMemo(() => ({ tools: job?.tools ?? 'all' }), [job]);
  if (job === null) return <UnknownExercise />;
  return (
    <ExerciseShell kind="job" id={id} branch={branch} plan={plan}>
      <IfKept job={job} look={look} />
    </ExerciseShell>
  );
}

function IfKept({ job, look }: { readonly job: Job; readonly look: Surroundings }) {
  const record = useStorePart(useWorkAround().state, (state) => state.record);
  if (record?.branchOf === undefined) return <NotHere id={job.id} />;
  return <ByPhase job={job} look={look} record={record} />;
}

function NotHere({ id }: { readonly id: string }) {
  return (
    <FrontFrame>
      <PageHeading>{say('branch.title')}</PageHeading>
      <p className="front-lead">{say('branch.not-here')}</p>
      <p className="front-actions">
        <a className="button primary" href={hrefOf({ page: 'job', id })}>
          {say('branch.to-debrief')}
        </a>
      </p>
    </FrontFrame>
  );
}

function ByPhase(props: {
  readonly job: Job;
  readonly look: Surroundings;
  readonly record: WorkRecord;
}) {
  const { job, look, record } = props;
  const { desk } = useExercise();
  const session = useSession();
  const open = useSessionPart((state) => state.phase === 'open');
  const [comparing, setComparing] = useState(false);
  if (comparing || desk.phase === 'debrief') {
    return (
      <Comparison
        job={job}
        branch={record}
        onBackIn={desk.phase === 'debrief' ? null : () => setComparing(false)}
      />
    );
  }
  if (desk.phase === 'card') return <CardPage job={job} ready={open} />;
  return (
    <WorkFrame
      session={session}
      kind="job"
      note={
        <BranchStrip
          t={record.branchOf?.t ?? 0}
          onClose={() => {
            session.pause();
            setComparing(true);
          }}
        />
      }
    >
      <JobWorking job={job} look={look} />
    </WorkFrame>
  );
}
