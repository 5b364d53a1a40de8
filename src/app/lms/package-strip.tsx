import { say, slugOf } from '../../i18n/index.ts';
import { useStore } from '../session/store.ts';
import type { SystemTrouble } from './learning-system.ts';
import { type PackageNow, packageNow } from './package-now.ts';

interface Props {
  /** Ends the session with the learning system. */
  readonly onLeave: () => void;
}

/** Above the exercise: what the learning system has been told, and what is wrong with it; else nothing. */
export function PackageStrip({ onLeave }: Props) {
  const now = useStore(packageNow);
  const { told, returnAddress, trouble } = now;
  const notes = notesOf(now);
  const isShown = told !== null || notes.length > 0 || trouble !== null;
  return (
    <aside className="package-strip" aria-label={say('lms.strip')} data-shown={isShown}>
      <div role="status">
        {told === null ? null : <p>{toldWords(told, now.later)}</p>}
        {notes.map((note) => (
          <p key={note}>{note}</p>
        ))}
      </div>
      <div role="alert">
        {trouble === null ? null : (
          <p className="package-trouble">
            {say(`lms.trouble.${slugOf(trouble.trouble) as TroubleSlug}`)}
            {trouble.detail === '' ? null : (
              <span className="quiet">
                {' '}
                {say('lms.trouble.detail', { detail: trouble.detail })}
              </span>
            )}
          </p>
        )}
      </div>
      {told === null || returnAddress === null ? null : (
        <button
          type="button"
          className="button primary"
          onClick={() => {
            onLeave();
            location.assign(returnAddress);
          }}
        >
          {say('lms.return')}
        </button>
      )}
    </aside>
  );
}

type TroubleSlug = 'none' | 'not-begun' | 'session-over' | 'not-reached' | 'refused';

function toldWords({ scaled, passed }: NonNullable<PackageNow['told']>, later: boolean): string {
  const score = Math.round(scaled * 100);
  if (passed === null) return say('lms.told', { score });
  if (later) return say('lms.told.later', { score });
  return say(passed ? 'lms.told.passed' : 'lms.told.failed', { score });
}

/** The learning system as a place for the work is out of the question then. */
const KEEPS_NOTHING: readonly SystemTrouble['trouble'][] = ['none', 'not begun', 'session over'];

function notesOf({ mode, whole, onDevice, damaged, trouble }: PackageNow): readonly string[] {
  const isElsewhere = whole && !KEEPS_NOTHING.some((each) => each === trouble?.trouble);
  return [
    ...(mode === 'normal' ? [] : [say('lms.only-looking')]),
    ...(damaged ? [say('lms.damaged')] : []),
    ...(whole ? [] : [say('lms.too-long')]),
    ...(isElsewhere && trouble === null ? [] : [say(onDevice ? 'lms.on-device' : 'lms.nowhere')]),
  ];
}
