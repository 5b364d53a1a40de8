import { say } from '../../i18n/index.ts';
import type { Failure } from '../session/protocol.ts';

interface Props {
  readonly failure: Failure;
  readonly detail: string;
  readonly onDismiss: (() => void) | null;
  readonly onAgain: () => void;
}

/** Something went wrong in the program, not in the plant: what, and the ways on. */
export function FailureNote({ failure, detail, onDismiss, onAgain }: Props) {
  return (
    <div className="failure" role="alert">
      <p>
        <strong>{say(FAILURE_CODES[failure])}</strong>
      </p>
      {detail === '' ? null : (
        <details>
          <summary>{say('app.failure.detail')}</summary>
          <pre>{detail}</pre>
        </details>
      )}
      <p className="failure-acts">
        <button type="button" className="button primary" onClick={onAgain}>
          {say('app.failure.again')}
        </button>
        {onDismiss === null ? (
          <a className="button" href="#/practise">
            {say('app.failure.choose')}
          </a>
        ) : (
          <button type="button" className="button" onClick={onDismiss}>
            {say('app.failure.dismiss')}
          </button>
        )}
      </p>
    </div>
  );
}

const FAILURE_CODES = {
  'unknown scenario': 'app.failure.unknown-scenario',
  'scenario does not load': 'app.failure.scenario-does-not-load',
  'message not understood': 'app.failure.message-not-understood',
  'action refused': 'app.failure.action-refused',
  'replay differs': 'app.failure.replay-differs',
  'simulation stopped': 'app.failure.simulation-stopped',
  'exercise changed': 'app.failure.exercise-changed',
  'work differs': 'app.failure.work-differs',
} as const satisfies Record<Failure, string>;
