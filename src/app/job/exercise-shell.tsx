import type { ReactNode } from 'react';
import type { DeskKind, DeskPlan } from '../../../machines/job/index.ts';
import { say } from '../../i18n/index.ts';
import { useWork } from '../work/use-work.ts';
import type { Work } from '../work/work-types.ts';
import { SessionProvider } from '../working/session-context.tsx';
import { ExerciseProvider } from './exercise-context.tsx';
import { useDesk } from './use-desk.ts';
import { useWorkSession } from './use-work-session.ts';
import { WorkProvider } from './work-context.tsx';

interface Props {
  readonly kind: DeskKind;
  readonly id: string;
  /** Which branch of the work; the work itself where it is left out. */
  readonly branch?: number;
  readonly plan: DeskPlan;
  readonly children: ReactNode;
}

/** An exercise taken up where it was left: its saved work, its run, its desk. */
export function ExerciseShell(props: Props) {
  const work = useWork(props.kind, props.id, props.branch);
  return (
    <WorkProvider value={work}>
      <Opened {...props} work={work} />
    </WorkProvider>
  );
}

function Opened({ kind, id, plan, work, children }: Props & { readonly work: Work }) {
  const session = useWorkSession(work);
  const exercise = useDesk(kind, id, plan, work, session);
  if (session === null) return <p className="loading">{say('app.opening')}</p>;
  return (
    <SessionProvider value={session}>
      <ExerciseProvider value={exercise}>{children}</ExerciseProvider>
    </SessionProvider>
  );
}
