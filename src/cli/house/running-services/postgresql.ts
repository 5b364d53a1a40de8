import { join } from 'node:path';
import pg from 'pg';
import { POSTGRESQL } from '../services.ts';
import {
  makeServiceFolder,
  programOf,
  type RunningService,
  runOnce,
  startService,
} from './start-service.ts';

export interface RunningPostgresql extends RunningService {
  /** A new database; where to reach it. */
  newDatabase(): Promise<string>;
}

/** What a disk must do is not what is tested: a process that is killed leaves its files all the same. */
const FAST = ['fsync=off', 'full_page_writes=off', 'synchronous_commit=on', 'shared_buffers=32MB'];

/** Without a password, for this machine alone. */
export async function startPostgresql(): Promise<RunningPostgresql> {
  const folder = makeServiceFolder('postgresql');
  const data = join(folder, 'data');
  const initdb = ['-D', data, '-U', 'test', '-A', 'trust', '-E', 'UTF8', '--locale=C', '--no-sync'];
  runOnce(programOf(POSTGRESQL, 'initdb'), initdb, folder);
  const urlOf = (port: number, name: string): string =>
    `postgresql://test@127.0.0.1:${port}/${name}`;
  const service = await startService({
    program: programOf(POSTGRESQL),
    folder,
    args: (port) => [
      ...['-D', data, '-k', folder, '-h', '127.0.0.1', '-p', String(port)],
      ...FAST.flatMap((setting) => ['-c', setting]),
    ],
    ask: async (port) => {
      await onConnection(urlOf(port, 'postgres'), 'select 1');
    },
    // It takes its processes with it, and recovers at the next start as after a crash.
    endSignal: 'SIGQUIT',
  });
  let count = 0;
  return {
    ...service,
    async newDatabase() {
      const name = `classes_${++count}`;
      await onConnection(urlOf(service.port, 'postgres'), `create database ${name}`);
      return urlOf(service.port, name);
    },
  };
}

async function onConnection(url: string, sql: string): Promise<void> {
  const client = new pg.Client({ connectionString: url, connectionTimeoutMillis: 5000 });
  client.on('error', () => undefined);
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}
