import { type ClassEvent, takeClassEntry } from '../../../machines/class/index.ts';
import { MOST_ENTRIES, type Said, type Spoken } from '../../classroom/index.ts';
import { catchUp, giveOut } from './class-registry.ts';
import type { Live } from './live.ts';
import { countAnswers, type LiveClass } from './live-class.ts';
import { whyNotActs } from './why-not-acts.ts';

/** Processes that keep coming first: so often it is decided again. */
const MOST_TRIES = 10;
/** A key that is only asked for: no class stands there, so nothing is appended. */
const NOWHERE = -1;
/** The last numbers of a class are kept for its end. */
const KEPT_FOR_THE_END = 10;

/**
 * What an instructor says: decided by the chart, kept, then given out. The same key is the same
 * entry, however often it is told.
 *
 * @throws StoreFailure
 */
export function say(live: Live, one: LiveClass, key: string, spoken: Spoken): Promise<Said> {
  return one.line(async () => {
    const known = one.numbersByKey.get(key);
    if (known !== undefined) return { ok: true, n: known };
    const badActs = whyNotActs(spoken);
    if (badActs !== null) return { ok: false, error: 'acts not understood', detail: badActs };
    const { store } = live;
    for (let tries = 0; tries < MOST_TRIES; tries++) {
      const atMs = live.nowMs();
      const event = await completed(live, one, spoken as ClassEvent);
      const { state } = one;
      const isFull = state.n >= MOST_ENTRIES - KEPT_FOR_THE_END && event.type !== 'close';
      const taken = takeClassEntry(state, { n: state.n + 1, atMs, ...event });
      if (!taken.ok || isFull) {
        // Told before, and the answer lost: then the chart has it already.
        const earlier = await store.append(one.kept.id, key, event, atMs, NOWHERE);
        if (earlier !== null) return said(one, key, earlier.entry.n);
        if (taken.ok) return { ok: false, error: 'class full' };
        if (!(live.shared && (await isBehind(live, one)))) {
          return { ok: false, error: taken.refusal };
        }
        continue;
      }
      const startedMs = performance.now();
      const appended = await store.append(one.kept.id, key, event, atMs, state.n);
      if (appended === null) {
        await catchUp(live, one);
        continue;
      }
      live.metrics.time('append', performance.now() - startedMs);
      giveOut(live, one, [appended.entry]);
      if (one.state.n < appended.entry.n) await catchUp(live, one);
      live.bus.tell({ type: 'entries', class: one.kept.id, entries: [appended.entry] });
      return said(one, key, appended.entry.n);
    }
    return { ok: false, error: 'cannot be saved now' };
  });
}

function said(one: LiveClass, key: string, n: number): Said {
  one.numbersByKey.set(key, n);
  return { ok: true, n };
}

/** A refusal by what one process knew may be out of date where others write too. */
async function isBehind(live: Live, one: LiveClass): Promise<boolean> {
  const before = one.state.n;
  await catchUp(live, one);
  return one.state.n > before;
}

/** With what only the server knows: the counts of a poll. @throws StoreFailure */
async function completed(live: Live, one: LiveClass, event: ClassEvent): Promise<ClassEvent> {
  const { poll } = one.state;
  if (event.type !== 'show poll' || poll?.id !== event.id) return event;
  const answers = await live.store.pollAnswers(one.kept.id, poll.id);
  const options = poll.question.options.length;
  return {
    ...event,
    counts: countAnswers(
      answers.map(({ option }) => option),
      options,
    ),
  };
}
