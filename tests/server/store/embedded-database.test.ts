import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, statfsSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import {
  afterAll,
  afterEach,
  beforeAll,
  beforeEach,
  describe,
  expect,
  it,
  onTestFinished,
  type TestContext,
} from 'vitest';
import {
  createClassStore,
  createEmbeddedDatabase,
  type Database,
  EMPTY_DATABASE,
} from '../../../src/server/store/index.ts';
import { isRoot } from '../../support/services/index.ts';

/** Each opening starts an engine; a busy machine takes its time. */
const LIMIT_MS = 180_000;
const MEGABYTE = 2 ** 20;

let folder = '';
beforeEach(() => {
  const made = mkdtempSync(join(tmpdir(), 'embedded-'));
  folder = made;
  return () => rmSync(made, { recursive: true, force: true });
});

function opened(
  options: { folder?: string; spareBytes?: number; limitMs?: number } = {},
): Database {
  const database = createEmbeddedDatabase({ folder, ...options });
  onTestFinished(() => database.close());
  return database;
}

async function makeTable(database: Database): Promise<void> {
  await database.query('create table note (n int primary key, text text not null)');
  // So that what is written takes the room it says.
  await database.query('alter table note alter text set storage external');
}
const add = (n: number, length = 1) => ({
  sql: 'insert into note values ($1, $2)',
  params: [n, 'x'.repeat(length)],
});
const numbers = async (database: Database): Promise<number[]> =>
  (await database.query<{ n: number }>('select n from note order by n')).map(({ n }) => n);

describe('the embedded database', { timeout: LIMIT_MS }, () => {
  it('opens when something is asked of it, keeps it when it is closed, and lets the folder go', async () => {
    const before = createEmbeddedDatabase({ folder });
    await before.query('select 1');
    await makeTable(before);
    const other = opened();
    await expect(other.query('select 1')).rejects.toMatchObject({ trouble: 'folder taken' });
    const last = before.transaction([add(1), add(2)]);
    await before.close();
    await last;
    await expect(before.query('select 1')).rejects.toMatchObject({
      trouble: 'database not reached',
    });
    expect(await numbers(other)).toEqual([1, 2]);
  });

  it('has all that was said to be saved after its process was killed, again and again', async () => {
    const script = new URL('../../support/keep-appending.ts', import.meta.url);
    let most = 0;
    for (const upTo of [3, 60]) {
      const args = ['--import', 'tsx', script.pathname, folder];
      const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] });
      most = await killWhenSaid(child, upTo);
      expect(most).toBeGreaterThanOrEqual(upTo);
    }
    const store = createClassStore(opened());
    const entries = await store.entriesSince('the class', 0);
    const told = entries.map((entry) => (entry.type === 'lock tools' ? Number(entry.tools[0]) : 0));
    expect(told).toEqual(entries.map(({ n }) => n));
    expect(told).toEqual(told.map((_, i) => i + 1));
    expect(told.length).toBeGreaterThanOrEqual(most);
    const work = await store.work('the class', 1);
    expect(work?.rev).toBeGreaterThanOrEqual(most);
    expect(work?.acts.map(({ t }) => t)).toEqual(work?.acts.map((_, i) => i + 1));
  });

  it('begins anew where its folder was laid out only half', async () => {
    mkdirSync(join(folder, 'pg.new/base'), { recursive: true });
    writeFileSync(join(folder, 'pg.new/PG_VERSION'), '1');
    expect(await opened().query('select 1 as one')).toEqual([{ one: 1 }]);
  });

  it('starts its engine anew when that gives no answer, and has what was saved', async () => {
    const database = opened({ limitMs: 3000 });
    await makeTable(database);
    await database.transaction([add(1)]);
    const forever = database.query('select count(*) from generate_series(1, 1e12::bigint)');
    await expect(forever).rejects.toMatchObject({ trouble: 'database not reached' });
    expect(await numbers(database)).toEqual([1]);
    await database.transaction([add(2)]);
    expect(await numbers(database)).toEqual([1, 2]);
  });
});

describe('an embedded database that is open', { timeout: LIMIT_MS }, () => {
  let database: Database;
  beforeAll(async () => {
    database = createEmbeddedDatabase({ folder: null });
    await database.warm();
  }, LIMIT_MS);
  afterAll(() => database.close(), LIMIT_MS);
  beforeEach(() => makeTable(database));
  afterEach(async () => {
    await database.query('drop table note');
  });

  it('lets what is urgent go ahead of what may wait', async () => {
    const order: string[] = [];
    const bulk = Array.from({ length: 40 }, (_, n) =>
      database.transaction([add(n, 10_000)], 'bulk').then(() => order.push('bulk')),
    );
    await database.transaction([add(1000)]).then(() => order.push('now'));
    await Promise.all(bulk);
    // Two are with the engine already.
    expect(order.indexOf('now')).toBeLessThanOrEqual(2);
  });

  it('keeps its log short, however much is written', async () => {
    for (let n = 0; n < 40; n++) {
      await database.transaction([add(n, MEGABYTE), { sql: 'delete from note' }]);
    }
    const [log] = await database.query<{ bytes: number }>(
      'select sum(size) as bytes from pg_ls_waldir()',
    );
    expect(log?.bytes).toBeLessThan(40 * MEGABYTE);
  });

  it('is shipped for the engine that is installed', async () => {
    const files = unzipSync(readFileSync(EMPTY_DATABASE));
    const text = (name: string) => new TextDecoder().decode(files[name]).trim();
    const [engine] = await database.query<{ major: number }>(
      `select current_setting('server_version_num')::int / 10000 as major`,
    );
    expect(Number(text('PG_VERSION'))).toBe(engine?.major);
  });
});

describe('the embedded database on a disk that is full', { timeout: LIMIT_MS }, () => {
  it('says so when it writes, reads and deletes on, and writes again when there is room', async (test) => {
    const disk = smallDisk(48, test);
    const database = opened({ folder: join(disk, 'data') });
    await makeTable(database);
    await database.transaction([add(1, MEGABYTE), add(2, MEGABYTE)]);
    const filler = join(disk, 'filler');
    writeFileSync(filler, new Uint8Array(freeBytes(disk) - 6 * MEGABYTE));
    for (const urgency of ['now', 'bulk'] as const) {
      await expect(database.transaction([add(3)], urgency)).rejects.toMatchObject({
        trouble: 'no room on the disk',
      });
    }
    expect(await numbers(database)).toEqual([1, 2]);
    await database.query('delete from note where n = $1', [1]);
    rmSync(filler);
    await database.transaction([add(3)]);
    expect(await numbers(database)).toEqual([2, 3]);
  });

  it('comes back by itself after its engine has broken off in the middle of writing', async (test) => {
    const disk = smallDisk(40, test);
    // Nothing held back: so it runs into the end of the disk as it would into a quota.
    const database = opened({ folder: join(disk, 'data'), spareBytes: 0 });
    await makeTable(database);
    const saved: number[] = [];
    const refused: unknown[] = [];
    for (let n = 0; n < 400 && refused.length < 5; n++) {
      try {
        await database.transaction([add(n, MEGABYTE / 4), add(1000 + n)]);
        saved.push(n, 1000 + n);
      } catch (error) {
        refused.push(error);
      }
    }
    expect(refused).toHaveLength(5);
    for (const error of refused) {
      expect(['no room on the disk', 'database not reached']).toContain(
        (error as { trouble?: string }).trouble,
      );
    }
    spawnSync('mount', ['-o', 'remount,size=80m', disk]);
    expect(await numbers(database)).toEqual(saved.sort((a, b) => a - b));
    await database.transaction([add(9999)]);
    expect(await numbers(database)).toContain(9999);
  });
});

/** A disk of its own, where that can be had. */
function smallDisk(megabytes: number, test: TestContext): string {
  const place = mkdtempSync(join(tmpdir(), 'small-disk-'));
  const size = `size=${megabytes}m`;
  const mounted =
    isRoot() && spawnSync('mount', ['-t', 'tmpfs', '-o', size, 'tmpfs', place]).status === 0;
  onTestFinished(() => {
    if (mounted) spawnSync('umount', ['-l', place]);
    rmSync(place, { recursive: true, force: true });
  });
  if (!mounted) test.skip('A small disk can be mounted only by root; run as root to see this.');
  return place;
}

function freeBytes(place: string): number {
  const { bavail, bsize } = statfsSync(place);
  return bavail * bsize;
}

/** The last number that it said before it was killed. */
function killWhenSaid(child: ChildProcess, upTo: number): Promise<number> {
  onTestFinished(() => void child.kill('SIGKILL'));
  return new Promise((resolve) => {
    let said = '';
    const last = (): number => Number(said.slice(0, said.lastIndexOf('\n')).split('\n').at(-1));
    child.stdout?.on('data', (text) => {
      said += String(text);
      if (last() >= upTo) child.kill('SIGKILL');
    });
    // With all that it said until then.
    child.once('close', () => resolve(last()));
  });
}
