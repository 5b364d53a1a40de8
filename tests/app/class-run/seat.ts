/** A seat of a class: work on a shelf, a run of the real engine, and what the class says is done to it. */
import type { ClassEntry, ClassEvent } from '../../../machines/class/index.ts';
import { takeCommands } from '../../../src/app/class-run/index.ts';
import { openWork } from '../../../src/app/work/open-work.ts';
import type { WorkName } from '../../../src/app/work/work-record.ts';
import { type Clock, openRealSession } from '../session/real-session.ts';
import { createToyShelf } from '../work/toy-shelf.ts';

export const SEAT = 3;
const TICK_MS = 50;
const AT_ISO = '2026-01-01T09:00:00.000Z';

/** Numbers what is said, in order. */
export function entriesOf(...events: readonly ClassEvent[]): ClassEntry[] {
  return events.map((event, place) => ({ n: place + 1, atMs: 1000 * place, ...event }));
}

export function opened(kind: 'start' | 'job', id: string): ClassEvent {
  const what = { kind, id, title: '', plant: 'dairy' } as const;
  return { type: 'open', what, way: 'own copies', seed: 5 };
}

/** The device of a learner: pages come and go, the shelf stays. */
export function openSeat(name: WorkName) {
  const shelf = createToyShelf();
  const clock: Clock = { ms: 0 };
  const applied: number[] = [];
  let known: readonly ClassEntry[] = [];

  function openPage() {
    const work = openWork(shelf, () => AT_ISO, name);
    const run = openRealSession(clock, { ...work.opening(), seed: 5, play: false });
    const detach = work.attach(run.session);
    const commands = takeCommands({
      work,
      session: run.session,
      seat: SEAT,
      onApplied: (n) => applied.push(n),
    });
    commands.take(known);
    return { work, run, session: run.session, detach, commands };
  }
  let page = openPage();

  return {
    shelf,
    applied,
    get work() {
      return page.work;
    },
    get session() {
      return page.session;
    },
    hear(entries: readonly ClassEntry[]): void {
      known = entries;
      page.commands.take(entries);
    },
    async live(realS: number): Promise<void> {
      for (let ms = 0; ms < realS * 1000; ms += TICK_MS) {
        clock.ms += TICK_MS;
        page.run.tick();
        // What waits for a promise goes on between two ticks, as in a browser.
        await Promise.resolve();
        await Promise.resolve();
      }
    },
    /** The page goes, with or without a last word to the shelf, and is opened again. */
    reload({ saves }: { readonly saves: boolean }): void {
      page.commands.stop();
      if (saves) page.detach();
      else page.session.close();
      page = openPage();
    },
    log: () => page.work.state.read().record?.log ?? [],
    status: () => page.session.store.read().status,
  };
}
