import { type ChildProcess, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { freePort } from '../../support/services/index.ts';

export const KEY = 'key of the tests';

/** A server of classes as a process of its own: to be ended by force, and begun again. */
export interface ServerProcess {
  readonly url: string;
  start(): Promise<void>;
  /** At once, as when the power goes. */
  kill(): Promise<void>;
}

const SERVER = fileURLToPath(new URL('../../../src/cli/house/serve-classes.ts', import.meta.url));

export async function makeServerProcess(
  environment: Readonly<Record<string, string>>,
): Promise<ServerProcess> {
  const port = await freePort();
  let child: ChildProcess | null = null;
  const server: ServerProcess = {
    url: `http://127.0.0.1:${port}`,
    async start() {
      child = spawn(process.execPath, ['--import', 'tsx', SERVER], {
        env: {
          ...process.env,
          ...{ PORT: String(port), HOST: '127.0.0.1', INSTRUCTOR_KEY: KEY, LOG: 'silent' },
          ...environment,
        },
        stdio: ['ignore', 'pipe', 'inherit'],
      });
      const told = JSON.parse(await firstLine(child)) as { readonly port: number };
      // Clients look for it where it was.
      if (told.port !== port) throw new Error(`port ${port} was taken`);
    },
    async kill() {
      const ending = child;
      child = null;
      if (ending === null || ending.exitCode !== null || ending.signalCode !== null) return;
      await new Promise<void>((resolve) => {
        ending.once('exit', () => resolve());
        ending.kill('SIGKILL');
      });
    },
  };
  return server;
}

function firstLine(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    child.once('exit', (code) => reject(new Error(`the server ended with ${code}`)));
    if (child.stdout !== null) createInterface(child.stdout).once('line', resolve);
  });
}
