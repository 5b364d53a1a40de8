import { useEffect, useMemo } from 'react';
import type { WorkKind } from '../session/work-protocol.ts';
import { openWork } from './open-work.ts';
import { keyOnShelf } from './shelf.ts';
import { useWorkPlace } from './work-place.ts';
import type { Work } from './work-types.ts';

/** A page that has just opened the work hears of what another wrote before; that is no one else's turn. */
const SETTLE_MS = 1000;

/** The saved work of an exercise, for as long as the page shows it. `useStore(work.state)` reads it. */
export function useWork(kind: WorkKind, id: string, branch?: number): Work {
  const { shelf } = useWorkPlace();
  const work = useMemo(
    () => openWork(shelf, nowISO, { kind, id, branch }),
    [shelf, kind, id, branch],
  );
  useEffect(() => {
    const openedMs = performance.now();
    const save = (): void => work.saveNow();
    const onStorage = (event: StorageEvent): void => {
      const key = keyOnShelf(event);
      if (key === null || event.newValue === null || performance.now() - openedMs < SETTLE_MS)
        return;
      work.yieldTo(key);
    };
    addEventListener('pagehide', save);
    document.addEventListener('visibilitychange', save);
    addEventListener('storage', onStorage);
    return () => {
      save();
      removeEventListener('pagehide', save);
      document.removeEventListener('visibilitychange', save);
      removeEventListener('storage', onStorage);
    };
  }, [work]);
  return work;
}

function nowISO(): string {
  return new Date().toISOString();
}
