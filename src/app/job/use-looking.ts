import { useEffect, useMemo, useState } from 'react';
import type { LookReading, LookWhat } from '../../engine/index.ts';
import { stepAt } from '../reading/step-at.ts';
import { useSession, useSessionPart } from '../working/session-context.tsx';

export interface Seen {
  readonly what: LookWhat;
  readonly reading: LookReading;
  readonly atS: number;
  readonly step: string;
}

export interface Looking {
  /** What the eyes are on; null while they are on the whole plant. */
  readonly seen: Seen | null;
  /** Takes a look, which is written down; eyes stay on it until they are taken off. */
  look(what: LookWhat): void;
  close(): void;
}

/** Half a simulated second: what can be seen to move is seen to move. */
const AGAIN_PER_S = 2;

/** Where the technician's eyes are. What had to be opened is seen once; the rest is watched. */
export function useLooking(): Looking {
  const session = useSession();
  const [seen, setSeen] = useState<Seen | null>(null);
  const beat = useSessionPart((state) => Math.floor(state.shownS * AGAIN_PER_S));
  const watched = seen === null || seen.reading.needsOpening ? null : seen.what;
  const glance = useMemo(
    () => async (what: LookWhat) => {
      const reading = await session.look(what);
      const atS = session.headS();
      const { step } = stepAt(session.store.read().events, atS);
      return reading === null ? null : { what, reading, atS, step };
    },
    [session],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: looked at again with each beat
  useEffect(() => {
    if (watched === null) return;
    let wanted = true;
    glance(watched).then(
      (next) => {
        if (wanted && next !== null) setSeen(next);
      },
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [glance, watched, beat]);
  return useMemo(
    () => ({
      seen,
      look(what) {
        session.perform({ type: 'check', what: 'look', place: what, other: '' });
        glance(what).then(setSeen, () => undefined);
      },
      close: () => setSeen(null),
    }),
    [seen, session, glance],
  );
}
