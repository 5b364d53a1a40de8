import type { ToServer } from '../../classroom/index.ts';
import type { Live } from './live.ts';
import type { LiveClass } from './live-class.ts';
import { noteFailure } from './serve-messages.ts';

/** Runs a seat's saved work again and keeps what comes of it. What fails here is judged when results are asked for. */
export async function judgeSeat(
  live: Live,
  one: LiveClass,
  seat: number,
  attempt: number,
  claimed: ToServer['hand in']['claimed'],
): Promise<void> {
  const { what, seed } = one.state;
  if (what === null) return;
  try {
    const { store } = live;
    const { id } = one.kept;
    const [work, kept] = await Promise.all([store.work(id, seat, attempt), store.seat(id, seat)]);
    if (work === null || kept === null) return;
    const verdict = await live.judge.judge({
      what,
      seed,
      entries: one.entries,
      seat: kept,
      work,
      claimed,
    });
    if (verdict === null) return;
    await store.saveResult(id, { seat, attempt, judgedMs: live.nowMs(), ...verdict });
    live.metrics.count('judged');
    if (verdict.refused !== null) {
      live.metrics.count('judged otherwise');
      live.log.warn({ class: id, seat, attempt }, 'figures of a page refused');
    }
  } catch (error) {
    noteFailure(live, error, 'judge');
  }
}

/** Judges the newest work of every seat that has not been judged; one after another. */
export async function judgeAll(live: Live, one: LiveClass): Promise<void> {
  if (one.judging) return;
  one.judging = true;
  try {
    for (const { seat, attempt } of await unjudged(live, one)) {
      if (one.gone) return;
      await judgeSeat(live, one, seat, attempt, null);
    }
  } catch (error) {
    noteFailure(live, error, 'judge all');
  } finally {
    one.judging = false;
  }
}

/** @throws StoreFailure */
export async function unjudged(
  live: Live,
  one: LiveClass,
): Promise<readonly { readonly seat: number; readonly attempt: number }[]> {
  const { store } = live;
  const { id } = one.kept;
  const [works, results] = await Promise.all([store.attempts(id), store.results(id)]);
  const judged = new Set(results.map(({ seat, attempt }) => `${seat} ${attempt}`));
  return works.filter(({ seat, attempt }) => seat > 0 && !judged.has(`${seat} ${attempt}`));
}
