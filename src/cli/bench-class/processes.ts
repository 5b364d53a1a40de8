import { type ChildProcess, fork, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';

export interface ServerProcess {
  readonly port: number;
  readonly url: string;
  /** As it tells them itself: memory of its data, bytes, and the processor time that it took, s. */
  figures(): Promise<{ readonly memory: number; readonly cpuS: number }>;
  /** Ends it at once, as when the power goes. */
  kill(): Promise<void>;
}

/** A process of the same TypeScript. Its first line says on which port it listens. */
export async function startServerProcess(
  file: string,
  environment: Readonly<Record<string, string>>,
): Promise<ServerProcess> {
  const child = spawn(process.execPath, ['--import', 'tsx', pathOf(file)], {
    env: { ...process.env, PORT: '0', LOG: 'error', INSTRUCTOR_KEY: KEY, ...environment },
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const { port } = JSON.parse(await firstLine(child)) as { readonly port: number };
  const url = `http://127.0.0.1:${port}`;
  return {
    port,
    url,
    async figures() {
      const text = await (await fetch(`${url}/metrics`)).text();
      return {
        memory: Number(/^flamewright_heap_bytes (\S+)$/m.exec(text)?.[1]),
        cpuS: Number(/^flamewright_cpu_seconds (\S+)$/m.exec(text)?.[1]),
      };
    },
    kill: () => endChild(child),
  };
}

export const KEY = 'key of the load bench';

/** A process that is talked to: one question at a time, each answered once. */
export interface Talking<Question, Answer> {
  ask(question: Question): Promise<Answer>;
  end(): Promise<void>;
}

export function startTalking<Question extends object, Answer>(
  file: string,
): Talking<Question, Answer> {
  const child = fork(pathOf(file), { execArgv: ['--import', 'tsx'], serialization: 'advanced' });
  return {
    ask: (question) =>
      new Promise((resolve, reject) => {
        const failed = (): void => reject(new Error(`${file} ended`));
        child.once('exit', failed);
        child.once('message', (answer) => {
          child.off('exit', failed);
          const { error, value } = answer as { readonly error?: string; readonly value?: unknown };
          if (error === undefined) resolve(value as Answer);
          else reject(new Error(error));
        });
        child.send(question);
      }),
    end: () => endChild(child),
  };
}

/** The other end of `startTalking`. */
export function answerParent<Question, Answer>(
  answer: (question: Question) => Promise<Answer>,
): void {
  process.on('message', (question) => {
    answer(question as Question).then(
      (value) => process.send?.({ value }),
      (error: unknown) =>
        process.send?.({ error: error instanceof Error ? error.stack : `${error}` }),
    );
  });
}

function firstLine(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    child.once('exit', (code) => reject(new Error(`a server ended with ${code}`)));
    if (child.stdout !== null) createInterface(child.stdout).once('line', resolve);
  });
}

function endChild(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    child.once('exit', () => resolve());
    child.kill('SIGKILL');
  });
}

function pathOf(file: string): string {
  return fileURLToPath(new URL(file, import.meta.url));
}
