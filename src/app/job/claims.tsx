import { NO_FAULT } from '../../../machines/job/index.ts';
import { say } from '../../i18n/index.ts';
import { useExercise } from './exercise-context.tsx';

/** What was named so far. */
export function Claims({ mayWithdraw }: { readonly mayWithdraw: boolean }) {
  const { desk, take } = useExercise();
  const last = desk.claims.length - 1;
  return (
    <ul className="claims">
      {desk.claims.map(({ part, mechanism, why, unsupported }, place) => (
        <li key={part}>
          <p>
            <strong>{say('job.finish.claimed', { part: claimedPart(part) })}</strong>,{' '}
            {unsupported
              ? say('job.finish.unsupported')
              : say(why.length === 1 ? 'job.finish.supported-one' : 'job.finish.supported', {
                  count: why.length,
                })}
          </p>
          {mechanism === '' ? null : <p className="quiet">{mechanism}</p>}
          {mayWithdraw && place === last ? (
            <button type="button" className="button" onClick={() => take({ type: 'withdraw' })}>
              {say('job.finish.withdraw')}
            </button>
          ) : null}
        </li>
      ))}
    </ul>
  );
}

export function claimedPart(part: string): string {
  return part === NO_FAULT ? say('job.finish.no-fault') : part;
}
