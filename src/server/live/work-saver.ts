import {
  type WorkAnswer,
  type WorkDelta,
  type WorkRecord,
  withDelta,
} from '../../classroom/index.ts';
import { isStoreFailure } from '../store/index.ts';
import type { ClassStore } from '../store/types.ts';
import type { Log } from './log.ts';
import type { Metrics } from './metrics.ts';

interface Waiting {
  readonly attempt: number;
  readonly rev: number;
  readonly answer: (saved: boolean) => void;
}

/** The work of one seat as this process has it; seat 0 is the one plant. */
interface LiveWork {
  readonly id: string;
  readonly seat: number;
  record: WorkRecord | null;
  /** What the store has of it. */
  saved: { readonly attempt: number; readonly rev: number };
  waiting: Waiting[];
  loading: Promise<void> | null;
}

export interface Told {
  /** Whether it says something new. */
  readonly fresh: boolean;
  /** Settles when it is saved or cannot be. */
  readonly answer: Promise<WorkAnswer>;
}

/** Keeps works in memory and saves them in batches; what is told is answered once it is saved. */
export interface WorkSaver {
  /** @throws StoreFailure */
  tell(id: string, seat: number, delta: WorkDelta): Promise<Told>;
  /** As the store has it, once all that was told here is saved. @throws StoreFailure */
  reload(id: string, seat: number): Promise<WorkRecord | null>;
  /** As it is known here or in the store. @throws StoreFailure */
  current(id: string, seat: number): Promise<WorkRecord | null>;
  /** As this process has it in memory. */
  known(id: string, seat: number): WorkRecord | null;
  /** Takes what another process told of it. */
  overhear(id: string, seat: number, delta: WorkDelta): boolean;
  /** A seat whose page has left is forgotten once it is saved. */
  leave(id: string, seat: number): void;
  /** Of a class that is deleted. */
  drop(id: string): void;
  hasPending(id: string): boolean;
  pending(): number;
  /** Saves what is pending, for so long at most; whether all of it is saved. */
  close(withinMs: number): Promise<boolean>;
}

export interface SaverTimes {
  /** What comes within this time is saved together, ms. */
  readonly gatherMs: number;
  readonly retryMs: number;
  readonly mostRetryMs: number;
}
const TIMES: SaverTimes = { gatherMs: 100, retryMs: 500, mostRetryMs: 8000 };

/** So that what is urgent never waits for a long transaction. */
const MOST_RECORDS = 40;
const MOST_LINES = 8000;
const NOTHING_SAVED = { attempt: 0, rev: 0 };

export function createWorkSaver(
  store: ClassStore,
  metrics: Metrics,
  log: Log,
  times = TIMES,
): WorkSaver {
  const works = new Map<string, LiveWork>();
  const dirty = new Set<LiveWork>();
  /** Given to the store, which has not answered yet. */
  const underWay = new Set<LiveWork>();
  const leaving = new Set<LiveWork>();
  let saving: Promise<void> | null = null;
  let timer: NodeJS.Timeout | null = null;
  let retryMs = times.retryMs;
  let idle: (() => void)[] = [];

  function workOf(id: string, seat: number): LiveWork {
    const key = keyOf(id, seat);
    const known = works.get(key);
    if (known !== undefined) return known;
    const fresh: LiveWork = {
      id,
      seat,
      record: null,
      saved: NOTHING_SAVED,
      waiting: [],
      loading: null,
    };
    works.set(key, fresh);
    return fresh;
  }

  /** From the store, unless something newer waits here to be saved. */
  function load(work: LiveWork): Promise<void> {
    work.loading ??= (async () => {
      const kept = await store.work(work.id, work.seat);
      const isOld = !isAsNewAs(kept ?? NOTHING_SAVED, work.saved);
      if (isUnsaved(work) || isOld) return;
      work.record = kept;
      work.saved = kept ?? NOTHING_SAVED;
    })().finally(() => {
      work.loading = null;
      if (leaving.has(work)) forget(work);
    });
    return work.loading;
  }

  function isUnsaved(work: LiveWork): boolean {
    return dirty.has(work) || underWay.has(work);
  }

  function schedule(delayMs: number): void {
    if (timer !== null || saving !== null || dirty.size === 0) return;
    timer = setTimeout(() => {
      timer = null;
      saving = saveAll().finally(() => {
        saving = null;
        schedule(retryMs > times.retryMs ? retryMs : times.gatherMs);
        if (dirty.size === 0) {
          for (const done of idle.splice(0)) done();
        }
      });
    }, delayMs);
  }

  async function saveAll(): Promise<void> {
    while (dirty.size > 0) {
      const chunk = nextChunk();
      const records = chunk.map(({ id, seat, record }) => ({
        id,
        seat,
        work: record as WorkRecord,
      }));
      for (const work of chunk) {
        dirty.delete(work);
        underWay.add(work);
      }
      const startedMs = performance.now();
      try {
        await store.saveWorks(records);
      } catch (error) {
        underWay.clear();
        metrics.count('save failures');
        log.warn(
          { works: chunk.length, trouble: isStoreFailure(error) ? error.trouble : 'unknown' },
          'works not saved',
        );
        for (const work of chunk) {
          if (works.get(keyOf(work.id, work.seat)) === work) dirty.add(work);
        }
        refuseAllWaiting();
        retryMs = Math.min(times.mostRetryMs, retryMs * 2);
        return;
      }
      underWay.clear();
      retryMs = times.retryMs;
      metrics.time('save', performance.now() - startedMs);
      metrics.count('saves', records.length);
      for (const [index, work] of chunk.entries()) noteSaved(work, records[index]?.work);
    }
  }

  function nextChunk(): LiveWork[] {
    const chunk: LiveWork[] = [];
    let lines = 0;
    for (const work of dirty) {
      lines += (work.record?.acts.length ?? 0) + (work.record?.desk.length ?? 0);
      if (chunk.length > 0 && (chunk.length >= MOST_RECORDS || lines > MOST_LINES)) break;
      chunk.push(work);
    }
    return chunk;
  }

  function noteSaved(work: LiveWork, record: WorkRecord | undefined): void {
    if (record === undefined) return;
    if (isAsNewAs(record, work.saved)) work.saved = record;
    const still: Waiting[] = [];
    for (const one of work.waiting) {
      if (isAsNewAs(work.saved, one)) one.answer(true);
      else still.push(one);
    }
    work.waiting = still;
    if (leaving.has(work)) forget(work);
  }

  function refuseAllWaiting(): void {
    for (const work of works.values()) {
      for (const { answer } of work.waiting.splice(0)) answer(false);
    }
  }

  function forget(work: LiveWork): void {
    if (isUnsaved(work) || work.waiting.length > 0 || work.loading !== null) return;
    leaving.delete(work);
    works.delete(keyOf(work.id, work.seat));
  }

  const allSaved = (): Promise<void> =>
    dirty.size === 0 && saving === null
      ? Promise.resolve()
      : new Promise((resolve) => {
          idle = [...idle, resolve];
          schedule(0);
        });

  return {
    async tell(id, seat, delta) {
      const work = workOf(id, seat);
      leaving.delete(work);
      if (work.record === null) await load(work);
      const taken = withDelta(work.record, delta);
      if (!taken.ok) {
        const { haveActs, haveDesk } = taken;
        const answer = { ok: false, error: 'tell more', haveActs, haveDesk } as const;
        return { fresh: false, answer: Promise.resolve(answer) };
      }
      // What is older than what is there changes nothing: the answer says what is there.
      const { attempt, rev } = taken.record;
      const { fresh } = taken;
      if (fresh) {
        work.record = taken.record;
        metrics.count('works');
      }
      if (isAsNewAs(work.saved, taken.record)) {
        return { fresh, answer: Promise.resolve({ ok: true, attempt, rev }) };
      }
      dirty.add(work);
      const answer = new Promise<WorkAnswer>((resolve) => {
        const answered = (saved: boolean): void =>
          resolve(saved ? { ok: true, attempt, rev } : { ok: false, error: 'cannot be saved now' });
        work.waiting.push({ attempt, rev, answer: answered });
      });
      schedule(times.gatherMs);
      return { fresh, answer };
    },
    async reload(id, seat) {
      const work = workOf(id, seat);
      leaving.delete(work);
      if (isUnsaved(work)) await savedOf(work);
      await load(work);
      return work.record;
    },
    async current(id, seat) {
      const work = works.get(keyOf(id, seat));
      if (work?.record) return work.record;
      return store.work(id, seat);
    },
    known: (id, seat) => works.get(keyOf(id, seat))?.record ?? null,
    overhear(id, seat, delta) {
      const work = works.get(keyOf(id, seat));
      if (work === undefined || work.record === null || isUnsaved(work)) return false;
      const taken = withDelta(work.record, delta);
      if (!taken.ok || !taken.fresh) return false;
      work.record = taken.record;
      return true;
    },
    leave(id, seat) {
      const work = works.get(keyOf(id, seat));
      if (work === undefined) return;
      leaving.add(work);
      forget(work);
    },
    drop(id) {
      for (const [key, work] of works) {
        if (work.id !== id) continue;
        for (const { answer } of work.waiting.splice(0)) answer(false);
        dirty.delete(work);
        leaving.delete(work);
        works.delete(key);
      }
    },
    hasPending: (id) => [...dirty, ...underWay].some((work) => work.id === id),
    pending: () => dirty.size + underWay.size,
    async close(withinMs) {
      if (timer !== null) clearTimeout(timer);
      timer = null;
      const late = new Promise<void>((resolve) => setTimeout(resolve, withinMs).unref());
      await Promise.race([allSaved(), late]);
      if (timer !== null) clearTimeout(timer);
      refuseAllWaiting();
      return dirty.size === 0;
    },
  };

  /** When what was told of it so far is in the store; otherwise too, when that failed. */
  function savedOf(work: LiveWork): Promise<void> {
    const { record } = work;
    if (record === null) return Promise.resolve();
    return new Promise((resolve) => {
      work.waiting.push({ attempt: record.attempt, rev: record.rev, answer: () => resolve() });
      schedule(0);
    });
  }
}

type Place = { readonly attempt: number; readonly rev: number };

function isAsNewAs(one: Place, other: Place): boolean {
  return one.attempt > other.attempt || (one.attempt === other.attempt && one.rev >= other.rev);
}

function keyOf(id: string, seat: number): string {
  return `${id} ${seat}`;
}
