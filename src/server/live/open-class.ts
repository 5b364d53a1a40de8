import type { OpenClass, OpenedClass } from '../../classroom/index.ts';
import type { ClassStore, KeptClass } from '../store/types.ts';
import { hashOfSecret, newClassId, newCode, newSecret } from './secrets.ts';

export const RETENTION_DAYS = 90;
/** A code drawn twice is drawn again. */
const MOST_DRAWS = 5;

/**
 * A new class with its first entry.
 *
 * @param seed of its runs, where none was given
 * @throws StoreFailure
 */
export async function openClass(
  store: ClassStore,
  asked: OpenClass,
  atMs: number,
  seed: number,
): Promise<OpenedClass> {
  const [id, secret, projectorKey] = [newClassId(), newSecret(), newSecret()];
  const code = await freeCode(store);
  const opening: Omit<KeptClass, 'n' | 'closedMs'> = {
    id,
    code,
    secretHash: hashOfSecret(secret),
    projectorHash: hashOfSecret(projectorKey),
    what: asked.what,
    way: asked.way,
    seed: asked.seed ?? seed,
    openedMs: atMs,
    retentionDays: asked.retentionDays ?? RETENTION_DAYS,
  };
  await store.openClass(opening);
  const { what, way } = opening;
  const event = { type: 'open', what, way, seed: opening.seed } as const;
  await store.append(id, `open ${id}`, event, atMs, 0);
  return { id, code, secret, projectorKey };
}

async function freeCode(store: ClassStore): Promise<string> {
  for (let draws = 0; draws < MOST_DRAWS; draws++) {
    const code = newCode();
    if ((await store.classByCode(code)) === null) return code;
  }
  throw new Error('no free code was drawn');
}
