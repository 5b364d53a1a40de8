import { say } from '../../i18n/index.ts';
import { FrontFrame } from '../front/front-frame.tsx';
import { useExercise } from '../job/exercise-context.tsx';
import { Notices } from '../job/notices.tsx';
import { type Lesson, plantTitle } from '../library/exercises.ts';
import { PageHeading } from '../shell/page-heading.tsx';
import { useSessionPart } from '../working/session-context.tsx';

export function LessonIntro({ lesson }: { readonly lesson: Lesson }) {
  const { take } = useExercise();
  const open = useSessionPart((state) => state.phase === 'open');
  return (
    <FrontFrame>
      <a className="back" href="#/practise">
        ← {say('job.to-practise')}
      </a>
      <Notices />
      <PageHeading>{lesson.title}</PageHeading>
      <p className="choices-lead">{plantTitle(lesson.plant)}</p>
      <p className="front-lead">{lesson.intro}</p>
      <p className="caution">
        <strong>{say('app.caution.short')}</strong> {lesson.caution ?? ''} {say('job.card.caution')}
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
    </FrontFrame>
  );
}
