import { useState } from 'react';
import { say } from '../../i18n/index.ts';
import { useStore } from '../session/store.ts';
import { offline, takeNewVersion } from './offline.ts';

/** A word, once, that the page now works without a network, or that a newer version waits. */
export function OfflineNote() {
  const { state } = useStore(offline);
  const [dismissed, setDismissed] = useState<typeof state>('none');
  if (state === 'none' || state === dismissed) return null;
  return (
    <div className="offline-note" role="status">
      <p>{say(state === 'ready' ? 'app.offline.ready' : 'app.offline.newer')}</p>
      {state === 'newer' ? (
        <button type="button" className="button primary" onClick={takeNewVersion}>
          {say('app.offline.take')}
        </button>
      ) : null}
      <button type="button" className="button" onClick={() => setDismissed(state)}>
        {say(state === 'ready' ? 'app.offline.good' : 'app.offline.later')}
      </button>
    </div>
  );
}
