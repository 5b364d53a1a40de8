import type { Done, ToServer } from '../../classroom/index.ts';
import { judgeSeat } from './judge-seat.ts';
import type { Live } from './live.ts';
import { type LiveClass, type LiveSeat, putSeat } from './live-class.ts';

/**
 * Work is handed in as it was saved: what was told after it counts no more.
 *
 * @throws StoreFailure
 */
export async function handIn(
  live: Live,
  one: LiveClass,
  seat: LiveSeat,
  { attempt, rev, claimed }: ToServer['hand in'],
): Promise<Done> {
  const { id } = one.kept;
  const number = seat.kept.seat;
  await live.works.reload(id, number);
  const { store } = live;
  const work = await store.work(id, number, attempt);
  if (work === null || work.rev < rev)
    return { ok: false, error: 'cannot be saved now', detail: 'rev' };
  const atMs = live.nowMs();
  await store.noteHandedIn(id, number, atMs);
  putSeat(one, { ...seat.kept, handedInMs: atMs });
  live.bus.tell({ type: 'seat', class: id, seat: number });
  void judgeSeat(live, one, number, attempt, claimed);
  return { ok: true };
}
