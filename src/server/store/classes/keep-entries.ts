import type { ClassEntry, ClassEvent } from '../../../../machines/class/index.ts';
import { classEventSchema } from '../../../classroom/index.ts';
import { storeFailure } from '../failure.ts';
import type { ClassStore, Database, Row } from '../types.ts';

type Kept = Pick<ClassStore, 'append' | 'entriesSince' | 'lastNumbers'>;

/**
 * One statement, so that a number is given only with its entry. Whoever comes at the same time
 * waits for the row of the class, finds it at another number, and gets nothing.
 */
const APPEND = `
  with known as (
    select n, at_ms, event from class_entry where class = $1 and key = $2
  ), step as (
    update class
      set n = n + 1, closed_ms = case when $6::boolean then $4::bigint else closed_ms end
      where id = $1 and n = $5::int and not exists (select from known)
      returning n
  ), added as (
    insert into class_entry (class, n, key, at_ms, event)
      select $1, n, $2, $4::bigint, $3::json from step
      returning n, at_ms, event
  )
  select n, at_ms, event, false as fresh from known
  union all
  select n, at_ms, event, true as fresh from added`;

export function keepEntries(database: Database): Kept {
  return {
    async append(id, key, event, atMs, after) {
      const isEnd = event.type === 'close';
      const params = [id, key, JSON.stringify(event), Math.floor(atMs), after, isEnd];
      const [row] = await database.query(APPEND, params);
      if (row !== undefined) return { entry: entryOf(row), fresh: row.fresh === true };
      // The same key may have come in by another process while this one waited.
      const [known] = await database.query(
        'select n, at_ms, event from class_entry where class = $1 and key = $2',
        [id, key],
      );
      return known === undefined ? null : { entry: entryOf(known), fresh: false };
    },
    async entriesSince(id, n) {
      const rows = await database.query(
        'select n, at_ms, event from class_entry where class = $1 and n > $2 order by n',
        [id, n],
      );
      return rows.map(entryOf);
    },
    async lastNumbers(ids) {
      const rows = await database.query<{ id: string; n: number }>(
        'select id, n from class where id = any($1::text[])',
        [[...ids]],
      );
      return new Map(rows.map((row) => [row.id, row.n]));
    },
  };
}

/** @throws StoreFailure where another version of this program wrote what this one does not know */
function entryOf({ n, at_ms, event }: Row): ClassEntry {
  const read = classEventSchema.safeParse(event);
  if (!read.success) throw storeFailure('database refused', read.error);
  // As it was written: a schema leaves out what it does not know.
  return { n: n as number, atMs: at_ms as number, ...(event as ClassEvent) };
}
