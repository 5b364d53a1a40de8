import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { PGlite } from '@electric-sql/pglite';
import fastify, { type FastifyInstance } from 'fastify';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { loadLibrary } from '../../../src/cli/library.ts';
import { registerLibrary } from '../../../src/server/library/index.ts';
import type { Database, Row } from '../../../src/server/store/types.ts';

const root = join(import.meta.dirname, '../../..');
const shipped = loadLibrary(root);
const migration = readFileSync(join(root, 'src/server/store/migrations/2-library.sql'), 'utf8');
const dirtyLens = readFileSync(join(root, 'scenarios/starts/dirty-lens.yaml'), 'utf8');
const OWN = dirtyLens.replace('id: dirty-lens', 'id: our-own-lens');
const PLACE = '/api/library/start/our-own-lens';

/** The real dialect in memory. */
let pglite: PGlite;
let server: FastifyInstance;
let clock = 1_000;
let allowed = true;

beforeAll(async () => {
  pglite = await PGlite.create();
  await pglite.exec(migration);
  const query = async <R extends Row>(sql: string, params: readonly unknown[] = []) =>
    (await pglite.query<R>(sql, [...params])).rows;
  // No more of a database is asked for.
  const database = { kind: 'embedded', query } as Partial<Database> as Database;
  server = fastify({ bodyLimit: 1024 });
  registerLibrary(server, {
    database: async () => database,
    mayWrite: () => allowed,
    base: () => shipped,
    nowMs: () => clock++,
  });
}, 90_000);
beforeEach(async () => {
  await pglite.exec('DELETE FROM library_version');
  clock = 1_000;
  allowed = true;
});
afterAll(async () => {
  await server.close();
  await pglite.close();
});

const put = (text: string, baseVersion: number, url = PLACE) =>
  server.inject({ method: 'PUT', url, payload: { text, baseVersion } });
const get = async (url: string) => {
  const response = await server.inject({ method: 'GET', url });
  return { status: response.statusCode, body: response.json() };
};

describe('the library on the server', () => {
  it('keeps each version and gives every one back to the letter', async () => {
    const second = OWN.replace('0.97, onset: start }', '0.9, onset: start } # less');
    expect((await put(OWN, 0)).json()).toEqual({ version: 1, savedMs: 1000 });
    expect((await put(second, 1)).json()).toEqual({ version: 2, savedMs: 1001 });
    const newest = await get(PLACE);
    expect(newest.body).toMatchObject({ version: 2, text: second });
    const [given] = newest.body.data.scenarios;
    expect(given.faults[0].severity).toBe(0.9);
    expect(given).not.toHaveProperty('expect');
    expect(newest.body.versions.map((one: { version: number }) => one.version)).toEqual([2, 1]);
    expect((await get(`${PLACE}?version=1`)).body.text).toBe(OWN);
    expect((await get('/api/library')).body.files).toEqual([
      {
        kind: 'start',
        id: 'our-own-lens',
        title: 'A pilot that nobody sees',
        plant: 'dairy',
        version: 2,
        savedMs: 1001,
        removed: false,
      },
    ]);
  });

  it('tells of a conflict and keeps what was there', async () => {
    await put(OWN, 0);
    await put(`${OWN}# theirs\n`, 1);
    const late = await put(`${OWN}# mine\n`, 1);
    expect(late.statusCode).toBe(409);
    expect(late.json()).toMatchObject({ error: 'conflict', params: { version: 2 } });
    expect((await get(PLACE)).body.text).toBe(`${OWN}# theirs\n`);
    // Knowing of it, one may save on top of it.
    expect((await put(`${OWN}# mine\n`, 2)).statusCode).toBe(200);
    expect((await put(OWN, 0)).statusCode).toBe(409);
  });

  it('lets in one of several that come at once on the same version', async () => {
    await put(OWN, 0);
    const both = await Promise.all([put(`${OWN}# a\n`, 1), put(`${OWN}# b\n`, 1)]);
    expect(both.map(({ statusCode }) => statusCode).sort()).toEqual([200, 409]);
    expect((await get(PLACE)).body.versions).toHaveLength(2);
  });

  it('takes a file out without losing it: older versions can be read and saved again', async () => {
    await put(OWN, 0);
    const remove = (base: number) =>
      server.inject({ method: 'DELETE', url: `${PLACE}?baseVersion=${base}` });
    expect((await remove(0)).statusCode).toBe(409);
    expect((await remove(1)).json()).toMatchObject({ version: 2, removed: true });
    expect((await remove(2)).statusCode).toBe(200);
    expect((await get(PLACE)).status).toBe(404);
    expect((await get('/api/library')).body.files[0]).toMatchObject({ removed: true, version: 2 });
    expect((await get(`${PLACE}?version=1`)).body.text).toBe(OWN);
    expect((await put(OWN, 2)).json()).toMatchObject({ version: 3 });
    expect((await get(PLACE)).body.text).toBe(OWN);
  });

  it('refuses a file that is not in order, with each mistake at its place', async () => {
    const refused = await put(OWN.replace('fault: lens dirty', 'fault: lens dirtyy'), 0);
    expect(refused.statusCode).toBe(422);
    expect(refused.json().issues).toEqual([
      expect.objectContaining({ line: 14, column: 14, suggestion: 'lens dirty' }),
    ]);
    expect((await get('/api/library')).body.files).toEqual([]);
  });

  it.each([
    ['another name than that of its place', () => put(dirtyLens, 0), 400, 'other name'],
    ['no number to stand on', () => put(OWN, -1), 400, 'request not understood'],
    ['a file beyond the bounds', () => put(`${OWN}${'#'.repeat(262_144)}`, 0), 400, 'request not'],
    ['a kind that there is not', () => put(OWN, 0, '/api/library/plant/x'), 404, 'no such file'],
    ['a name that is none', () => put(OWN, 0, '/api/library/start/..%2Fx'), 404, 'no such file'],
  ])('refuses %s, and says so', async (_what, ask, status, error) => {
    const response = await ask();
    expect(response.statusCode).toBe(status);
    expect(response.json().error).toContain(error);
  });

  it('neither shows nor takes anything without the key', async () => {
    await put(OWN, 0);
    allowed = false;
    for (const response of [
      await put(OWN, 1),
      await server.inject({ method: 'GET', url: PLACE }),
      await server.inject({ method: 'GET', url: '/api/library' }),
      await server.inject({ method: 'DELETE', url: `${PLACE}?baseVersion=1` }),
    ]) {
      expect(response.statusCode).toBe(401);
      expect(response.json()).toEqual({ error: 'key needed', params: {} });
    }
    allowed = true;
    expect((await get(PLACE)).body.version).toBe(1);
  });
});
