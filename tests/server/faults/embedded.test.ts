import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, statfsSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { createRandom, nextUniform } from '../../../src/numeric/index.ts';
import { isRoot } from '../../support/services/index.ts';
import { makeServerProcess } from './class-server.ts';
import { beginClass } from './class-under-way.ts';
import { serveHere } from './serve-here.ts';
import { startUnrulyProxy } from './unruly-proxy.ts';

/** Servers are started from their sources; a busy machine takes its time. */
const LIMIT_MS = 240_000;

describe('a class on the embedded database', { timeout: LIMIT_MS }, () => {
  it('goes on after its server was killed in the middle, and nothing that was saved is lost', async () => {
    const server = await serverOn(temporaryFolder());
    const course = await beginClass([() => server.url], 4);
    await course.goOn(6, 10);
    // In the middle of what is being said and saved.
    const said = course.instructor.say({ type: 'hint', to: 'all', text: 'when it was killed' });
    await server.kill();
    const before = course.learners[0]?.acts.length ?? 0;
    await course.workUntil(() => (course.learners[0]?.acts.length ?? 0) > before + 10);
    await server.start();
    await said;
    await course.goOn(4, 6);
    await course.expectPromisesKept();
  });

  it('ends the same for everyone though what is said comes twice, late, in another order, or half', async () => {
    const random = createRandom(2026);
    const chance = (): number => nextUniform(random);
    const server = await serveHere({ dataFolder: temporaryFolder() });
    const proxy = await startUnrulyProxy(server.port, 7);
    onTestFinished(() => proxy.close());
    const unruly = { chance, openAt: server.url };
    const course = await beginClass([() => proxy.url], 4, unruly);
    await course.goOn(20, 40);
    expect(proxy.cuts()).toBeGreaterThan(0);
    proxy.calm();
    await course.expectPromisesKept();
  });

  it('says that it cannot save while the disk is full, loses nothing, and saves when there is room', async (test) => {
    const disk = mkdtempSync(join(tmpdir(), 'small-disk-'));
    const size = ['-o', 'size=64m'];
    const mounted =
      isRoot() && spawnSync('mount', ['-t', 'tmpfs', ...size, 'tmpfs', disk]).status === 0;
    onTestFinished(() => {
      if (mounted) spawnSync('umount', ['-l', disk]);
      rmSync(disk, { recursive: true, force: true });
    });
    if (!mounted) test.skip('A small disk can be mounted only by root; run as root to see this.');
    const server = await serverOn(join(disk, 'data'));
    const course = await beginClass([() => server.url], 3);
    await course.goOn(3, 6);

    const { bavail, bsize } = statfsSync(disk);
    const filler = join(disk, 'filler');
    writeFileSync(filler, new Uint8Array(bavail * bsize - 2 ** 20));
    await course.workUntil(() => course.learners.every(({ refusals }) => refusals() > 0));
    // One telling may have been on its way when the room went.
    const then = course.learners.map((one) => one.saved());
    const refused = course.learners.map(({ refusals }) => refusals());
    await course.workUntil(() =>
      course.learners.every(({ refusals }, i) => refusals() > (refused[i] ?? 0)),
    );
    expect(course.learners.map((one) => one.saved())).toEqual(then);

    rmSync(filler);
    await course.goOn(3, 6);
    await course.expectPromisesKept();
  });
});

async function serverOn(folder: string) {
  const server = await makeServerProcess({ DATA: folder });
  onTestFinished(() => server.kill());
  await server.start();
  return server;
}

function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'class-data-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }));
  return folder;
}
