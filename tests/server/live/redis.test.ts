import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { REDIS } from '../../../src/cli/house/services.ts';
import { createMemoryStore } from '../../support/memory-store.ts';
import { isThere, needService, startRedis } from '../../support/services/index.ts';
import {
  join,
  KEY,
  lead,
  newKey,
  openClass,
  serve,
  sit,
  type TestServer,
  TOGETHER,
  workDelta,
} from './clients.ts';

let redis: Awaited<ReturnType<typeof startRedis>> | null = null;
beforeAll(async () => {
  if (isThere(REDIS)) redis = await startRedis();
});
afterAll(() => redis?.remove());

/** Servers over one store that tell each other through Redis. */
async function serveTwo(): Promise<readonly [TestServer, TestServer]> {
  const store = createMemoryStore();
  const settings = {
    port: 0,
    host: '127.0.0.1',
    dataFolder: '',
    instructorKey: KEY,
    log: 'silent',
    redisUrl: redis?.url,
  } as const;
  const two = [
    await serve({ store, settings, shared: true }),
    await serve({ store, settings, shared: true }),
  ] as const;
  for (const { live } of two) await expect.poll(() => live.bus.state()).toBe('ready');
  return two;
}

describe('two servers that tell each other through Redis', () => {
  it('show one board of seats at both, and watch the work of either', async (test) => {
    needService(REDIS, test);
    const [here, there] = await serveTwo();
    const opened = await openClass(here);
    const instructor = await lead(here, opened);
    const learner = await sit(there, await join(there, opened, 'Ada'));
    const tile = () =>
      instructor.got.board
        .flatMap(({ seats }) => seats)
        .filter(({ seat }) => seat === 1)
        .at(-1);
    await instructor.until(() => tile()?.here === true);
    expect(instructor.got.roster.at(-1)?.seats).toMatchObject([{ seat: 1, nickname: 'Ada' }]);
    expect(await instructor.ask('watch', { seat: 1 })).toEqual({ ok: true, work: null });
    let rev = 0;
    // The wish to be told takes its way to the other server.
    await expect
      .poll(async () => {
        rev += 1;
        await learner.ask('work', workDelta({ rev }));
        return instructor.got.worked.length;
      })
      .toBeGreaterThan(0);
    learner.close();
    await instructor.until(() => tile()?.here === false);
  });

  it('let a seat be at one of them only: the newest', async (test) => {
    needService(REDIS, test);
    const [here, there] = await serveTwo();
    const opened = await openClass(here);
    const seated = await join(here, opened);
    const first = await sit(here, seated);
    await sit(there, seated);
    await first.until(() => first.socket.disconnected);
    expect(first.got.gone).toEqual([{ why: 'seat taken elsewhere' }]);
  });

  it('go on without Redis, late and without losing anything, and find it again', async (test) => {
    needService(REDIS, test);
    const [here, there] = await serveTwo();
    const opened = await openClass(here, TOGETHER);
    const instructor = await lead(here, opened);
    const learner = await sit(there, await join(there, opened));
    const hint = (text: string) =>
      instructor.ask('say', { key: newKey(), entry: { type: 'hint', to: 'all', text } });
    const texts = () =>
      learner.got.entry.flatMap((entry) => (entry.type === 'hint' ? [entry.text] : []));
    await hint('with');
    await learner.until(() => texts().length === 1);
    await redis?.kill();
    await expect.poll(() => here.live.bus.state()).toBe('not reached');
    expect(await hint('without')).toMatchObject({ ok: true });
    await instructor.ask('work', workDelta({ rev: 1 }));
    await learner.until(() => texts().length === 2 && learner.got.worked.length === 1);
    await redis?.start();
    for (const { live } of [here, there]) {
      await expect.poll(() => live.bus.state(), { timeout: 20_000 }).toBe('ready');
    }
    expect(await hint('with again')).toMatchObject({ ok: true });
    await learner.until(() => texts().length === 3);
    expect(texts()).toEqual(['with', 'without', 'with again']);
  });
});
