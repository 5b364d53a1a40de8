import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import type { FastifyInstance } from 'fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createPageServer } from '../../src/server/index.ts';

const PAGE = '<!doctype html><title>The page</title>';
const SCRIPT = 'start();\n'.repeat(400);
let root = '';
let server: FastifyInstance;

beforeAll(async () => {
  root = mkdtempSync(join(tmpdir(), 'page-server-'));
  mkdirSync(join(root, 'built'));
  mkdirSync(join(root, 'sounds'));
  mkdirSync(join(root, '.vite'));
  writeFileSync(join(root, 'index.html'), PAGE);
  writeFileSync(join(root, 'built/main-1a2b.js'), SCRIPT);
  writeFileSync(join(root, 'built/main-1a2b.js.gz'), gzipSync(SCRIPT));
  writeFileSync(join(root, 'sounds/fan.wav'), 'RIFF');
  mkdirSync(join(root, 'atlas'));
  writeFileSync(join(root, 'atlas/dairy.atlas'), gzipSync('{}'));
  writeFileSync(join(root, '.vite/manifest.json'), '{}');
  writeFileSync(join(root, '.sources'), 'hash');
  server = await createPageServer({ root });
});
afterAll(async () => {
  await server.close();
  rmSync(root, { recursive: true, force: true });
});

describe('the page server', () => {
  it.each(['/', '/practise', '/practise/healthy-start?seed=3'])(
    'answers %s with the page',
    async (url) => {
      const response = await server.inject({ url, headers: { accept: 'text/html' } });
      expect(response.statusCode).toBe(200);
      expect(response.headers['content-type']).toContain('text/html');
      expect(response.headers['cache-control']).toBe('no-cache');
      expect(response.body).toBe(PAGE);
    },
  );

  it('allows no script but its own files, on every answer', async () => {
    for (const url of ['/', '/built/main-1a2b.js', '/healthz', '/gone.js']) {
      const policy = String((await server.inject(url)).headers['content-security-policy']);
      expect(policy).toContain("default-src 'none'");
      expect(policy).toContain("script-src 'self';");
      expect(policy).not.toContain('unsafe');
    }
  });

  it('lets a browser keep a built file for good and asks about every other', async () => {
    const built = await server.inject('/built/main-1a2b.js');
    expect(built.headers['cache-control']).toContain('immutable');
    const sound = await server.inject('/sounds/fan.wav');
    expect(sound.headers['cache-control']).toBe('no-cache');
    const again = await server.inject({
      url: '/sounds/fan.wav',
      headers: { 'if-none-match': String(sound.headers.etag) },
    });
    expect(again.statusCode).toBe(304);
  });

  it('sends a file that is packed itself as it lies, so that no browser unpacks it on the way', async () => {
    const headers = { 'accept-encoding': 'gzip, deflate' };
    const atlas = await server.inject({ url: '/atlas/dairy.atlas', headers });
    expect(atlas.statusCode).toBe(200);
    expect(atlas.headers['content-encoding']).toBeUndefined();
    expect(gunzipSync(atlas.rawPayload).toString()).toBe('{}');
  });

  it('sends the packed file to a browser that takes it and the plain one to any other', async () => {
    const packed = await server.inject({
      url: '/built/main-1a2b.js',
      headers: { 'accept-encoding': 'gzip, deflate' },
    });
    expect(packed.headers['content-encoding']).toBe('gzip');
    expect(packed.headers['content-type']).toContain('javascript');
    expect(packed.headers.vary).toContain('accept-encoding');
    expect(gunzipSync(packed.rawPayload).toString()).toBe(SCRIPT);
    const plain = await server.inject('/built/main-1a2b.js');
    expect(plain.headers['content-encoding']).toBeUndefined();
    expect(plain.body).toBe(SCRIPT);
  });

  it.each([
    '/built/gone.js',
    '/.sources',
    '/.vite/manifest.json',
    '/../package.json',
    '/%2e%2e/package.json',
  ])('does not find %s', async (url) => {
    const response = await server.inject(url);
    expect(response.statusCode).toBe(404);
    expect(response.body).toBe('Not found.\n');
  });

  it('takes nothing but reading', async () => {
    expect(
      (await server.inject({ method: 'POST', url: '/practise', payload: {} })).statusCode,
    ).toBe(404);
  });

  it('says that it is well', async () => {
    const response = await server.inject('/healthz');
    expect(response.json()).toEqual({ status: 'ok' });
    expect(response.headers['cache-control']).toBe('no-store');
  });

  it('refuses to start without a built page, saying what to do', async () => {
    await expect(createPageServer({ root: join(root, 'sounds') })).rejects.toThrow('npm run build');
  });
});
