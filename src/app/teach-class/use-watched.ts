import { useEffect, useState } from 'react';
import type { SeatState, WorkRecord } from '../../classroom/index.ts';
import type { TimedAction } from '../../engine/index.ts';
import type { Told } from '../session/told.ts';

/** What watching needs: an instructor's connection has it, and a projector's. */
export interface Watching {
  watch(seat: number | null): Promise<WorkRecord | null>;
  onWorked(listener: (seat: number, work: WorkRecord) => void): () => void;
}

/** `none`: the seat has told nothing yet. */
export type Watched = WorkRecord | 'none' | null;

/** The work of a seat as it goes on; null while it is fetched. */
export function useWatched(client: Watching, seat: number | null): Watched {
  const [watched, setWatched] = useState<Watched>(null);
  useEffect(() => {
    if (seat === null) return;
    let wanted = true;
    setWatched(null);
    const stop = client.onWorked((of, work) => {
      if (wanted && of === seat) setWatched(work);
    });
    void client.watch(seat).then((work) => {
      if (wanted) setWatched((now) => (now === null || now === 'none' ? (work ?? 'none') : now));
    });
    return () => {
      wanted = false;
      stop();
      void client.watch(null);
    };
  }, [client, seat]);
  return watched;
}

/** Where a watched run has come to. It is told with each act, and how it goes on by the seat's state. */
export function toldOfWork(work: WorkRecord, state: SeatState | null, speed: number): Told {
  return {
    log: work.acts as TimedAction[],
    headS: work.headS,
    hash: work.hash,
    mode: state?.running === true ? 'playing' : 'paused',
    speed,
  };
}
