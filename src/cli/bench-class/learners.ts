/**
 * Pages of a class without anything behind them, all in this one process, so that one clock
 * tells how long a command takes. They only take what comes and say once a second how they stand.
 */
import { io, type Socket } from 'socket.io-client';
import { CLASS_PROTOCOL, type OpenedClass, type SeatState } from '../../classroom/index.ts';
import { type Times, timesOf } from './figures.ts';
import { answerParent } from './processes.ts';

export type LearnersQuestion =
  | {
      readonly do: 'come in';
      readonly urls: readonly string[];
      /** Empty: to a bare broadcast. */
      readonly classes: readonly OpenedClass[];
      readonly learners: number;
    }
  | { readonly do: 'commands'; readonly count: number; readonly everyMs: number }
  | { readonly do: 'leave' };

export interface LearnersAnswer {
  readonly times: Times;
  /** Receipts that did not come. */
  readonly missing: number;
}

interface Group {
  readonly instructor: Socket;
  readonly learners: Socket[];
}

const AT_ONCE = 50;
const SETTLE_MS = 3000;
const STATE: SeatState = {
  phase: 'working',
  step: 'pre-purge',
  stepS: 12.3,
  runS: 45.6,
  running: true,
  lockout: null,
  last: { type: 'connect-tool', what: 'manometer', agoS: 3 },
  suspects: ['air-pressure-switch', 'fan', 'damper'],
  flags: 0,
  readings: 4,
  resets: 0,
  lockouts: 0,
  progress: 0.3,
  answered: 0,
  right: 0,
  asksHelp: false,
  applied: 1,
};

let groups: Group[] = [];
let ticking: NodeJS.Timeout[] = [];
/** When each command was sent, and how long after it came to each learner. */
const sentMs = new Map<string, number>();
let tookMs: number[] = [];

async function comeIn(
  urls: readonly string[],
  classes: readonly OpenedClass[],
  learners: number,
): Promise<void> {
  const isBare = classes.length === 0;
  const rooms = isBare ? [null] : classes;
  groups = [];
  for (const opened of rooms) {
    const hello =
      opened === null
        ? {}
        : { role: 'instructor', class: opened.id, secret: opened.secret, since: 0 };
    groups.push({ instructor: await connected(urls[0] ?? '', hello, isBare), learners: [] });
  }
  const numbers = Array.from({ length: learners }, (_, index) => index);
  await inTurns(numbers, async (index) => {
    const group = groups[index % groups.length];
    const url = urls[Math.floor(index / groups.length) % urls.length] ?? '';
    const opened = rooms[index % rooms.length] ?? null;
    const hello = opened === null ? {} : await seatAt(url, opened, `Learner ${index}`);
    const learner = await connected(url, hello, isBare);
    learner.on('entry', (entry: { readonly text?: string }) => {
      const sent = sentMs.get(entry.text ?? '');
      if (sent !== undefined) tookMs.push(performance.now() - sent);
    });
    group?.learners.push(learner);
    const delayMs = (index / learners) * 1000;
    // Spread over the second, as a class would.
    setTimeout(() => {
      ticking.push(setInterval(() => void learner.emit('state', STATE), 1000));
    }, delayMs);
  });
  await later(SETTLE_MS);
}

async function command(count: number, everyMs: number): Promise<LearnersAnswer> {
  sentMs.clear();
  tookMs = [];
  const asked: Promise<unknown>[] = [];
  for (let index = 0; index < count; index++) {
    const group = groups[index % groups.length];
    const text = `Look at the pressure before and behind the valve, number ${index}.`;
    sentMs.set(text, performance.now());
    const key = `command-${Date.now()}-${index}`;
    const entry = { type: 'hint', to: 'all', text };
    asked.push(
      group?.instructor.timeout(20_000).emitWithAck('say', { key, entry }) as Promise<void>,
    );
    await later(everyMs);
  }
  await Promise.all(asked);
  const expected = Array.from(
    { length: count },
    (_, index) => groups[index % groups.length]?.learners.length ?? 0,
  ).reduce((sum, each) => sum + each, 0);
  const lastMs = performance.now() + 20_000;
  while (tookMs.length < expected && performance.now() < lastMs) await later(50);
  return { times: timesOf(tookMs), missing: expected - tookMs.length };
}

function leave(): void {
  for (const timer of ticking) clearInterval(timer);
  ticking = [];
  for (const { instructor, learners } of groups) {
    for (const socket of [instructor, ...learners]) socket.disconnect();
  }
  groups = [];
}

async function seatAt(url: string, { code }: OpenedClass, nickname: string) {
  const door = await connected(url, { role: 'door' }, true);
  const seated = await door.timeout(20_000).emitWithAck('join', { code, nickname });
  door.disconnect();
  if (seated.ok !== true) throw new Error(`not let in: ${seated.error}`);
  const { seat, token } = seated;
  return { role: 'seat', class: seated.class, seat, token, since: 0 };
}

function connected(url: string, hello: object, isBare: boolean): Promise<Socket> {
  const socket = io(url, {
    path: '/class',
    transports: ['websocket'],
    forceNew: true,
    reconnection: false,
    timeout: 30_000,
    auth: { v: CLASS_PROTOCOL, ...hello },
  });
  return new Promise((resolve, reject) => {
    socket.once('connect_error', reject);
    socket.once(isBare ? 'connect' : 'welcome', () => resolve(socket));
  });
}

async function inTurns(
  numbers: readonly number[],
  work: (index: number) => Promise<void>,
): Promise<void> {
  for (let first = 0; first < numbers.length; first += AT_ONCE) {
    await Promise.all(numbers.slice(first, first + AT_ONCE).map(work));
  }
}

function later(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}

answerParent<LearnersQuestion, LearnersAnswer | null>(async (question) => {
  switch (question.do) {
    case 'come in':
      await comeIn(question.urls, question.classes, question.learners);
      return null;
    case 'commands':
      return command(question.count, question.everyMs);
    case 'leave':
      leave();
      return null;
  }
});
