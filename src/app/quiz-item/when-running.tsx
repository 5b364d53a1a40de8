import type { ReactNode } from 'react';
import { say } from '../../i18n/index.ts';
import { useSessionPart } from '../working/session-context.tsx';

/** What needs the run, once it is open; and what is said where it cannot be. */
export function WhenRunning({ children }: { readonly children: ReactNode }) {
  const phase = useSessionPart((state) => state.phase);
  const failure = useSessionPart((state) => state.failure);
  if (phase === 'open') return children;
  if (phase === 'opening') return <p className="item-waits">{say('app.opening')}</p>;
  return (
    <div className="item-waits" role="alert">
      <p>{say('quiz.stem.no-record')}</p>
      {failure === null || failure.detail === '' ? null : (
        <details>
          <summary>{say('app.failure.detail')}</summary>
          <pre>{failure.detail}</pre>
        </details>
      )}
    </div>
  );
}
