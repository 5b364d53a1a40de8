import pg from 'pg';
import { asStoreFailure, codeOf, storeFailure } from '../failure.ts';
import { migrate, readMigrations } from '../migrate.ts';
import type { Database, Row, Statement } from '../types.ts';
import { createTurns } from './turns.ts';
import { parserOf } from './value-parsers.ts';

export interface PostgresqlOptions {
  readonly url: string;
  /** Connections at most. */
  readonly connections?: number;
}

const CONNECTIONS = 10;
/** Of those, what may wait gets so many. */
const BULK_CONNECTIONS = 2;
const CONNECT_WITHIN_MS = 5000;
const ANSWER_WITHIN_MS = 30_000;
/** Processes that start at once bring the database up to date one after the other; any number does. */
const MIGRATION_LOCK = 7_304_719;
/** Two that stood in each other's way: asked again it goes. */
const IN_EACH_OTHERS_WAY = new Set(['40001', '40P01']);
const MOST_TRIES = 4;

/** A PostgreSQL of its own; opened when something is first asked, reached again by itself. */
export function createPostgresqlDatabase(options: PostgresqlOptions): Database {
  const pool = new pg.Pool({
    connectionString: options.url,
    max: options.connections ?? CONNECTIONS,
    connectionTimeoutMillis: CONNECT_WITHIN_MS,
    query_timeout: ANSWER_WITHIN_MS,
    keepAlive: true,
    application_name: 'flamewright',
    types: { getTypeParser: parserOf },
    // A connection at rest does not keep the process alive.
    allowExitOnIdle: true,
  });
  // Of a connection at rest; the next request makes another one.
  pool.on('error', () => undefined);
  const bulk = createTurns(BULK_CONNECTIONS);
  let opening: Promise<void> | null = null;
  let isClosed = false;

  function opened(): Promise<void> {
    opening ??= bringUpToDate(pool).catch((error: unknown) => {
      opening = null;
      throw error;
    });
    return opening;
  }

  async function asking<T>(ask: () => Promise<T>): Promise<T> {
    try {
      if (isClosed) throw storeFailure('database not reached', new Error('it is closed'));
      await opened();
      for (let tries = 1; ; tries++) {
        try {
          return await ask();
        } catch (error) {
          if (tries >= MOST_TRIES || !IN_EACH_OTHERS_WAY.has(codeOf(error))) throw error;
        }
      }
    } catch (error) {
      throw asStoreFailure(error);
    }
  }

  return {
    kind: 'postgresql',
    query: <R extends Row>(sql: string, params: readonly unknown[] = []) =>
      asking(async () => (await pool.query<R>(sql, [...params])).rows),
    transaction(statements, urgency = 'now') {
      if (statements.length === 0) return Promise.resolve([]);
      const all = () => asking(() => runAll(pool, statements));
      return urgency === 'bulk' ? bulk(all) : all();
    },
    warm: () => asking(async () => undefined),
    async close() {
      if (isClosed) return;
      isClosed = true;
      await pool.end();
    },
  };
}

async function runAll(pool: pg.Pool, statements: readonly Statement[]): Promise<Row[][]> {
  const client = await pool.connect();
  let isWhole = false;
  try {
    await client.query('begin');
    const rows: Row[][] = [];
    for (const { sql, params = [] } of statements) {
      rows.push((await client.query<Row>(sql, [...params])).rows);
    }
    await client.query('commit');
    isWhole = true;
    return rows;
  } catch (error) {
    isWhole = await client.query('rollback').then(
      () => true,
      () => false,
    );
    throw error;
  } finally {
    // One that did not come back from it is not used again.
    client.release(!isWhole);
  }
}

async function bringUpToDate(pool: pg.Pool): Promise<void> {
  const client = await pool.connect();
  let isWhole = false;
  try {
    await client.query('select pg_advisory_lock($1)', [MIGRATION_LOCK]);
    await migrate(
      {
        query: async (sql, params = []) => (await client.query<Row>(sql, [...params])).rows,
        run: async (sql) => {
          await client.query(sql);
        },
      },
      readMigrations(),
      Date.now(),
    );
    await client.query('select pg_advisory_unlock($1)', [MIGRATION_LOCK]);
    isWhole = true;
  } finally {
    // With the connection its lock goes.
    client.release(!isWhole);
  }
}
