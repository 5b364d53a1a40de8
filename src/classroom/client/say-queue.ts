/** What an instructor says, in order, each told again with the same key until it is answered. */
import { z } from 'zod';
import { type Said, type Spoken, spokenSchema } from '../protocol/index.ts';
import { type Link, PASSING } from './link.ts';
import type { SmallShelf } from './ways.ts';

export interface Unsaid {
  readonly key: string;
  readonly entry: Spoken;
}

export interface SayQueue {
  say(entry: Spoken): Promise<Said>;
  unsaid(): readonly Unsaid[];
  live(): void;
  close(): void;
}

const AGAIN_MS = 1000;
const KEY_LETTERS = 'abcdefghijklmnopqrstuvwxyz0123456789';
const KEY_LENGTH = 20;
const keptSchema = z.array(z.strictObject({ key: z.string().min(8).max(64), entry: spokenSchema }));

/** @param shelfKey where on the shelf that is kept which is not yet answered */
export function createSayQueue(
  link: Pick<Link, 'ask' | 'phase'>,
  shelf: SmallShelf | null,
  shelfKey: string,
  random: () => number,
  onChange: (unsaid: readonly Unsaid[]) => void,
): SayQueue {
  let unsaid: readonly Unsaid[] = readKept(shelf, shelfKey);
  const heard = new Map<string, (said: Said) => void>();
  let asking = false;
  let isClosed = false;
  let timer: ReturnType<typeof setTimeout> | null = null;

  function change(next: readonly Unsaid[]): void {
    unsaid = next;
    keep(shelf, shelfKey, next);
    onChange(next);
  }

  function pump(): void {
    const [first] = unsaid;
    if (first === undefined || asking || isClosed || timer !== null) return;
    if (link.phase() !== 'live') return;
    asking = true;
    link
      .ask('say', first)
      .then(
        (said) => {
          if (!said.ok && PASSING.includes(said.error)) return AGAIN_MS;
          change(unsaid.filter(({ key }) => key !== first.key));
          heard.get(first.key)?.(said);
          heard.delete(first.key);
          return 0;
        },
        () => AGAIN_MS,
      )
      .then((waitMs) => {
        asking = false;
        if (isClosed) return;
        timer = setTimeout(() => {
          timer = null;
          pump();
        }, waitMs);
      });
  }

  return {
    say(entry) {
      const key = newKey(random);
      return new Promise((answered) => {
        heard.set(key, answered);
        change([...unsaid, { key, entry }]);
        pump();
      });
    },
    unsaid: () => unsaid,
    live() {
      if (timer !== null) clearTimeout(timer);
      timer = null;
      pump();
    },
    close() {
      isClosed = true;
      if (timer !== null) clearTimeout(timer);
    },
  };
}

function newKey(random: () => number): string {
  return Array.from({ length: KEY_LENGTH }, () =>
    KEY_LETTERS.charAt(Math.floor(random() * KEY_LETTERS.length)),
  ).join('');
}

function readKept(shelf: SmallShelf | null, shelfKey: string): readonly Unsaid[] {
  try {
    const read = keptSchema.safeParse(JSON.parse(shelf?.get(shelfKey) ?? '[]'));
    return read.success ? read.data : [];
  } catch {
    return [];
  }
}

/** Where the device keeps nothing it is told for as long as the page stands. */
function keep(shelf: SmallShelf | null, shelfKey: string, unsaid: readonly Unsaid[]): void {
  try {
    if (unsaid.length === 0) shelf?.remove(shelfKey);
    else shelf?.set(shelfKey, JSON.stringify(unsaid));
  } catch {
    return;
  }
}
