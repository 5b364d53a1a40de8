/** The thread that the embedded database runs in: its SQL holds up nobody else. */
import { parentPort, workerData } from 'node:worker_threads';
import { PGlite, types } from '@electric-sql/pglite';
import { codeOf, isStoreFailure, troubleOf } from '../failure.ts';
import { migrate, readMigrations } from '../migrate.ts';
import type { Row, Statement } from '../types.ts';
import { hasRoomFor } from './disk-room.ts';
import { layOutDatabase } from './empty-database.ts';
import type { FromThread, ThreadError, ThreadStart, ToThread } from './thread-messages.ts';
import { createUpkeep, type Upkeep } from './upkeep.ts';

const { folder, spareBytes } = workerData as ThreadStart;

/** As PostgreSQL's driver is told to give them. */
const PARSERS = { [types.NUMERIC]: Number };
const BREAKS_OFF = new Set(['FATAL', 'PANIC']);

const waiting: ToThread[] = [];
let wake: (() => void) | null = null;

function tell(message: FromThread): void {
  parentPort?.postMessage(message);
}

parentPort?.on('message', (message: ToThread) => {
  waiting.push(message);
  wake?.();
});

const database = await open();
if (database !== null) await serve(database, createUpkeep(database));

async function open(): Promise<PGlite | null> {
  try {
    layOutDatabase(folder);
    const opened = await PGlite.create({ dataDir: folder, parsers: PARSERS });
    await migrate(
      {
        query: async (sql, params) => (await opened.query<Row>(sql, [...(params ?? [])])).rows,
        run: async (sql) => {
          await opened.exec(sql);
        },
      },
      readMigrations(),
      Date.now(),
    );
    tell({ type: 'open' });
    return opened;
  } catch (error) {
    tell({ type: 'not opened', error: asThreadError(error) });
    return null;
  }
}

async function serve(engine: PGlite, upkeep: Upkeep): Promise<void> {
  for (;;) {
    const message = waiting.shift();
    if (message === undefined) {
      await new Promise<void>((resolve) => {
        wake = resolve;
      });
      wake = null;
      continue;
    }
    if (message.type === 'close') {
      await engine.close().catch(() => undefined);
      tell({ type: 'closed' });
      return;
    }
    const { job, statements } = message;
    try {
      if (!hasRoomFor(statements, folder, spareBytes)) {
        throw Object.assign(new Error('the disk is full'), { code: 'ENOSPC' });
      }
      tell({ type: 'done', job, rows: await run(engine, statements) });
      await upkeep.after(lengthOf(statements), waiting.length > 0);
    } catch (error) {
      const broken = isBroken(error);
      tell({ type: 'failed', job, error: asThreadError(error), broken });
      // Asked once more it would never answer.
      if (broken) return;
    }
    // So that what has come meanwhile is seen.
    await new Promise(setImmediate);
  }
}

/** The package's own transactions say "rollback" to an engine that has broken off, and hang. */
async function run(engine: PGlite, statements: readonly Statement[]): Promise<Row[][]> {
  const [only] = statements;
  if (statements.length === 1 && only !== undefined) return [await one(engine, only)];
  await engine.exec('begin');
  try {
    const rows: Row[][] = [];
    for (const statement of statements) rows.push(await one(engine, statement));
    await engine.exec('commit');
    return rows;
  } catch (error) {
    if (!isBroken(error)) await engine.exec('rollback');
    throw error;
  }
}

async function one(engine: PGlite, { sql, params }: Statement): Promise<Row[]> {
  return (await engine.query<Row>(sql, [...(params ?? [])])).rows;
}

function isBroken(error: unknown): boolean {
  const { severity } = error as { readonly severity?: unknown };
  if (typeof severity === 'string') return BREAKS_OFF.has(severity);
  // Not an answer of the engine: of its memory, or of what carries it.
  return codeOf(error) === '' && !isParameterError(error);
}

/** What the package has against a parameter before the engine sees it. */
function isParameterError(error: unknown): boolean {
  return error instanceof Error && /^Invalid input for/.test(error.message);
}

function lengthOf(statements: readonly Statement[]): number {
  let length = 0;
  for (const { params = [] } of statements) {
    for (const param of params) length += typeof param === 'string' ? param.length : 8;
  }
  return length;
}

function asThreadError(error: unknown): ThreadError {
  const from = isStoreFailure(error) ? error.cause : error;
  return {
    trouble: isStoreFailure(error) ? error.trouble : troubleOf(error),
    code: codeOf(from),
    message: from instanceof Error ? from.message : String(from),
  };
}
