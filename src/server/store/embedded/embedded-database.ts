import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { asStoreFailure, storeFailure } from '../failure.ts';
import type { Database, Row, Statement } from '../types.ts';
import { type FolderLock, lockFolder } from './folder-lock.ts';
import { startThread, type Thread } from './thread.ts';

export interface EmbeddedOptions {
  /** Null: a folder of its own for this time, gone when it is closed. */
  readonly folder: string | null;
  /** Bytes of the disk that writing leaves free, for reading and tidying up. */
  readonly spareBytes?: number;
  /** After so long a request is given up and the engine started anew, ms. */
  readonly limitMs?: number;
}

interface Job {
  readonly statements: readonly Statement[];
  readonly resolve: (rows: readonly (readonly Row[])[]) => void;
  readonly reject: (error: Error) => void;
}

const SPARE_BYTES = 16 * 2 ** 20;
const LIMIT_MS = 60_000;
/** So many are with the thread: it need not wait for the next, and what is urgent comes soon. */
const AHEAD = 2;

/**
 * PostgreSQL's engine in a thread of this process, on a folder. Opened when something is first
 * asked; started anew after it has broken off.
 */
export function createEmbeddedDatabase(options: EmbeddedOptions): Database {
  const { spareBytes = SPARE_BYTES, limitMs = LIMIT_MS } = options;
  const queues: Record<'now' | 'bulk', Job[]> = { now: [], bulk: [] };
  let folder = options.folder;
  let lock: FolderLock | null = null;
  let opening: Promise<Thread> | null = null;
  let atWork = 0;
  let isClosed = false;
  let whenIdle: (() => void)[] = [];

  async function open(): Promise<Thread> {
    // First this promise is known as the one that opens, then it may fail.
    await null;
    try {
      folder ??= mkdtempSync(join(tmpdir(), 'flamewright-'));
      lock ??= lockFolder(folder);
      const start = { folder: join(folder, 'pg'), spareBytes };
      return await startThread(start, limitMs, () => {
        opening = null;
      });
    } catch (error) {
      opening = null;
      lock?.free();
      lock = null;
      throw asStoreFailure(error);
    }
  }

  function opened(): Promise<Thread> {
    if (isClosed) return Promise.reject(closedAlready());
    opening ??= open();
    return opening;
  }

  function giveOut(): void {
    while (atWork < AHEAD) {
      const job = queues.now.shift() ?? queues.bulk.shift();
      if (job === undefined) break;
      atWork++;
      void workOn(job).finally(() => {
        atWork--;
        giveOut();
      });
    }
    if (atWork > 0) return;
    for (const done of whenIdle.splice(0)) done();
  }

  async function workOn(job: Job): Promise<void> {
    try {
      opening ??= open();
      const thread = await opening;
      job.resolve(await thread.run(job.statements));
    } catch (error) {
      job.reject(asStoreFailure(error));
    }
  }

  function ask(
    statements: readonly Statement[],
    urgency: 'now' | 'bulk',
  ): Promise<readonly (readonly Row[])[]> {
    return new Promise((resolve, reject) => {
      if (isClosed) {
        reject(closedAlready());
        return;
      }
      queues[urgency].push({ statements, resolve, reject });
      giveOut();
    });
  }

  return {
    kind: 'embedded',
    async query<R extends Row>(sql: string, params?: readonly unknown[]) {
      const statement = params === undefined ? { sql } : { sql, params };
      const [rows = []] = await ask([statement], 'now');
      return rows as readonly R[];
    },
    transaction: (statements, urgency = 'now') =>
      statements.length === 0 ? Promise.resolve([]) : ask(statements, urgency),
    async warm() {
      await opened();
    },
    async close() {
      if (isClosed) return;
      isClosed = true;
      if (atWork > 0) {
        await new Promise<void>((resolve) => {
          whenIdle = [...whenIdle, resolve];
        });
      }
      const thread = await opening?.catch(() => null);
      await thread?.close();
      lock?.free();
      lock = null;
      if (options.folder === null && folder !== null) {
        rmSync(folder, { recursive: true, force: true });
      }
    },
  };
}

function closedAlready() {
  return storeFailure('database not reached', new Error('the database is closed'));
}
