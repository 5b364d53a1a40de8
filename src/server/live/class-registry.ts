import type { Live } from './live.ts';
import { createLiveClass, type LiveClass, noteAnswer, putSeat, takeEntries } from './live-class.ts';
import { everyoneOf } from './rooms.ts';

/** How long a class without any connection is kept in memory, ms. */
const KEEP_EMPTY_MS = 60_000;

/** The class, from memory or from the store; null where there is none. @throws StoreFailure */
export function findClass(live: Live, id: string): Promise<LiveClass | null> {
  const known = live.classes.get(id);
  if (known !== undefined) return Promise.resolve(known);
  const underWay = live.loading.get(id);
  if (underWay !== undefined) return underWay;
  const loading = load(live, id).finally(() => live.loading.delete(id));
  live.loading.set(id, loading);
  return loading;
}

/** Of the classes that are not closed. @throws StoreFailure */
export async function findClassByCode(live: Live, code: string): Promise<LiveClass | null> {
  for (const one of live.classes.values()) {
    if (one.kept.code === code && one.state.phase !== 'closed') return one;
  }
  const kept = await live.store.classByCode(code);
  return kept === null ? null : findClass(live, kept.id);
}

/** Takes what other processes have said in the meantime, and tells it. @throws StoreFailure */
export async function catchUp(live: Live, one: LiveClass): Promise<void> {
  const { store } = live;
  giveOut(live, one, await store.entriesSince(one.kept.id, one.state.n));
}

/** Takes entries and tells them to everyone here, in the order of their numbers. */
export function giveOut(
  live: Live,
  one: LiveClass,
  entries: Parameters<typeof takeEntries>[1],
): void {
  const wereNamesOn = one.state.names;
  for (const entry of takeEntries(one, entries)) {
    live.io.local.to(everyoneOf(one.kept.id)).emit('entry', entry);
    live.metrics.count('entries');
    if (entry.type === 'poll') one.countsChanged = true;
  }
  if (one.state.names !== wereNamesOn) one.rosterChanged = true;
}

/** Reads seats that came through other processes. @throws StoreFailure */
export async function readSeat(live: Live, one: LiveClass, seat: number) {
  const kept = await live.store.seat(one.kept.id, seat);
  return kept === null ? null : putSeat(one, kept);
}

/** Lets go of classes that nobody is in any more. */
export function forgetEmpty(live: Live): void {
  const now = live.nowMs();
  for (const [id, one] of live.classes) {
    const isEmpty = one.sockets === 0 && now - one.emptySinceMs > KEEP_EMPTY_MS;
    if (isEmpty && !live.works.hasPending(id)) live.classes.delete(id);
  }
}

async function load(live: Live, id: string): Promise<LiveClass | null> {
  const { store } = live;
  const kept = await store.classById(id);
  if (kept === null) return null;
  const [entries, seats] = await Promise.all([store.entriesSince(id, 0), store.seats(id)]);
  const one = createLiveClass(kept, seats, live.nowMs());
  takeEntries(one, entries);
  const poll = one.state.poll;
  if (poll !== null) {
    for (const answer of await store.pollAnswers(id, poll.id)) noteAnswer(one, answer);
  }
  live.classes.set(id, one);
  return one;
}
