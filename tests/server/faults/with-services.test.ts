import { afterAll, beforeAll, beforeEach, describe, it, onTestFinished } from 'vitest';
import { POSTGRESQL, REDIS } from '../../../src/cli/house/services.ts';
import {
  isThere,
  needService,
  type RunningPostgresql,
  startPostgresql,
  startRedis,
} from '../../support/services/index.ts';
import { makeServerProcess } from './class-server.ts';
import { beginClass } from './class-under-way.ts';
import { serveHere } from './serve-here.ts';

/** Servers are started from their sources; a busy machine takes its time. */
const LIMIT_MS = 240_000;

describe('a class on PostgreSQL', { timeout: LIMIT_MS }, () => {
  let postgresql: RunningPostgresql | null = null;
  let databaseUrl = '';
  beforeAll(async () => {
    if (isThere(POSTGRESQL)) postgresql = await startPostgresql();
  }, LIMIT_MS);
  afterAll(() => postgresql?.remove(), LIMIT_MS);
  beforeEach(async (test) => {
    needService(POSTGRESQL, test);
    databaseUrl = (await postgresql?.newDatabase()) ?? '';
  }, LIMIT_MS);

  it('goes on after its server was killed in the middle, and nothing that was saved is lost', async () => {
    const server = await makeServerProcess({ DATABASE_URL: databaseUrl });
    onTestFinished(() => server.kill());
    await server.start();
    const course = await beginClass([() => server.url], 4);
    await course.goOn(6, 10);
    const said = course.instructor.say({ type: 'hint', to: 'all', text: 'when it was killed' });
    await server.kill();
    await server.start();
    await said;
    await course.goOn(4, 6);
    await course.expectPromisesKept();
  });

  it('goes on when the database was away: what was done meanwhile is kept and told again', async () => {
    const server = await serveHere({ dataFolder: '', databaseUrl });
    const course = await beginClass([() => server.url], 4);
    await course.goOn(4, 8);
    await postgresql?.kill();
    const said = course.instructor.say({ type: 'hint', to: 'all', text: 'said to nobody' });
    const refused = course.learners.map(({ refusals }) => refusals());
    await course.workUntil(() =>
      course.learners.every(({ refusals }, i) => refusals() > (refused[i] ?? 0)),
    );
    await postgresql?.start();
    await said;
    await course.goOn(4, 8);
    await course.expectPromisesKept();
  });

  it('at two servers goes on without the Redis between them, and with it again', async (test) => {
    needService(REDIS, test);
    const redis = await startRedis();
    onTestFinished(() => redis.remove());
    const settings = { dataFolder: '', databaseUrl, redisUrl: redis.url };
    const [one, other] = [await serveHere(settings), await serveHere(settings)];
    const course = await beginClass([() => one.url, () => other.url], 6);
    await course.goOn(5, 8);
    await redis.kill();
    await course.goOn(5, 8);
    await redis.start();
    await course.goOn(5, 8);
    await course.expectPromisesKept();
  });

  it('goes on at the other server when one of two is killed', async (test) => {
    needService(REDIS, test);
    const redis = await startRedis();
    onTestFinished(() => redis.remove());
    const lost = await makeServerProcess({ DATABASE_URL: databaseUrl, REDIS_URL: redis.url });
    onTestFinished(() => lost.kill());
    const [, stays] = await Promise.all([
      lost.start(),
      serveHere({ dataFolder: '', databaseUrl, redisUrl: redis.url }),
    ]);
    let isLost = false;
    // As whatever stands before two servers does.
    const first = (): string => (isLost ? stays.url : lost.url);
    const course = await beginClass([first, () => stays.url], 6);
    await course.goOn(5, 8);
    const said = course.instructor.say({ type: 'hint', to: 'all', text: 'when it was lost' });
    await lost.kill();
    isLost = true;
    await said;
    await course.goOn(5, 8);
    await course.expectPromisesKept();
  });
});
