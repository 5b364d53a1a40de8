import { io } from 'socket.io-client';
import {
  CLASS_PROTOCOL,
  type OpenedClass,
  openedClassSchema,
  type Seated,
  type Spoken,
} from '../../../src/classroom/index.ts';
import { KEY } from './class-server.ts';
import { createEntryList, type EntryList } from './entry-list.ts';
import { type Line, openLine, pause } from './line.ts';

/** A page that says one thing after the other, each with its key, until it is taken. */
export interface Instructor {
  readonly entries: EntryList;
  /** What was taken, by its number. */
  readonly said: ReadonlyMap<number, string>;
  readonly broken: readonly string[];
  /** Resolves when it is taken. */
  say(spoken: Spoken): Promise<void>;
  close(): void;
}

const AGAIN_AFTER_MS = 100;
const ANSWER_WITHIN_MS = 20_000;
let keys = 0;

/** @param urls one page at each: all of them say everything, as one that is impatient does */
export function createInstructor(urls: readonly (() => string)[], opened: OpenedClass): Instructor {
  const entries = createEntryList();
  const said = new Map<number, string>();
  const broken: string[] = [];
  let isClosed = false;
  const take = (entry: Parameters<EntryList['take']>[0]): void => {
    try {
      entries.take(entry);
    } catch (error) {
      broken.push(String(error));
    }
  };
  const { id, secret } = opened;
  const lines = urls.map(
    (url): Line =>
      openLine({
        url,
        hello: () => ({ role: 'instructor', class: id, secret, since: entries.last() }),
        welcome: (welcome) => welcome.entries.forEach(take),
        entry: take,
      }),
  );
  return {
    ...{ entries, said, broken },
    async say(spoken) {
      const key = `key-${String(++keys).padStart(6, '0')}`;
      const text = JSON.stringify(spoken);
      while (!isClosed) {
        const message = { key, entry: spoken };
        const answers = await Promise.all(lines.map((line) => line.ask('say', message)));
        const numbers = new Set(answers.flatMap((answer) => (answer?.ok ? [answer.n] : [])));
        const [n] = numbers;
        if (numbers.size > 1) broken.push(`${key} was given ${[...numbers].join(' and ')}`);
        if (n !== undefined) {
          if (said.has(n)) broken.push(`number ${n} was given twice`);
          said.set(n, text);
          return;
        }
        await pause(AGAIN_AFTER_MS);
      }
    },
    close() {
      isClosed = true;
      for (const line of lines) line.close();
    },
  };
}

/** A new class at that server. */
export async function openClass(url: string): Promise<OpenedClass> {
  const response = await fetch(`${url}/api/classes`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', 'x-instructor-key': KEY },
    body: JSON.stringify({
      what: { kind: 'start', id: 'healthy-start', title: 'A healthy start', plant: 'dairy' },
      way: 'own copies',
    }),
  });
  const body: unknown = await response.json();
  if (response.status !== 201) throw new Error(`not opened: ${JSON.stringify(body)}`);
  return openedClassSchema.parse(body);
}

/** Comes in by the code. */
export async function joinClass(
  url: string,
  opened: OpenedClass,
  nickname: string,
): Promise<Extract<Seated, { ok: true }>> {
  const door = io(url, {
    ...{ path: '/class', transports: ['websocket'], forceNew: true },
    auth: { v: CLASS_PROTOCOL, role: 'door' },
  });
  try {
    const message = { code: opened.code, nickname };
    const seated: Seated = await door.timeout(ANSWER_WITHIN_MS).emitWithAck('join', message);
    if (!seated.ok) throw new Error(seated.error);
    return seated;
  } finally {
    door.disconnect();
  }
}
