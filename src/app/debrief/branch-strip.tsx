import { say } from '../../i18n/index.ts';
import { shortClock } from '../working/clock-text.ts';

/** Says all the time that this is a branch, and ends it. */
export function BranchStrip({ t, onClose }: { readonly t: number; readonly onClose: () => void }) {
  return (
    <div className="branch-strip">
      <p>
        <strong>{say('branch.title')}</strong> {say('branch.strip', { time: shortClock(t) })}
      </p>
      <button type="button" className="button" onClick={onClose}>
        {say('branch.close')}
      </button>
    </div>
  );
}
