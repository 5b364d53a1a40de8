import { say } from '../../i18n/index.ts';
import { useExercise } from '../job/exercise-context.tsx';
import type { Lesson } from '../library/exercises.ts';
import { useSession } from '../working/session-context.tsx';

/** Something to break at this stop, to watch, and to put back as it was. */
export function BreakIt({ stop }: { readonly stop: Lesson['steps'][number] }) {
  const session = useSession();
  const { desk, take } = useExercise();
  const { tryBreaking } = stop;
  if (tryBreaking === undefined) return null;
  const { fault, severity, watch } = tryBreaking;
  if (desk.phase === 'answered') {
    return (
      <div className="break-it">
        <p>{say('lesson.break-what', { what: fault })}</p>
        <button
          type="button"
          className="button"
          onClick={() => {
            if (take({ type: 'break', fault }) !== null) return;
            session.perform({ type: 'insert-fault', fault, severity });
            session.play();
          }}
        >
          {say('lesson.break')}
        </button>
      </div>
    );
  }
  if (desk.phase !== 'broken') return null;
  return (
    <div className="break-it" data-broken={true}>
      <p>
        <strong>{say('lesson.broken', { what: fault })}</strong>
      </p>
      <p>{say('lesson.watch', { watch })}</p>
      <button
        type="button"
        className="button primary"
        onClick={() => {
          if (take({ type: 'put back' }) === null) session.putBack();
        }}
      >
        {say('lesson.put-back')}
      </button>
    </div>
  );
}
