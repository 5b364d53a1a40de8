/**
 * Whole clients of the page, with work that they tell until it is saved, all in this one
 * process: what becomes of them when their server is ended by force.
 */
import {
  connectInstructor,
  connectSeat,
  type InstructorClient,
  joinAtDoor,
  type SeatClient,
} from '../../classroom/client/index.ts';
import type { OpenedClass } from '../../classroom/index.ts';
import { answerParent } from './processes.ts';

export type SeatsQuestion =
  | {
      readonly do: 'come in';
      readonly url: string;
      readonly opened: OpenedClass;
      readonly learners: number;
    }
  /** Waits until some have lost their server, and then until all are back. */
  | { readonly do: 'come back' }
  | { readonly do: 'finish' };

export interface SeatsAnswer {
  /** Connections that broke. */
  readonly lost: number;
  /** From the first that broke to the last that was back, ms. */
  readonly backMs: number;
  readonly acts: number;
  /** Acts that a new connection did not find. */
  readonly actsMissing: number;
  readonly entries: number;
  /** Learners whose entries are not those of the instructor. */
  readonly otherEntries: number;
}

interface Learner {
  readonly client: SeatClient;
  readonly place: { readonly class: string; readonly seat: number; readonly token: string };
  acts: { readonly t: number; readonly type: string }[];
}

const WORK_EVERY_MS = 1000;
const AT_ONCE = 25;
const AT_MOST_MS = 120_000;
const NOTHING: SeatsAnswer = {
  lost: 0,
  backMs: 0,
  acts: 0,
  actsMissing: 0,
  entries: 0,
  otherEntries: 0,
};

let url = '';
let learners: Learner[] = [];
let instructor: InstructorClient | null = null;
let timers: NodeJS.Timeout[] = [];

async function comeIn(opened: OpenedClass, count: number): Promise<void> {
  instructor = connectInstructor({ class: opened.id, secret: opened.secret }, { url });
  for (let first = 0; first < count; first += AT_ONCE) {
    const some = Array.from({ length: Math.min(AT_ONCE, count - first) }, (_, index) =>
      sitDown(opened.code, `Learner ${first + index}`),
    );
    learners.push(...(await Promise.all(some)));
  }
  await until(() => learners.every(isLive));
  instructor.say({ type: 'begin' });
  timers = learners.map((learner, index) => {
    const act = () => {
      learner.acts = [...learner.acts, { t: learner.acts.length, type: 'reset' }];
      learner.client.tellWork(workOf(learner));
    };
    const first = setTimeout(
      () => {
        timers.push(setInterval(act, WORK_EVERY_MS));
      },
      (index / count) * WORK_EVERY_MS,
    );
    return first;
  });
  timers.push(
    setInterval(() => instructor?.say({ type: 'hint', to: 'all', text: 'Go on.' }), 1000),
  );
}

async function sitDown(code: string, nickname: string): Promise<Learner> {
  const seated = await joinAtDoor({ code, nickname }, { url });
  if (!seated.ok) throw new Error(`not let in: ${seated.error}`);
  const place = { class: seated.class, seat: seated.seat, token: seated.token };
  return { client: connectSeat(place, { url }), place, acts: [] };
}

async function comeBack(): Promise<SeatsAnswer> {
  const lostBy = new Set<Learner>();
  await until(() => {
    for (const learner of learners) if (!isLive(learner)) lostBy.add(learner);
    return lostBy.size > 0;
  });
  const sinceMs = performance.now();
  await until(() => {
    for (const learner of learners) if (!isLive(learner)) lostBy.add(learner);
    return performance.now() - sinceMs > 500 && learners.every(isLive);
  });
  return { ...NOTHING, lost: lostBy.size, backMs: performance.now() - sinceMs };
}

async function finish(): Promise<SeatsAnswer> {
  for (const timer of timers) clearInterval(timer);
  await until(() => instructor?.store.read().unsaid.length === 0);
  await until(() => learners.every(({ client }) => client.store.read().saved === 'saved'));
  const n = instructor?.store.read().book.n ?? 0;
  await until(() => learners.every(({ client }) => client.store.read().book.n >= n));
  const kept = JSON.stringify(instructor?.store.read().entries);
  const otherEntries = learners.filter(
    ({ client }) => JSON.stringify(client.store.read().entries) !== kept,
  ).length;
  const acts = learners.reduce((sum, learner) => sum + learner.acts.length, 0);
  for (const { client } of learners) client.close();
  let actsMissing = 0;
  for (const learner of learners) actsMissing += learner.acts.length - (await actsFound(learner));
  instructor?.close();
  learners = [];
  return { ...NOTHING, acts, actsMissing, entries: n, otherEntries };
}

/** As a page finds it that knows nothing yet. */
async function actsFound({ place, acts }: Learner): Promise<number> {
  const again = connectSeat(place, { url });
  await until(() => again.store.read().link === 'live');
  const found = again.store.read().work?.acts ?? [];
  again.close();
  return acts.filter(({ t }, index) => found[index]?.t === t).length;
}

function workOf({ acts }: Learner) {
  return {
    attempt: 1,
    headS: acts.length,
    hash: null,
    setupHash: 'of the bench',
    startedMs: 0,
    applied: 1,
    acts,
    desk: [],
  };
}

function isLive({ client }: Learner): boolean {
  return client.store.read().link === 'live';
}

async function until(holds: () => boolean): Promise<void> {
  const lastMs = performance.now() + AT_MOST_MS;
  while (!holds()) {
    if (performance.now() > lastMs) throw new Error('what was waited for does not come');
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
}

answerParent<SeatsQuestion, SeatsAnswer>(async (question) => {
  switch (question.do) {
    case 'come in':
      url = question.url;
      await comeIn(question.opened, question.learners);
      return NOTHING;
    case 'come back':
      return comeBack();
    case 'finish':
      return finish();
  }
});
