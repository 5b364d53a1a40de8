/** Acts that a class wants done when a run enters a step. */
import { type ClassAct, type ClassEntry, foldClass, isFor } from '../../../machines/class/index.ts';
import type { HistoryEvent } from '../session/protocol.ts';
import type { Session } from '../session/session-types.ts';
import type { OfClass } from '../work/work-record.ts';

interface Trigger {
  /** The entry that set it. */
  readonly n: number;
  readonly step: string;
  readonly acts: readonly ClassAct[];
}

interface Ways {
  order(n: number, place: number, act: ClassAct): void;
}

/** Each is done once; one whose acts a rewind has cut off may come again. */
export function createTriggers(session: Session, { order }: Ways) {
  let waiting: readonly Trigger[] = [];
  /** Events of the run that have been looked at. */
  let seen: readonly HistoryEvent[] = [];
  /** A run that is taken up again brings its past along, which is past. */
  let fromS = 0;

  function look(): void {
    const { events } = session.store.read();
    if (events === seen) return;
    const fresh = freshOf(events, seen);
    seen = events;
    for (const event of fresh) {
      if (event.type !== 'step' || event.t <= fromS) continue;
      const due = waiting.filter(({ step }) => step === event.step);
      waiting = waiting.filter((one) => !due.includes(one));
      for (const { n, acts } of due) {
        for (const [place, act] of acts.entries()) order(n, place, act);
      }
    }
  }

  return {
    /** Those that stand after these entries and are not in the work yet. */
    set(entries: readonly ClassEntry[], seat: number, { ordered }: OfClass): void {
      const { triggers } = foldClass(entries);
      const wanted = triggers.filter(({ to }) => isFor(to, seat));
      const set = entries.filter((entry) => entry.type === 'when');
      waiting = wanted.flatMap(({ id, step, acts }) => {
        const entry = set.findLast((one) => one.type === 'when' && one.id === id);
        const isDone = entry === undefined || ordered.some(({ n }) => n === entry.n);
        return isDone ? [] : [{ n: entry.n, step, acts }];
      });
    },
    /** What comes from that moment of the run on is to be looked at. */
    startFrom(tS: number): void {
      fromS = tS;
    },
    look,
    stop(): void {
      waiting = [];
    },
  };
}

/** What was not there before; after a rewind the list is shorter, and what comes then is new. */
function freshOf(events: readonly HistoryEvent[], seen: readonly HistoryEvent[]) {
  let same = 0;
  while (same < Math.min(events.length, seen.length) && events[same] === seen[same]) same += 1;
  return events.slice(same);
}
