import type { WorkDelta } from '../../classroom/index.ts';
import type { Live } from './live.ts';
import type { LiveClass } from './live-class.ts';
import { everyoneOf, watchersOf } from './rooms.ts';

const ONE_PLANT = 0;

/** Hands on what another process was told, so that what this one holds stays the same as what its pages hold. */
export async function hearWork(
  live: Live,
  one: LiveClass,
  seat: number | null,
  delta: WorkDelta,
): Promise<void> {
  const { id } = one.kept;
  if (seat !== null) {
    live.io.local.to(watchersOf(id, seat)).emit('worked', { seat, delta });
    return;
  }
  if (live.works.overhear(id, ONE_PLANT, delta)) {
    live.io.local.to(everyoneOf(id)).emit('worked', { seat: null, delta });
    return;
  }
  await renewPlantWork(live, one);
}

/**
 * Reads the one plant's work where something of it was missed, and tells all of it.
 *
 * @throws StoreFailure
 */
export async function renewPlantWork(live: Live, one: LiveClass): Promise<void> {
  const { id } = one.kept;
  const before = live.works.known(id, ONE_PLANT);
  const work = await live.works.reload(id, ONE_PLANT);
  const isNew =
    work !== null &&
    (before === null ||
      work.attempt > before.attempt ||
      (work.attempt === before.attempt && work.rev > before.rev));
  if (!isNew) return;
  const { acts, desk, ...head } = work;
  const delta: WorkDelta = { ...head, keepActs: 0, acts, keepDesk: 0, desk };
  live.io.local.to(everyoneOf(id)).emit('worked', { seat: null, delta });
}
