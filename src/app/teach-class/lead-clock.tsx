import { say } from '../../i18n/index.ts';
import { clockText } from '../working/clock-text.ts';
import { useSessionPart } from '../working/session-context.tsx';

/** Where the one plant stands in time. */
export function LeadClock() {
  const shownS = useSessionPart((state) => state.shownS);
  const lookingBack = useSessionPart((state) => state.lookingBack);
  return (
    <p
      className="bar-clock lead-clock"
      role="timer"
      aria-label={say('app.run.clock')}
      data-looking-back={lookingBack}
    >
      {clockText(shownS)}
    </p>
  );
}
