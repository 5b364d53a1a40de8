import { say } from '../../i18n/index.ts';
import { useExercise } from '../job/exercise-context.tsx';
import { ExerciseFront } from '../job/exercise-front.tsx';
import { type Lesson, plantTitle } from '../library/exercises.ts';
import { useSessionPart } from '../working/session-context.tsx';

export function LessonIntro({ lesson }: { readonly lesson: Lesson }) {
  const { take } = useExercise();
  const open = useSessionPart((state) => state.phase === 'open');
  return (
    <ExerciseFront title={lesson.title}>
      <p className="choices-lead">{plantTitle(lesson.plant)}</p>
      <p className="front-lead">{lesson.intro}</p>
      <p className="caution">
        {lesson.caution ?? ''} {say('job.card.caution')}
      </p>
      <p className="front-actions">
        <button
          type="button"
          className="button primary"
          disabled={!open}
          onClick={() => take({ type: 'begin' })}
        >
          {say('lesson.begin')}
        </button>
      </p>
    </ExerciseFront>
  );
}
