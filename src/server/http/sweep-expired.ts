import { dismissClass, type Live } from '../live/index.ts';
import { isStoreFailure } from '../store/index.ts';

/** Deletes what has been kept for as long as it was to be kept. */
export async function sweepExpired(live: Live): Promise<void> {
  try {
    const gone = await live.store.deleteExpired(live.nowMs());
    for (const id of gone) {
      dismissClass(live, id);
      live.bus.tell({ type: 'deleted', class: id });
    }
    if (gone.length > 0)
      live.log.info({ classes: gone.length }, 'classes deleted, their time over');
  } catch (error) {
    if (!isStoreFailure(error)) throw error;
    live.log.warn({ trouble: error.trouble }, 'expired classes not deleted');
  }
}
