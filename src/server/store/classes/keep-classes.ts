import type { ClassWhat } from '../../../../machines/class/index.ts';
import type { ClassStore, Database, KeptClass, Row } from '../types.ts';

type Kept = Pick<
  ClassStore,
  | 'openClass'
  | 'classById'
  | 'classByCode'
  | 'classes'
  | 'setRetention'
  | 'deleteClass'
  | 'deleteExpired'
>;

const DAY_MS = 86_400_000;
const COLUMNS =
  'id, code, secret_hash, projector_hash, what, way, seed, opened_ms, closed_ms, retention_days, n';

export function keepClasses(database: Database): Kept {
  async function oneWhere(condition: string, value: string): Promise<KeptClass | null> {
    const sql = `select ${COLUMNS}, given from class where ${condition}`;
    const [row] = await database.query(sql, [value]);
    return row === undefined ? null : classOf(row);
  }

  return {
    async openClass(kept) {
      const { given, ...what } = kept.what;
      await database.query(
        `insert into class
          (id, code, secret_hash, projector_hash, what, given, way, seed, opened_ms, retention_days)
          values ($1, $2, $3, $4, $5::json, $6::json, $7, $8, $9, $10)`,
        [
          kept.id,
          kept.code,
          kept.secretHash,
          kept.projectorHash,
          JSON.stringify(what),
          given === undefined ? null : JSON.stringify(given),
          kept.way,
          kept.seed,
          kept.openedMs,
          kept.retentionDays,
        ],
      );
    },
    classById: (id) => oneWhere('id = $1', id),
    classByCode: (code) => oneWhere('code = $1 and closed_ms is null', code),
    async classes() {
      const rows = await database.query(
        `select ${COLUMNS}, seats from class order by opened_ms desc, id`,
      );
      return rows.map((row) => ({ ...classOf(row), seats: row.seats as number }));
    },
    async setRetention(id, days) {
      await database.query('update class set retention_days = $2 where id = $1', [id, days]);
    },
    async deleteClass(id) {
      await database.query('delete from class where id = $1', [id]);
    },
    async deleteExpired(nowMs) {
      // From its end; a class that nobody closed, from what was said in it last.
      const rows = await database.query<{ id: string }>(
        `delete from class as c
          where coalesce(
            c.closed_ms,
            (select max(e.at_ms) from class_entry e where e.class = c.id),
            c.opened_ms
          ) + c.retention_days * ${DAY_MS}::bigint < $1
          returning id`,
        [Math.floor(nowMs)],
      );
      return rows.map(({ id }) => id);
    },
  };
}

function classOf(row: Row): KeptClass {
  const { given = null } = row;
  const what = row.what as ClassWhat;
  return {
    id: row.id as string,
    code: row.code as string,
    secretHash: row.secret_hash as string,
    projectorHash: row.projector_hash as string,
    what: given === null ? what : { ...what, given },
    way: row.way as KeptClass['way'],
    seed: row.seed as number,
    openedMs: row.opened_ms as number,
    closedMs: row.closed_ms as number | null,
    retentionDays: row.retention_days as number,
    n: row.n as number,
  };
}
