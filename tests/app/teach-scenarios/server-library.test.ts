import { beforeEach, describe, expect, it, vi } from 'vitest';
import {
  listServer,
  readServer,
  saveServer,
} from '../../../src/app/teach-scenarios/server-library.ts';

const asked: { url: string; init: RequestInit }[] = [];

function serverSays(status: number, body: string): void {
  vi.stubGlobal('document', { baseURI: 'http://class.example/flame/' });
  vi.stubGlobal('fetch', async (url: URL, init: RequestInit) => {
    asked.push({ url: url.href, init });
    return new Response(body, { status });
  });
}
const json = (body: unknown) => JSON.stringify(body);

beforeEach(() => {
  asked.length = 0;
});

describe('the library of the server, asked by the page', () => {
  it('is found beside the page, wherever that is served', async () => {
    serverSays(200, json({ version: 2, savedMs: 1, text: 'id: a', versions: [] }));
    const answer = await readServer('job', 'a-b', 2);
    expect(answer).toEqual({
      ok: true,
      value: { version: 2, savedMs: 1, text: 'id: a', versions: [] },
    });
    expect(asked[0]?.url).toBe('http://class.example/flame/api/library/job/a-b?version=2');
  });
  it.each([
    ['a page in place of an answer', 200, '<!doctype html>'],
    ['a page that says not found', 404, '<h1>Not found</h1>'],
    ['data of something else', 200, json({ files: 'many' })],
    ['another server’s refusal', 404, json({ message: 'Not Found', statusCode: 404 })],
  ])('is none where there comes %s', async (_what, status, body) => {
    serverSays(status, body);
    expect(await listServer()).toEqual({ ok: false, error: 'no server' });
  });
  it('that is not reached is none, too', async () => {
    serverSays(200, '');
    vi.stubGlobal('fetch', () => Promise.reject(new TypeError('Failed to fetch')));
    expect(await listServer()).toEqual({ ok: false, error: 'no server' });
  });
  it('tells a conflict with the version that is there, a missing key, and why else it refused', async () => {
    serverSays(409, json({ error: 'conflict', params: { version: 5 }, versions: [] }));
    expect(await saveServer('start', 'a', 'id: a', 4)).toEqual({
      ok: false,
      error: 'conflict',
      version: 5,
    });
    expect(asked[0]?.init).toMatchObject({
      method: 'PUT',
      body: json({ text: 'id: a', baseVersion: 4 }),
    });
    serverSays(401, json({ error: 'key needed', params: {} }));
    expect(await listServer()).toEqual({ ok: false, error: 'key needed' });
    serverSays(409, json({ error: 'library full', params: { most: 2000 } }));
    expect(await saveServer('start', 'a', 'id: a', 0)).toEqual({
      ok: false,
      error: 'refused',
      why: 'library full, 2000',
    });
  });
});
