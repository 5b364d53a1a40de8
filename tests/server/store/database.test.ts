import { copyFileSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import fc from 'fast-check';
import { afterAll, beforeAll, beforeEach, describe, expect, it, onTestFinished, vi } from 'vitest';
import { POSTGRESQL } from '../../../src/cli/house/services.ts';
import { createEmbeddedDatabase, type Database } from '../../../src/server/store/index.ts';
import { migrate, readMigrations } from '../../../src/server/store/migrate.ts';
import { needService } from '../../support/services/index.ts';
import { type Ground, KINDS, makeGround, START_LIMIT_MS } from './databases.ts';

// A busy machine takes its time, above all with the embedded engine.
vi.setConfig({ testTimeout: START_LIMIT_MS });

describe.each(KINDS)('the %s database', (kind) => {
  let ground: Ground | null = null;
  let database: Database;
  beforeAll(async () => {
    ground = await makeGround(kind);
    if (ground !== null) database = ground.pair[0];
  }, START_LIMIT_MS);
  afterAll(() => ground?.remove(), START_LIMIT_MS);
  beforeEach((test) => {
    if (kind === 'postgresql') needService(POSTGRESQL, test);
  });

  it('gives counts and times as numbers, JSON as data, and nothing as null', async () => {
    const [row] = await database.query(
      `select 9007199254740991::bigint as big, 0.25::numeric as share, 1e-300::float8 as small,
        count(*) as count, sum(n::bigint) as sum, '{"b":[1,null,"ü"],"a":0}'::json as json,
        '[true]'::jsonb as jsonb, 'text'::text as text, true as yes, null::int as none
        from generate_series(1, 3) as n`,
    );
    expect(row).toEqual({
      ...{ big: Number.MAX_SAFE_INTEGER, share: 0.25, small: 1e-300, count: 3, sum: 6 },
      ...{ json: { b: [1, null, 'ü'], a: 0 }, jsonb: [true], text: 'text', yes: true, none: null },
    });
  });

  it('gives back any text that JSON can say, in lists as well', async () => {
    const anyText = fc.string({ unit: 'binary', maxLength: 12 });
    await fc.assert(
      fc.asyncProperty(fc.array(anyText, { maxLength: 5 }), async (texts) => {
        const json = texts.map((text) => JSON.stringify({ text, 'a"\\b': [text] }));
        const rows = await database.query<{ data: unknown }>(
          'select data::json as data from unnest($1::text[]) with ordinality as t(data, at) order by at',
          [json],
        );
        expect(rows.map(({ data }) => JSON.stringify(data))).toEqual(json);
      }),
      { numRuns: 20, seed: 11 },
    );
  });

  it('does all of a transaction or none, and says of what was refused which rule it broke', async () => {
    await database.query('create table one (n int primary key)');
    const add = (n: number) => ({ sql: 'insert into one values ($1) returning n', params: [n] });
    expect(await database.transaction([add(1), add(2)])).toEqual([[{ n: 1 }], [{ n: 2 }]]);
    await expect(database.transaction([add(3), add(1)], 'bulk')).rejects.toMatchObject({
      trouble: 'database refused',
      cause: { code: '23505' },
    });
    expect(await database.query('select n from one order by n')).toEqual([{ n: 1 }, { n: 2 }]);
    expect(await database.transaction([])).toEqual([]);
    await expect(database.query('selekt 1')).rejects.toMatchObject({ trouble: 'database refused' });
  });

  it('is brought up to date once, in order, and refuses what a newer program has left', async () => {
    const known = readMigrations();
    const noted = () => database.query('select number, name from migration order by number');
    expect(await noted()).toEqual(known.map(({ number, name }) => ({ number, name })));

    const folder = mkdtempSync(join(tmpdir(), 'migrations-'));
    onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
    const shipped = new URL('../../../src/server/store/migrations/', import.meta.url);
    for (const file of readdirSync(shipped))
      copyFileSync(new URL(file, shipped), join(folder, file));
    writeFileSync(
      join(folder, '1000-later.sql'),
      'create table later (n int);\ninsert into later values (1);\n',
    );
    writeFileSync(
      join(folder, '1001-broken.sql'),
      'insert into later values (2);\nselect broken;\n',
    );
    const all = readMigrations(pathToFileURL(`${folder}/`));
    expect(all.map(({ number }) => number)).toEqual([
      ...known.map(({ number }) => number),
      ...[1000, 1001],
    ]);
    const connection = {
      query: database.query,
      // Here one statement is one request; a session of its own each time would hide the rest.
      run: async (sql: string) => {
        const statements = sql
          .split(/;\s*(?:\n|$)/)
          .map((one) => one.trim())
          .filter((one) => one !== '' && !/^(?:begin|commit|rollback)$/.test(one));
        await database.transaction(statements.map((one) => ({ sql: one })));
      },
    };
    for (let time = 0; time < 2; time++) {
      await expect(migrate(connection, all, 5)).rejects.toThrow();
      expect(await database.query('select n from later')).toEqual([{ n: 1 }]);
      expect((await noted()).at(-1)).toEqual({ number: 1000, name: 'later' });
    }
    await expect(migrate(connection, known, 5)).rejects.toMatchObject({
      trouble: 'database of a newer version',
      cause: { message: expect.stringContaining('1000') },
    });
  });
});

it('an embedded database that a newer program has used is not opened, and not changed', {
  timeout: START_LIMIT_MS,
}, async () => {
  const folder = mkdtempSync(join(tmpdir(), 'newer-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const before = createEmbeddedDatabase({ folder });
  await before.query(`insert into migration values (77, 'of tomorrow', 1)`);
  await before.close();
  const after = createEmbeddedDatabase({ folder });
  for (let time = 0; time < 2; time++) {
    await expect(after.query('select 1')).rejects.toMatchObject({
      trouble: 'database of a newer version',
    });
  }
  await after.close();
});
