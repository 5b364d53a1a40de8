import { say } from '../../i18n/index.ts';
import { useExercise } from '../job/exercise-context.tsx';
import { useSession, useSessionPart } from '../working/session-context.tsx';

/** Simulated seconds until the time is up; it runs with the plant. */
export function useTimeLeftS(limitS: number): number {
  const { desk } = useExercise();
  const session = useSession();
  useSessionPart((state) => state.shownS);
  const begunS = desk.begunAt ?? session.headS();
  return Math.max(0, begunS + limitS - session.headS());
}

export function TimeLeft({ limitS }: { readonly limitS: number }) {
  const { desk } = useExercise();
  const leftS = useTimeLeftS(limitS);
  if (desk.phase === 'claim') return null;
  return (
    <p className="minutes" data-over={leftS === 0}>
      <strong>
        {leftS === 0 ? say('drill.over') : say('drill.left', { seconds: Math.ceil(leftS) })}
      </strong>
      <span className="minutes-bar" aria-hidden="true">
        <span style={{ width: `${(leftS / limitS) * 100}%` }} />
      </span>
    </p>
  );
}
