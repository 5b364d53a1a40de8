import '../styles/working/index.css';
import '../styles/job/index.css';
import { useMemo } from 'react';
import { planOfLesson } from '../../judging/desk/index.ts';
import { useExercise } from '../job/exercise-context.tsx';
import { ExerciseShell } from '../job/exercise-shell.tsx';
import { UnknownExercise } from '../job/unknown-exercise.tsx';
import { WorkFrame } from '../job/work-frame.tsx';
import type { Lesson } from '../library/exercises.ts';
import type { Store } from '../session/store.ts';
import { useStore } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { useLessonOf } from '../work/use-exercise-of.ts';
import { useSession } from '../working/session-context.tsx';
import { LessonEnd } from './lesson-end.tsx';
import { LessonIntro } from './lesson-intro.tsx';
import { LessonWorking } from './lesson-working.tsx';

interface Props {
  readonly id: string;
  readonly surroundings: Store<Surroundings>;
}

/** A guided start. */
export function LessonPage({ id, surroundings }: Props) {
  const lesson = useLessonOf(id);
  const look = useStore(surroundings);
  const plan = useMemo(() => (lesson === null ? { steps: [] } : planOfLesson(lesson)), [lesson]);
  if (lesson === null) return <UnknownExercise />;
  return (
    <ExerciseShell kind="lesson" id={id} plan={plan}>
      <ByPhase lesson={lesson} look={look} />
    </ExerciseShell>
  );
}

const RUNS: readonly string[] = ['run', 'broken'];

function ByPhase({ lesson, look }: { readonly lesson: Lesson; readonly look: Surroundings }) {
  const { desk } = useExercise();
  const session = useSession();
  if (desk.phase === 'intro') return <LessonIntro lesson={lesson} />;
  if (desk.phase === 'debrief') return <LessonEnd lesson={lesson} />;
  // At a stop the lesson says when it goes on.
  return (
    <WorkFrame session={session} kind="lesson" still={!RUNS.includes(desk.phase)}>
      <LessonWorking lesson={lesson} look={look} />
    </WorkFrame>
  );
}
