import { say } from '../../i18n/index.ts';
import { useStorePart } from '../session/store.ts';
import { useSession } from '../working/session-context.tsx';

/** What the visit has taken so far, of what it may take. */
export function MinutesUsed({ budget }: { readonly budget: number }) {
  const minutes = useStorePart(useSession().atThePlant, (state) => state.minutes);
  if (minutes === null) return null;
  const used = Math.ceil(minutes.total);
  const over = used - budget;
  return (
    <p className="minutes" data-over={over > 0}>
      <span>{say('job.minutes')}</span>{' '}
      <strong>
        {over > 0
          ? say('job.minutes-over', { used, over })
          : say('job.minutes-of', { used, budget })}
      </strong>
      <span className="minutes-bar" aria-hidden="true">
        <span style={{ width: `${Math.min(100, (used / budget) * 100)}%` }} />
      </span>
    </p>
  );
}
