import { Redis } from 'ioredis';
import { REDIS } from '../services.ts';
import {
  makeServiceFolder,
  programOf,
  type RunningService,
  startService,
} from './start-service.ts';

/** Keeps nothing on the disk: when it is ended, what it held is gone. */
export async function startRedis(): Promise<RunningService & { readonly url: string }> {
  const folder = makeServiceFolder('redis');
  const service = await startService({
    program: programOf(REDIS),
    folder,
    args: (port) => [
      ...['--bind', '127.0.0.1', '--port', String(port), '--dir', folder],
      ...['--save', '', '--appendonly', 'no'],
    ],
    ask: async (port) => {
      const redis = new Redis({ port, host: '127.0.0.1', lazyConnect: true, retryStrategy: null });
      redis.on('error', () => undefined);
      try {
        await redis.connect();
        await redis.ping();
      } finally {
        redis.disconnect();
      }
    },
  });
  return { ...service, url: `redis://127.0.0.1:${service.port}` };
}
