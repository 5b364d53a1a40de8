import type { ClassEntry } from '../../machines/class/index.ts';
import type { WorkRecord } from '../../src/classroom/index.ts';
import type {
  ClassStore,
  KeptClass,
  KeptResult,
  KeptSeat,
  PollAnswer,
  StoreFailure,
  StoreTrouble,
} from '../../src/server/store/types.ts';

interface Kept {
  row: KeptClass;
  readonly entries: ClassEntry[];
  readonly keys: Map<string, ClassEntry>;
  readonly seats: Map<number, KeptSeat>;
  readonly works: Map<number, Map<number, WorkRecord>>;
  readonly answers: PollAnswer[];
  readonly results: KeptResult[];
}

export interface MemoryStore extends ClassStore {
  /** Everything fails from now on; null: nothing any more. */
  fail(trouble: StoreTrouble | null): void;
  /** Before each saving of works. */
  beforeSaving: () => Promise<void>;
}

/** Keeps what a database would, by the same promises; several servers may share one. */
export function createMemoryStore(): MemoryStore {
  const classes = new Map<string, Kept>();
  let trouble: StoreTrouble | null = null;

  /** As a database does: later, and as a copy. */
  async function later<T>(work: () => T): Promise<T> {
    await new Promise((resolve) => setImmediate(resolve));
    if (trouble !== null) {
      throw Object.assign(new Error(trouble), { trouble }) satisfies StoreFailure;
    }
    return structuredClone(work());
  }
  const of = (id: string): Kept => {
    const kept = classes.get(id);
    if (kept === undefined) throw new Error(`no class ${id}`);
    return kept;
  };

  const store: MemoryStore = {
    fail(next) {
      trouble = next;
    },
    beforeSaving: async () => {},
    database: {
      kind: 'embedded',
      query: () => Promise.reject(new Error('no database')),
      transaction: () => Promise.reject(new Error('no database')),
      warm: async () => {},
      close: async () => {},
    } as ClassStore['database'],
    openClass: (given) =>
      later(() => {
        const row = { ...given, n: 0, closedMs: null };
        classes.set(given.id, {
          row,
          entries: [],
          keys: new Map(),
          seats: new Map(),
          works: new Map(),
          answers: [],
          results: [],
        });
      }),
    classById: (id) => later(() => classes.get(id)?.row ?? null),
    classByCode: (code) =>
      later(
        () =>
          [...classes.values()].find(({ row }) => row.code === code && row.closedMs === null)
            ?.row ?? null,
      ),
    classes: () =>
      later(() => [...classes.values()].map(({ row, seats }) => ({ ...row, seats: seats.size }))),
    setRetention: (id, retentionDays) =>
      later(() => {
        const kept = of(id);
        kept.row = { ...kept.row, retentionDays };
      }),
    deleteClass: (id) => later(() => void classes.delete(id)),
    deleteExpired: (nowMs) =>
      later(() => {
        const gone = [...classes.values()]
          .filter(({ row }) => row.openedMs + row.retentionDays * 86_400_000 < nowMs)
          .map(({ row }) => row.id);
        for (const id of gone) classes.delete(id);
        return gone;
      }),
    append: (id, key, event, atMs, after) =>
      later(() => {
        const kept = classes.get(id);
        if (kept === undefined) return null;
        const known = kept.keys.get(key);
        if (known !== undefined) return { entry: known, fresh: false };
        if (kept.row.n !== after) return null;
        const entry = { n: after + 1, atMs, ...event } as ClassEntry;
        kept.entries.push(entry);
        kept.keys.set(key, entry);
        kept.row = {
          ...kept.row,
          n: entry.n,
          closedMs: event.type === 'close' ? atMs : kept.row.closedMs,
        };
        return { entry, fresh: true };
      }),
    entriesSince: (id, n) => later(() => classes.get(id)?.entries.slice(n) ?? []),
    lastNumbers: (ids) =>
      later(
        () => new Map(ids.flatMap((id) => classes.get(id)?.row ?? []).map(({ id, n }) => [id, n])),
      ),
    addSeat: (id, seat) =>
      later(() => {
        const { seats } = of(id);
        const number = seats.size + 1;
        seats.set(number, { ...seat, seat: number, handedInMs: null });
        return number;
      }),
    seats: (id) => later(() => [...of(id).seats.values()]),
    seat: (id, seat) => later(() => classes.get(id)?.seats.get(seat) ?? null),
    setToken: (id, seat, tokenHash) =>
      later(() => {
        const { seats } = of(id);
        seats.set(seat, { ...(seats.get(seat) as KeptSeat), tokenHash });
      }),
    noteHandedIn: (id, seat, atMs) =>
      later(() => {
        const { seats } = of(id);
        seats.set(seat, { ...(seats.get(seat) as KeptSeat), handedInMs: atMs });
      }),
    async saveWorks(works) {
      await store.beforeSaving();
      return later(() => {
        for (const { id, seat, work } of works) {
          const kept = classes.get(id);
          if (kept === undefined) continue;
          const attempts = kept.works.get(seat) ?? new Map<number, WorkRecord>();
          kept.works.set(seat, attempts);
          if ((attempts.get(work.attempt)?.rev ?? 0) < work.rev) {
            attempts.set(work.attempt, structuredClone(work));
          }
        }
      });
    },
    work: (id, seat, attempt) =>
      later(() => {
        const attempts = classes.get(id)?.works.get(seat);
        return attempts?.get(attempt ?? Math.max(...attempts.keys())) ?? null;
      }),
    works: (id) =>
      later(() =>
        [...of(id).works].flatMap(([seat, attempts]) => {
          const work = attempts.get(Math.max(...attempts.keys()));
          return work === undefined ? [] : [{ seat, work }];
        }),
      ),
    attempts: (id) =>
      later(() =>
        [...of(id).works].flatMap(([seat, attempts]) => {
          const work = attempts.get(Math.max(...attempts.keys()));
          if (work === undefined) return [];
          const { attempt, rev, startedMs } = work;
          return [{ seat, attempt, rev, startedMs }];
        }),
      ),
    answerPoll: (id, answer) =>
      later(() => {
        const { answers } = of(id);
        const isThere = answers.some(
          ({ poll, seat }) => poll === answer.poll && seat === answer.seat,
        );
        if (!isThere) answers.push(answer);
      }),
    pollAnswers: (id, poll) => later(() => of(id).answers.filter((one) => one.poll === poll)),
    saveResult: (id, result) =>
      later(() => {
        const { results } = of(id);
        const before = results.findIndex(
          ({ seat, attempt }) => seat === result.seat && attempt === result.attempt,
        );
        if (before >= 0) results.splice(before, 1);
        results.push(result);
      }),
    results: (id) => later(() => [...of(id).results]),
  };
  return store;
}
