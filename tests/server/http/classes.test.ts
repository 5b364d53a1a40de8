import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { networkInterfaces, tmpdir } from 'node:os';
import { join as joinPath } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import {
  aboutSchema,
  classLineSchema,
  type OpenClass,
  type OpenedClass,
} from '../../../src/classroom/index.ts';
import { QUIZ_MODES } from '../../../src/quiz/taking/index.ts';
import { library } from '../../support/library.ts';
import {
  connect,
  join,
  KEY,
  lead,
  OWN_COPIES,
  openClass,
  serve,
  sit,
  type TestServer,
  workDelta,
} from '../live/clients.ts';

interface Asked {
  readonly status: number;
  readonly body: unknown;
  readonly headers: Headers;
  readonly text: string;
}

async function ask(
  server: Pick<TestServer, 'url'>,
  path: string,
  given: { method?: string; key?: string; secret?: string; body?: unknown; headers?: object } = {},
): Promise<Asked> {
  const { method = 'GET', key, secret, body } = given;
  const response = await fetch(`${server.url}${path}`, {
    method,
    headers: {
      ...(body === undefined ? {} : { 'content-type': 'application/json' }),
      ...(key === undefined ? {} : { 'x-instructor-key': key }),
      ...(secret === undefined ? {} : { authorization: `Bearer ${secret}` }),
      ...given.headers,
    },
    ...(body === undefined ? {} : { body: typeof body === 'string' ? body : JSON.stringify(body) }),
  });
  const text = await response.text();
  const isJson = response.headers.get('content-type')?.includes('json') === true;
  return {
    status: response.status,
    body: isJson ? JSON.parse(text) : null,
    headers: response.headers,
    text,
  };
}

const open = (server: TestServer, body: unknown, key: string | undefined = KEY) =>
  ask(server, '/api/classes', { method: 'POST', body, ...(key === undefined ? {} : { key }) });

describe('opening a class', () => {
  const job = library.jobs[0];
  const [mode] = QUIZ_MODES;
  const item = 'cause/dairy/2';
  const what = (given: Partial<OpenClass['what']>): OpenClass => ({
    ...OWN_COPIES,
    what: { ...OWN_COPIES.what, ...given },
  });

  it.each([
    ['a start that is not shipped', what({ id: 'not-there' }), 'no such exercise', 'what.id'],
    [
      'a job together',
      { what: { ...what({}).what, kind: 'job', id: job?.id ?? '' }, way: 'together' },
      'only together with a start',
      'way',
    ],
    ['a quiz in no mode', what({ kind: 'quiz', items: [item] }), 'no such quiz mode', 'what.mode'],
    ['a quiz without items', what({ kind: 'quiz', mode }), 'no such item', 'what.items.0'],
    [
      'a quiz with an item that is in no bank',
      what({ kind: 'quiz', mode, items: [item, 'cause/nowhere/1'] }),
      'no such item',
      'what.items.1',
    ],
    ['something own that is no plant', what({ given: { plants: [{}] } }), 'given', 'plants.0'],
    ['something own of no kind', what({ given: { rockets: [] } }), 'given', 'given'],
  ])('refuses %s, with the place', async (_title, asked, error, where) => {
    const answer = await open(await serve(), asked);
    expect(answer.status).toBe(422);
    expect(answer.body).toMatchObject({ error: expect.stringContaining(error) });
    expect(JSON.stringify(answer.body)).toContain(where);
  });

  it.each([
    ['no JSON', '{"what":', 400],
    ['another shape', { what: 'everything' }, 400],
    ['more than a class can hold', { ...OWN_COPIES, pad: 'x'.repeat(900_000) }, 413],
  ])('refuses %s by a code', async (_title, body, status) => {
    const answer = await open(await serve(), body);
    expect(answer.status).toBe(status);
    expect(answer.body).toMatchObject({ error: expect.any(String) });
  });

  it('takes an exercise that comes along and is shipped nowhere', async () => {
    const [scenario] = library.scenarios;
    const given = { scenarios: [{ ...scenario, id: 'of-my-own' }] };
    const server = await serve();
    const answer = await open(server, what({ id: 'of-my-own', given }));
    expect(answer.body).toMatchObject({ id: expect.any(String) });
    const instructor = await lead(server, answer.body as OpenedClass);
    expect(instructor.welcomes[0]?.entries[0]).toMatchObject({ what: { given } });
  });

  it('takes a quiz of shipped items', async () => {
    const quiz = what({ kind: 'quiz', mode, items: [item], plant: '' });
    expect((await open(await serve(), quiz)).status).toBe(201);
  });

  it('has the seed that was asked for, and else that of the exercise', async () => {
    const server = await serve();
    const seedOf = async (asked: OpenClass) =>
      (await lead(server, await openClass(server, asked))).welcomes[0]?.entries[0];
    expect(await seedOf({ ...OWN_COPIES, seed: 77 })).toMatchObject({ seed: 77 });
    const own = library.scenarios.find(({ id }) => id === OWN_COPIES.what.id)?.seed;
    expect(await seedOf(OWN_COPIES)).toMatchObject({ seed: own });
  });

  it('says so when the database is away', async () => {
    const server = await serve();
    server.store.fail('no room on the disk');
    const answer = await open(server, OWN_COPIES);
    expect([answer.status, answer.body]).toEqual([
      503,
      { error: 'store', params: { trouble: 'no room on the disk' } },
    ]);
  });
});

describe('the key of instructors', () => {
  it('that the settings give is asked of everyone, this machine too', async () => {
    const server = await serve();
    expect((await open(server, OWN_COPIES, '')).status).toBe(401);
    expect((await open(server, OWN_COPIES, 'a wrong key')).status).toBe(401);
    expect((await ask(server, '/api/about')).body).toMatchObject({ mayOpen: false });
    expect((await ask(server, '/api/about', { key: KEY })).body).toMatchObject({ mayOpen: true });
    for (let tries = 0; tries < 30; tries++) await open(server, OWN_COPIES, `guess ${tries} guess`);
    expect((await open(server, OWN_COPIES, KEY)).status).toBe(401);
  });

  it('that the server made lies in its folder for its owner alone, and stays the same', async () => {
    const dataFolder = mkdtempSync(joinPath(tmpdir(), 'key-'));
    onTestFinished(() => rmSync(dataFolder, { recursive: true }));
    const settings = { port: 0, host: '127.0.0.1', dataFolder, log: 'silent' } as const;
    const server = await serve({ settings });
    const file = joinPath(dataFolder, 'instructor-key');
    expect(readFileSync(file, 'utf8').trim()).toBe(server.instructorKey);
    expect(statSync(file).mode & 0o777).toBe(0o600);
    expect((await serve({ settings })).instructorKey).toBe(server.instructorKey);
  });

  it('is not asked of this machine where the server made it, but of all that comes otherwise', async () => {
    const dataFolder = mkdtempSync(joinPath(tmpdir(), 'key-'));
    onTestFinished(() => rmSync(dataFolder, { recursive: true }));
    const server = await serve({ settings: { port: 0, dataFolder, log: 'silent' } });
    const mayOpen = async (host: string, headers: object = {}) => {
      const about = await ask({ url: `http://${host}:${server.port}` }, '/api/about', { headers });
      return aboutSchema.parse(about.body).mayOpen;
    };
    expect(await mayOpen('127.0.0.1')).toBe(true);
    // Through something in front of the server, which may stand for anyone.
    expect(await mayOpen('127.0.0.1', { 'x-forwarded-for': '192.0.2.1' })).toBe(false);
    expect(await mayOpen('127.0.0.1', { forwarded: 'for=192.0.2.1' })).toBe(false);
    const own = Object.values(networkInterfaces())
      .flatMap((addresses) => addresses ?? [])
      .find(({ family, internal }) => family === 'IPv4' && !internal);
    if (own !== undefined) expect(await mayOpen(own.address)).toBe(true);
  });
});

describe('a class that is kept', () => {
  it('is listed for who may open classes, as it stands', async () => {
    const server = await serve();
    const opened = await openClass(server);
    await join(server, opened);
    const instructor = await lead(server, opened);
    const line = async () => {
      const { body } = await ask(server, '/api/classes', { key: KEY });
      return classLineSchema.array().parse((body as { classes: unknown }).classes)[0];
    };
    expect(await line()).toMatchObject({ id: opened.id, phase: 'gathering', seats: 1 });
    await instructor.ask('say', { key: 'key-close', entry: { type: 'close' } });
    expect(await line()).toMatchObject({ phase: 'closed', closedMs: expect.any(Number) });
    expect((await ask(server, '/api/classes')).status).toBe(401);
  });

  it('shows its results to its own secret and to the key, and to nothing else', async () => {
    const server = await serve();
    const [opened, other] = [await openClass(server), await openClass(server)];
    const path = `/api/classes/${opened.id}/results`;
    expect((await ask(server, path, { secret: opened.secret })).status).toBe(200);
    expect((await ask(server, path, { key: KEY })).status).toBe(200);
    for (const given of [{}, { secret: other.secret }, { secret: opened.projectorKey }]) {
      expect((await ask(server, path, given)).status).toBe(401);
    }
    expect((await ask(server, '/api/classes/gone/results')).status).toBe(401);
    expect((await ask(server, '/api/classes/gone/results', { key: KEY })).status).toBe(404);
  });

  it('counts what waits to be judged, and judges it when asked', async () => {
    const judge = {
      judge: async () => ({ result: { made: 'up' }, refused: null }),
      close: async () => {},
    };
    const server = await serve({ judge });
    const opened = await openClass(server);
    const { secret } = opened;
    const learner = await sit(server, await join(server, opened));
    await learner.ask('work', workDelta({}));
    const path = `/api/classes/${opened.id}`;
    expect((await ask(server, `${path}/results`, { secret })).body).toMatchObject({
      waiting: 1,
      results: [],
    });
    const asked = await ask(server, `${path}/judge`, { method: 'POST', secret });
    expect(asked.body).toEqual({ waiting: 1 });
    await expect
      .poll(async () => (await ask(server, `${path}/results`, { secret })).body)
      .toMatchObject({ waiting: 0, results: [{ made: 'up' }] });
  });

  it('gives its results as files to save', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const { secret } = opened;
    const csv = await ask(server, `/api/classes/${opened.id}/results.csv`, { secret });
    expect(csv.headers.get('content-disposition')).toContain('attachment');
    expect(csv.headers.get('content-type')).toContain('text/csv');
    expect(csv.text.split(',').length).toBeGreaterThan(10);
    const xapi = await ask(server, `/api/classes/${opened.id}/results.xapi.json`, { secret });
    expect(xapi.headers.get('content-disposition')).toContain('attachment');
    expect(xapi.body).toEqual([]);
  });

  it('is kept as long as it is told to be', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const { secret } = opened;
    const change = (body: unknown) =>
      ask(server, `/api/classes/${opened.id}`, { method: 'PATCH', secret, body });
    expect((await change({ retentionDays: 0 })).status).toBe(400);
    expect((await change({ retentionDays: 7 })).body).toMatchObject({ retentionDays: 7 });
    expect(await server.store.classById(opened.id)).toMatchObject({ retentionDays: 7 });
  });

  it('and deleted sends everyone home and leaves nothing', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const seated = await join(server, opened);
    const learner = await sit(server, seated);
    await learner.ask('work', workDelta({}));
    const { secret, id } = opened;
    const deleted = await ask(server, `/api/classes/${id}`, { method: 'DELETE', secret });
    expect(deleted.status).toBe(204);
    await learner.until(() => learner.socket.disconnected);
    expect(learner.got.gone).toEqual([{ why: 'class deleted' }]);
    await expect(sit(server, seated)).rejects.toThrow('no such class');
    const door = await connect(server, { role: 'door' });
    const { code } = opened;
    expect(await door.ask('join', { code, nickname: 'Ada' })).toMatchObject({
      error: 'no such class',
    });
    expect(await server.store.work(id, 1)).toBeNull();
  });
});

describe('what the machinery around a server asks', () => {
  it('is answered: that it is well, and what of its database once that is open', async () => {
    const server = await serve();
    expect((await ask(server, '/healthz')).body).toEqual({ status: 'ok' });
    await openClass(server);
    expect((await ask(server, '/healthz')).body).toEqual({ status: 'ok', database: 'ready' });
    server.store.fail('database not reached');
    await open(server, OWN_COPIES);
    expect((await ask(server, '/healthz')).body).toMatchObject({ database: 'not reached' });
  });

  it('is answered in figures, none of which names anyone', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const learner = await sit(server, await join(server, opened, 'Ada'));
    await learner.ask('work', workDelta({}));
    const { text, headers } = await ask(server, '/metrics');
    expect(headers.get('content-type')).toContain('openmetrics-text');
    expect(text).toMatch(/^flamewright_seats 1$/m);
    expect(text).toMatch(/^flamewright_works_total 1$/m);
    expect(text.endsWith('# EOF\n')).toBe(true);
    expect(text).not.toContain('Ada');
    expect(text).not.toContain(opened.id);
    for (const line of text.trimEnd().split('\n')) {
      expect(line).toMatch(/^(?:# (?:HELP|TYPE|EOF)|[a-z0-9_]+(?:\{le="[^"]+"\})? [-+.\de]+$)/);
    }
  });

  it('allows no script but the page’s own on any answer of classes', async () => {
    const server = await serve();
    for (const path of ['/api/about', '/api/classes', '/metrics', '/api/not-there']) {
      const { headers } = await ask(server, path);
      expect(headers.get('content-security-policy'), path).toContain("default-src 'none'");
    }
  });
});
