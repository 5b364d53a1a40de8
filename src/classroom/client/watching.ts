import { type WorkDelta, type WorkRecord, withDelta } from '../protocol/index.ts';
import type { Link } from './link.ts';

export interface Watching {
  watch(seat: number | null): Promise<WorkRecord | null>;
  onWorked(listener: (seat: number, work: WorkRecord) => void): () => void;
  worked(seat: number, delta: WorkDelta): void;
  live(): void;
}

/** The work of one seat as it goes on; asked for again with each connection. */
export function createWatching(link: Pick<Link, 'ask' | 'phase'>): Watching {
  const listeners = new Set<(seat: number, work: WorkRecord) => void>();
  let watched: number | null = null;
  let work: WorkRecord | null = null;
  /** Told while the whole was still on its way. */
  let early: WorkDelta[] = [];
  let turns = 0;
  let asking: number | null = null;

  function tell(): void {
    if (watched === null || work === null) return;
    for (const listener of [...listeners]) listener(watched, work);
  }

  async function ask(): Promise<WorkRecord | null> {
    const seat = watched;
    turns += 1;
    const turn = turns;
    asking = turn;
    early = [];
    try {
      const answer = await link.ask('watch', { seat });
      if (turn !== asking || !answer.ok) return null;
      work = answer.work;
      for (const delta of early) merge(delta);
      tell();
      return work;
    } catch {
      return null;
    } finally {
      if (turn === asking) asking = null;
    }
  }

  function merge(delta: WorkDelta): boolean {
    const merged = withDelta(work, delta);
    if (merged.ok) work = merged.record;
    return merged.ok;
  }

  return {
    watch(seat) {
      watched = seat;
      work = null;
      return ask();
    },
    onWorked(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    worked(seat, delta) {
      if (seat !== watched) return;
      if (asking !== null) early.push(delta);
      else if (merge(delta)) tell();
      else void ask();
    },
    live() {
      if (watched !== null) void ask();
    },
  };
}
