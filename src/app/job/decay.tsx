import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import type { Meter } from '../session/work-protocol.ts';
import { useSession, useSessionPart } from '../working/session-context.tsx';

interface Props {
  readonly meter: Meter;
  readonly place: string;
  readonly mayPin: boolean;
  readonly onPin: (reading: string) => void;
}

/** A pressure timed: what it was when the watch was started, and how far it has moved since. */
export function Decay({ meter, place, mayPin, onPin }: Props) {
  const session = useSession();
  const [from, setFrom] = useState<{ readonly shown: string; readonly atS: number } | null>(null);
  useSessionPart((state) => state.shownS);
  const { use, reading } = meter;
  const words =
    from === null
      ? ''
      : say('job.decay.so-far', {
          from: from.shown,
          to: `${reading?.shown ?? '–'} ${reading?.unit ?? ''}`.trim(),
          seconds: Math.round(session.headS() - from.atS),
        });
  function press(): void {
    if (from === null) {
      session.perform({ type: 'check', what: 'decay test', place: use.place, other: '' });
      setFrom({ shown: reading?.shown ?? '', atS: session.headS() });
      return;
    }
    onPin(words);
    setFrom(null);
  }
  return (
    <>
      <button
        type="button"
        className="button"
        aria-label={from === null ? say('job.decay.begin-it', { place }) : undefined}
        disabled={from === null ? reading === null || reading.shown === '' : !mayPin}
        onClick={press}
      >
        {say(from === null ? 'job.decay.begin' : 'job.decay.pin')}
      </button>
      {from === null ? null : (
        <span className="decay" role="timer">
          {words}
        </span>
      )}
    </>
  );
}
