import '../styles/working/index.css';
import '../styles/job/index.css';
import { useMemo } from 'react';
import { planOfDrill } from '../../judging/desk/index.ts';
import { useExercise } from '../job/exercise-context.tsx';
import { ExerciseShell } from '../job/exercise-shell.tsx';
import { UnknownExercise } from '../job/unknown-exercise.tsx';
import { WorkFrame } from '../job/work-frame.tsx';
import type { Drill } from '../library/exercises.ts';
import type { Store } from '../session/store.ts';
import { useStore } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { useDrillOf } from '../work/use-exercise-of.ts';
import { useSession } from '../working/session-context.tsx';
import { DrillAnswer } from './drill-answer.tsx';
import { DrillCard } from './drill-card.tsx';
import { DrillWorking } from './drill-working.tsx';

interface Props {
  readonly id: string;
  readonly surroundings: Store<Surroundings>;
}

/** One question at a running plant, one answer, a short time. */
export function DrillPage({ id, surroundings }: Props) {
  const drill = useDrillOf(id);
  const look = useStore(surroundings);
  const plan = useMemo(() => (drill === null ? {} : planOfDrill(drill)), [drill]);
  if (drill === null) return <UnknownExercise />;
  return (
    <ExerciseShell kind="drill" id={id} plan={plan}>
      <ByPhase drill={drill} look={look} />
    </ExerciseShell>
  );
}

function ByPhase({ drill, look }: { readonly drill: Drill; readonly look: Surroundings }) {
  const { desk } = useExercise();
  const session = useSession();
  if (desk.phase === 'card') return <DrillCard drill={drill} />;
  if (desk.phase === 'debrief') return <DrillAnswer drill={drill} />;
  return (
    <WorkFrame session={session} kind="drill">
      <DrillWorking drill={drill} look={look} />
    </WorkFrame>
  );
}
