import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { chownSync, mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { adviceForService, findService, type Service } from '../services.ts';

/** Debian's servers refuse to be root; nobody may be anyone. */
const NOBODY = 65_534;
const UP_WITHIN_MS = 60_000;
const TRY_EVERY_MS = 100;

/** A server on a port and in a folder of its own. */
export interface RunningService {
  readonly port: number;
  readonly folder: string;
  /** Ends it at once, as when the power goes; what it was told stays in its folder. */
  kill(): Promise<void>;
  /** Begins again on the same port and folder. */
  start(): Promise<void>;
  /** For good, with its folder. */
  remove(): Promise<void>;
}

export function isThere(service: Service): boolean {
  return findService(service) !== undefined;
}

export function programOf(service: Service, name = service.program): string {
  const path = findService(service, name);
  if (path === undefined) throw new Error(adviceForService(service));
  return path;
}

export function makeServiceFolder(name: string): string {
  const folder = mkdtempSync(join(tmpdir(), `${name}-`));
  if (isRoot()) chownSync(folder, NOBODY, NOBODY);
  return folder;
}

export function runOnce(program: string, args: readonly string[], folder: string): void {
  const done = spawnSync(program, args, { ...asNobody(), cwd: folder, encoding: 'utf8' });
  if (done.status !== 0) throw new Error(`${program} failed: ${done.error ?? done.stderr}`);
}

export async function startService(options: {
  readonly program: string;
  readonly folder: string;
  readonly args: (port: number) => readonly string[];
  /** Rejects while it does not answer. */
  readonly ask: (port: number) => Promise<void>;
  /** Ends it without a word to anyone; left out: by force. */
  readonly endSignal?: NodeJS.Signals;
}): Promise<RunningService> {
  const { program, folder, args, ask, endSignal = 'SIGKILL' } = options;
  const port = await freePort();
  let child: ChildProcess | null = null;
  let said = '';

  const service: RunningService = {
    port,
    folder,
    async start() {
      const started = spawn(program, args(port), {
        ...asNobody(),
        cwd: folder,
        stdio: ['ignore', 'pipe', 'pipe'],
      });
      child = started;
      said = '';
      for (const stream of [started.stdout, started.stderr]) {
        stream.on('data', (text) => {
          said = `${said}${text}`.slice(-4000);
        });
      }
      const lastMs = Date.now() + UP_WITHIN_MS;
      for (;;) {
        try {
          await ask(port);
          return;
        } catch (error) {
          const ended = started.exitCode !== null || started.signalCode !== null;
          if (ended || Date.now() > lastMs) throw new Error(`${program}: ${said} (${error})`);
          await new Promise((resolve) => setTimeout(resolve, TRY_EVERY_MS));
        }
      }
    },
    async kill() {
      const ending = child;
      child = null;
      if (ending === null || ending.exitCode !== null || ending.signalCode !== null) return;
      await new Promise<void>((resolve) => {
        ending.once('exit', () => resolve());
        ending.kill(endSignal);
      });
    },
    async remove() {
      await service.kill();
      rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
    },
  };
  await service.start();
  return service;
}

export function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen({ port: 0, host: '127.0.0.1' }, () => {
      const address = probe.address();
      const port = typeof address === 'object' && address !== null ? address.port : 0;
      probe.close(() => resolve(port));
    });
  });
}

function asNobody() {
  return isRoot() ? { uid: NOBODY, gid: NOBODY } : {};
}

export function isRoot(): boolean {
  return process.getuid?.() === 0;
}
