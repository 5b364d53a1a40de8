import { onTestFinished } from 'vitest';
import { type RunningServer, startServer } from '../../../src/server/index.ts';
import { library } from '../../support/library.ts';
import { KEY } from './class-server.ts';

/** A server in the process of the test, where it need not be killed. */
export async function serveHere(settings: {
  readonly dataFolder: string;
  readonly databaseUrl?: string;
  readonly redisUrl?: string;
}): Promise<RunningServer> {
  const server = await startServer({
    root: null,
    settings: { port: 0, host: '127.0.0.1', instructorKey: KEY, log: 'silent', ...settings },
    library: () => library,
    judge: { judge: async () => null, close: async () => {} },
  });
  onTestFinished(() => server.stop());
  return server;
}
