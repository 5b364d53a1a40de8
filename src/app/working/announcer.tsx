import { useEffect, useRef, useState } from 'react';
import { say, sayWord } from '../../i18n/index.ts';
import { stepAt } from '../reading/step-at.ts';
import { useSession } from './session-context.tsx';

/** Says each change of step, and a lockout with its cause, to those who do not see it. */
export function Announcer() {
  const session = useSession();
  const [said, setSaid] = useState('');
  const last = useRef('');
  useEffect(
    () =>
      session.store.subscribe(() => {
        const { events, shownS, phase } = session.store.read();
        if (phase !== 'open') return;
        const at = stepAt(events, shownS);
        const text =
          at.lockout === null
            ? sayWord('step', at.step, '.title')
            : say('app.lockout.title', { cause: sayWord('cause', at.lockout.cause) });
        if (text === last.current) return;
        last.current = text;
        setSaid(text);
      }),
    [session],
  );
  return (
    <p className="for-readers" aria-live="polite" role="status">
      {said}
    </p>
  );
}
