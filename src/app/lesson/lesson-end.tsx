import { say, sayWord } from '../../i18n/index.ts';
import { AgainButton } from '../job/again-button.tsx';
import { useExercise } from '../job/exercise-context.tsx';
import { ExerciseFront } from '../job/exercise-front.tsx';
import { LessonCounted } from '../learner/counted-note.tsx';
import type { Lesson } from '../library/exercises.ts';
import { WayOut } from '../shell/way-out.tsx';

/** What to take away, and how the questions went. */
export function LessonEnd({ lesson }: { readonly lesson: Lesson }) {
  const { desk } = useExercise();
  const asked = lesson.steps.flatMap(({ step, ask }, stop) =>
    ask === undefined ? [] : [{ step, ask, stop, option: desk.answers[stop]?.option ?? null }],
  );
  const right = asked.filter(({ ask, option }) => option === ask.right).length;
  return (
    <ExerciseFront title={lesson.title}>
      <p className="front-lead">{lesson.outro}</p>
      <p className="choices-lead">
        <strong>{say('lesson.done', { right, count: asked.length })}</strong>
      </p>
      <ul className="lesson-answers">
        {asked.map(({ step, ask, stop, option }) => (
          <li key={stop} data-right={option === ask.right}>
            <p className="quiet">{sayWord('step', step, '.title')}</p>
            <p>
              <strong>{ask.question}</strong>
            </p>
            <p>
              <span className="option-mark" aria-hidden="true">
                {option === ask.right ? '✓' : '×'}
              </span>{' '}
              {ask.options[ask.right]}
            </p>
          </li>
        ))}
      </ul>
      <LessonCounted lesson={lesson} />
      <p className="buttons debrief-acts">
        <WayOut className="button primary" href="#/practise">
          {say('lesson.to-jobs')}
        </WayOut>
        <AgainButton />
      </p>
    </ExerciseFront>
  );
}
