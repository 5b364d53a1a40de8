import type { Seated, ToClient, WorkAct, WorkDelta } from '../../../src/classroom/index.ts';
import { createEntryList, type EntryList } from './entry-list.ts';
import { type Line, openLine, pause } from './line.ts';

/** A page that works, tells what it did, and tells it again until it is saved. */
export interface Learner {
  readonly seat: number;
  readonly acts: readonly WorkAct[];
  readonly entries: EntryList;
  /** So many of its acts it was told are saved. */
  readonly saved: () => number;
  /** Broken promises, in words. */
  readonly broken: readonly string[];
  readonly refusals: () => number;
  act(): void;
  stop(): Promise<void>;
}

const TELL_EVERY_MS = 100;

/** @param chance of an unruly page: what it tells it tells twice, and old tellings again */
export function createLearner(
  url: () => string,
  seated: Extract<Seated, { ok: true }>,
  chance: (() => number) | null = null,
): Learner {
  const { seat, token } = seated;
  const acts: WorkAct[] = [];
  const broken: string[] = [];
  const entries = createEntryList();
  let saved = 0;
  /** So many of them the server has, as far as is known. */
  let told = 0;
  let rev = 0;
  let refusals = 0;
  let isMissing = false;
  let isStopped = false;

  const take = (entry: ToClient['entry']): void => {
    try {
      if (!entries.take(entry)) isMissing = true;
    } catch (error) {
      broken.push(String(error));
    }
  };
  const line: Line = openLine({
    url,
    hello: () => ({ role: 'seat', class: seated.class, seat, token, since: entries.last() }),
    welcome(welcome) {
      welcome.entries.forEach(take);
      const there = welcome.work?.acts ?? [];
      if (there.length < saved) {
        broken.push(`seat ${seat}: ${saved} acts were saved, ${there.length} are there`);
      }
      told = countSame(acts, there);
      if (told < there.length) broken.push(`seat ${seat}: acts that it never did`);
      rev = Math.max(rev, welcome.work?.rev ?? 0);
    },
    entry: take,
  });

  const tellOne = (delta: WorkDelta) => line.ask('work', delta);
  const before: WorkDelta[] = [];
  function toldAgain(delta: WorkDelta): readonly WorkDelta[] {
    if (chance === null) return [];
    before.push(delta);
    const old = before[Math.floor(chance() * before.length)];
    return chance() < 0.5 ? [delta] : old === undefined ? [] : [old];
  }

  async function tell(): Promise<void> {
    const upTo = acts.length;
    const delta = {
      ...{ attempt: 1, rev: ++rev, headS: upTo, hash: null, setupHash: 'setup', startedMs: 1 },
      ...{ applied: entries.last(), keepActs: told, acts: acts.slice(told), keepDesk: 0, desk: [] },
    };
    const [answer = null] = await Promise.all([delta, ...toldAgain(delta)].map(tellOne));
    if (answer === null) return;
    if (answer.ok) {
      told = upTo;
      saved = Math.max(saved, upTo);
    } else if (answer.error === 'tell more' && 'haveActs' in answer) told = answer.haveActs;
    else refusals++;
  }

  async function live(): Promise<void> {
    while (!isStopped) {
      if (line.isIn()) {
        if (isMissing) {
          isMissing = false;
          const answer = await line.ask('since', { n: entries.last() });
          if (answer?.ok) answer.entries.forEach(take);
          else isMissing = true;
        }
        if (acts.length > saved) await tell();
      }
      await pause(TELL_EVERY_MS);
    }
  }
  const living = live();
  return {
    ...{ seat, acts, entries, broken },
    saved: () => saved,
    refusals: () => refusals,
    act() {
      acts.push({ t: acts.length, type: 'press', mark: `${seat}/${acts.length}` });
    },
    async stop() {
      isStopped = true;
      line.close();
      await living;
    },
  };
}

function countSame(own: readonly WorkAct[], there: readonly WorkAct[]): number {
  let same = 0;
  while (same < there.length && own[same]?.mark === there[same]?.mark) same++;
  return same;
}
