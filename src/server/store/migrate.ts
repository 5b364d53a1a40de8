import { readdirSync, readFileSync } from 'node:fs';
import { storeFailure } from './failure.ts';
import type { Row } from './types.ts';

export interface Migration {
  readonly number: number;
  readonly name: string;
  readonly sql: string;
}

/** One connection, on which nobody else says anything meanwhile. */
export interface MigrationConnection {
  query(sql: string, params?: readonly unknown[]): Promise<readonly Row[]>;
  /** Several statements at once. */
  run(sql: string): Promise<void>;
}

const FOLDER = new URL('./migrations/', import.meta.url);
const FILE_NAME = /^(\d+)-(.+)\.sql$/;

/** The shipped ones, in order. */
export function readMigrations(folder: URL = FOLDER): readonly Migration[] {
  return readdirSync(folder)
    .map((file) => ({ file, found: FILE_NAME.exec(file) }))
    .filter(({ found }) => found !== null)
    .map(({ file, found }) => ({
      number: Number(found?.[1]),
      name: found?.[2] ?? '',
      sql: readFileSync(new URL(file, folder), 'utf8'),
    }))
    .sort((a, b) => a.number - b.number);
}

/**
 * Brings a database to where this program wants it; each migration is there whole or not at all.
 * The caller sees to it that only one process does so at a time.
 *
 * @throws StoreFailure where the database is of a newer program than this one
 */
export async function migrate(
  connection: MigrationConnection,
  migrations: readonly Migration[],
  nowMs: number,
): Promise<void> {
  await connection.run(
    'create table if not exists migration (number int primary key, name text not null, at_ms bigint not null)',
  );
  const rows = await connection.query('select number, name from migration order by number');
  const done = new Set(rows.map(({ number }) => Number(number)));
  const known = migrations.at(-1)?.number ?? 0;
  const newest = Math.max(0, ...done);
  if (newest > known) {
    const why = `the database stands at migration ${newest}, this program knows ${known}: start a newer one`;
    throw storeFailure('database of a newer version', new Error(why));
  }
  for (const { number, name, sql } of migrations) {
    if (done.has(number)) continue;
    const note = `insert into migration values (${number}, '${name}', ${Math.floor(nowMs)})`;
    try {
      await connection.run(`begin;\n${sql}\n;${note};\ncommit;`);
    } catch (error) {
      await connection.run('rollback').catch(() => undefined);
      throw error;
    }
  }
}
