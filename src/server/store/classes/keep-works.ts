import type { WorkRecord } from '../../../classroom/index.ts';
import { codeOf } from '../failure.ts';
import type { ClassStore, Database, Row } from '../types.ts';
import {
  assembleWork,
  partOf,
  partSince,
  type WorkHead,
  type WorkPart,
  wholePart,
} from './work-parts.ts';

type Kept = Pick<ClassStore, 'saveWorks' | 'work' | 'works' | 'attempts'>;
type Told = Parameters<ClassStore['saveWorks']>[0][number];

interface Saved {
  /** As whoever saved or read it still holds it. */
  readonly record: WeakRef<WorkRecord>;
  readonly parts: number;
}

/** So many parts and it is written whole again, and those before it go. */
const MOST_PARTS = 40;
const MOST_REMEMBERED = 10_000;
/** A class or a part was deleted while others were saved that hang on it. */
const HANGS_ON_NOTHING = '23503';
const MOST_TRIES = 3;

const COLUMNS = 'seat, attempt, rev, base, head, keep_acts, acts, keep_desk, desk';

/** Passed over: what is not newer than what is there, and what goes on from a part that is gone. */
const ADD = `
  insert into work_part
    (class, seat, attempt, rev, base, head, keep_acts, acts, keep_desk, desk)
  select w.class, w.seat, w.attempt, w.rev, w.base,
      w.head::json, w.keep_acts, w.acts::json, w.keep_desk, w.desk::json
    from unnest(
      $1::text[], $2::int[], $3::int[], $4::int[], $5::int[],
      $6::text[], $7::int[], $8::text[], $9::int[], $10::text[]
    ) as w(class, seat, attempt, rev, base, head, keep_acts, acts, keep_desk, desk)
    join class as c on c.id = w.class
    where not exists (
      select from work_part as n
        where n.class = w.class and n.seat = w.seat
          and (n.attempt, n.rev) >= (w.attempt, w.rev)
    ) and (w.base is null or exists (
      select from work_part as b
        where b.class = w.class and b.seat = w.seat
          and b.attempt = w.attempt and b.rev = w.base
    ))
    order by w.class, w.seat
  on conflict do nothing
  returning class, seat`;

/** What a whole one has made needless. Not where another process still goes on from it. */
const TIDY = `
  delete from work_part as p
    using unnest($1::text[], $2::int[], $3::int[], $4::int[]) as w(class, seat, attempt, rev)
    where p.class = w.class and p.seat = w.seat and p.attempt = w.attempt and p.rev < w.rev`;

export function keepWorks(database: Database): Kept {
  const saved = new Map<string, Saved>();

  function remember(key: string, record: WorkRecord, parts: number): void {
    saved.delete(key);
    saved.set(key, { record: new WeakRef(record), parts });
    const [oldest] = saved.keys();
    if (saved.size > MOST_REMEMBERED && oldest !== undefined) saved.delete(oldest);
  }

  /** With those that were newer than what is there. */
  async function add(told: readonly Told[], partFor: (one: Told) => WorkPart): Promise<Told[]> {
    if (told.length === 0) return [];
    const parts = told.map(partFor);
    const statement = { sql: ADD, params: columnsOf(told, parts) };
    const [rows = []] = await database.transaction([statement], 'bulk');
    const added = new Set(rows.map((row) => keyOf(row.class as string, row.seat as number)));
    const taken = told.filter(({ id, seat }) => added.has(keyOf(id, seat)));
    for (const one of taken) {
      const key = keyOf(one.id, one.seat);
      const before = saved.get(key)?.parts ?? 0;
      const isWhole = parts[told.indexOf(one)]?.base === null;
      remember(key, one.work, isWhole ? 1 : before + 1);
    }
    const whole = taken.filter((one) => parts[told.indexOf(one)]?.base === null);
    const tidied = whole.filter(({ work }) => work.rev > 1);
    if (tidied.length > 0) void tidy(tidied);
    return taken;
  }

  /** Nothing rests on it: what stays behind goes the next time. */
  async function tidy(told: readonly Told[]): Promise<void> {
    const params = [
      told.map(({ id }) => id),
      told.map(({ seat }) => seat),
      told.map(({ work }) => work.attempt),
      told.map(({ work }) => work.rev),
    ];
    await database.transaction([{ sql: TIDY, params }], 'bulk').catch(() => undefined);
  }

  function newPart({ id, seat, work }: Told): WorkPart {
    const last = saved.get(keyOf(id, seat));
    const before = last?.record.deref();
    if (last === undefined || before === undefined || last.parts >= MOST_PARTS) {
      return wholePart(work);
    }
    return partSince(work, before);
  }

  async function saveOnce(told: readonly Told[], canGoOn: boolean): Promise<void> {
    const taken = new Set(await add(told, canGoOn ? newPart : ({ work }) => wholePart(work)));
    const passedOver = told.filter((one) => !taken.has(one));
    for (const { id, seat } of passedOver) saved.delete(keyOf(id, seat));
    // By age, or because another process has tidied away what they went on from.
    if (canGoOn) await add(passedOver, ({ work }) => wholePart(work));
  }

  return {
    async saveWorks(works) {
      const told = newestOfEach(works);
      for (let tries = 1; ; tries++) {
        try {
          await saveOnce(told, tries === 1);
          return;
        } catch (error) {
          const code = codeOf((error as Error).cause);
          if (code !== HANGS_ON_NOTHING || tries >= MOST_TRIES) throw error;
        }
      }
    },
    async work(id, seat, attempt) {
      const rows = await database.query(
        `select ${COLUMNS} from work_part
          where class = $1 and seat = $2 and attempt = coalesce($3::int, (
            select max(attempt) from work_part where class = $1 and seat = $2
          ))`,
        [id, seat, attempt ?? null],
      );
      const found = assembleWork(rows.map(partOf));
      if (found === null) return null;
      if (attempt === undefined) remember(keyOf(id, seat), found.work, found.parts);
      return found.work;
    },
    async works(id) {
      const rows = await database.query(
        `select ${COLUMNS} from work_part
          where class = $1 and (seat, attempt) in (
            select seat, max(attempt) from work_part where class = $1 group by seat
          ) order by seat`,
        [id],
      );
      return [...bySeat(rows)].flatMap(([seat, parts]) => {
        const found = assembleWork(parts.map(partOf));
        return found === null ? [] : [{ seat, work: found.work }];
      });
    },
    async attempts(id) {
      const rows = await database.query(
        `select distinct on (seat) seat, attempt, rev, head from work_part
          where class = $1 order by seat, attempt desc, rev desc`,
        [id],
      );
      return rows.map(({ seat, attempt, rev, head }) => ({
        seat: seat as number,
        attempt: attempt as number,
        rev: rev as number,
        startedMs: (head as WorkHead).startedMs,
      }));
    },
  };
}

function columnsOf(told: readonly Told[], parts: readonly WorkPart[]): readonly unknown[] {
  const json = (pick: (part: WorkPart) => unknown) =>
    parts.map((part) => JSON.stringify(pick(part)));
  return [
    told.map(({ id }) => id),
    told.map(({ seat }) => seat),
    parts.map(({ attempt }) => attempt),
    parts.map(({ rev }) => rev),
    parts.map(({ base }) => base),
    json(({ head }) => head),
    parts.map(({ keepActs }) => keepActs),
    json(({ acts }) => acts),
    parts.map(({ keepDesk }) => keepDesk),
    json(({ desk }) => desk),
  ];
}

function newestOfEach(works: readonly Told[]): readonly Told[] {
  const newest = new Map<string, Told>();
  for (const one of works) {
    const key = keyOf(one.id, one.seat);
    const other = newest.get(key)?.work;
    const { attempt, rev } = one.work;
    const isOlder =
      other !== undefined &&
      (attempt < other.attempt || (attempt === other.attempt && rev < other.rev));
    if (!isOlder) newest.set(key, one);
  }
  return [...newest.values()];
}

function bySeat(rows: readonly Row[]): ReadonlyMap<number, Row[]> {
  const seats = new Map<number, Row[]>();
  for (const row of rows) {
    const seat = row.seat as number;
    const known = seats.get(seat);
    if (known === undefined) seats.set(seat, [row]);
    else known.push(row);
  }
  return seats;
}

function keyOf(id: string, seat: number): string {
  return `${id} ${seat}`;
}
