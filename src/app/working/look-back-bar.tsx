import { say } from '../../i18n/index.ts';
import { useSession, useSessionPart } from './session-context.tsx';

/** Why time stands still, and the ways on from a moment in the past. */
export function LookBackBar() {
  const session = useSession();
  const note = useSessionPart((state) => state.status?.note ?? null);
  const lookingBack = useSessionPart((state) => state.lookingBack);
  const canRewind = useSessionPart((state) => state.facts?.work.rewinds ?? true);
  const follows = useSessionPart((state) => (state.status?.follows ?? null) !== null);
  const rewinds = canRewind && !follows;
  if (!lookingBack && note === null) return null;
  return (
    <div className="look-back">
      <p role="status">
        {say(
          lookingBack
            ? rewinds
              ? 'app.chart.looking-back'
              : 'app.chart.looking-back-only'
            : note === 'end of run'
              ? 'app.run.end'
              : 'app.run.no-step-change',
        )}
      </p>
      {lookingBack ? (
        <div className="look-back-acts">
          {rewinds ? (
            <button type="button" className="button primary" onClick={() => session.play()}>
              {say('app.chart.run-on')}
            </button>
          ) : null}
          <button type="button" className="button" onClick={() => session.backToLive()}>
            {say('app.chart.live')}
          </button>
        </div>
      ) : null}
    </div>
  );
}
