import { stepAt } from '../reading/step-at.ts';
import type { Session } from '../session/session-types.ts';

/**
 * Writes where the run stands onto the page's root element, for tests and for whoever
 * compares two runs: `data-run-time` is shown, `data-run-hash` belongs to `data-run-at`.
 */
export function markRun(session: Session): () => void {
  const { dataset } = document.documentElement;
  const write = (): void => {
    const { status, events, shownS, phase } = session.store.read();
    dataset.runPhase = phase;
    dataset.runTime = shownS.toFixed(1);
    dataset.runStep = stepAt(events, shownS).step;
    if (status === null) return;
    dataset.runMode = status.mode;
    dataset.runAt = status.timeS.toFixed(1);
    dataset.runHead = status.headS.toFixed(1);
    dataset.runHash = status.hash;
  };
  const stop = session.store.subscribe(write);
  write();
  return () => {
    stop();
    for (const key of Object.keys(dataset)) if (key.startsWith('run')) delete dataset[key];
  };
}
