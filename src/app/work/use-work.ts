import { useEffect, useMemo } from 'react';
import type { WorkKind } from '../session/work-protocol.ts';
import { openWork } from './open-work.ts';
import { deviceShelf } from './shelf.ts';
import type { Work } from './work-types.ts';

/** A page that has just opened the work hears of what another wrote before; that is no one else's turn. */
const SETTLE_MS = 1000;

/** The saved work of an exercise, for as long as the page shows it. `useStore(work.state)` reads it. */
export function useWork(kind: WorkKind, id: string, branch?: number): Work {
  const work = useMemo(
    () => openWork(deviceShelf, nowISO, { kind, id, branch }),
    [kind, id, branch],
  );
  useEffect(() => {
    const openedMs = performance.now();
    const save = (): void => work.saveNow();
    const onStorage = ({ key, newValue }: StorageEvent): void => {
      if (key === null || newValue === null || performance.now() - openedMs < SETTLE_MS) return;
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
