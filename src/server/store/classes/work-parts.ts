/** Works as they lie in the database: parts that go on from one another. */
import type { WorkRecord } from '../../../classroom/index.ts';
import type { Row } from '../types.ts';

/** What a record says beside its logs. */
export type WorkHead = Omit<WorkRecord, 'attempt' | 'rev' | 'acts' | 'desk'>;

export interface WorkPart {
  readonly attempt: number;
  readonly rev: number;
  /** The part that it goes on from; null: it is whole. */
  readonly base: number | null;
  readonly head: WorkHead;
  /** So many of what stood before stay. */
  readonly keepActs: number;
  readonly acts: WorkRecord['acts'];
  readonly keepDesk: number;
  readonly desk: WorkRecord['desk'];
}

/** All of it, leaning on nothing. */
export function wholePart(work: WorkRecord): WorkPart {
  const { attempt, rev, acts, desk, ...head } = work;
  return { attempt, rev, base: null, head, keepActs: 0, acts, keepDesk: 0, desk };
}

/** What is new since `before`, which is saved. Lines that are the same object are not new. */
export function partSince(work: WorkRecord, before: WorkRecord): WorkPart {
  const keepActs = countSame(work.acts, before.acts);
  const keepDesk = countSame(work.desk, before.desk);
  const goesOn = work.attempt === before.attempt && work.rev > before.rev;
  if (!goesOn || keepActs + keepDesk === 0) return wholePart(work);
  const { attempt, rev, acts, desk, ...head } = work;
  return {
    attempt,
    rev,
    base: before.rev,
    head,
    keepActs,
    acts: acts.slice(keepActs),
    keepDesk,
    desk: desk.slice(keepDesk),
  };
}

/** The newest record that these parts of one attempt give, and how many parts it takes. */
export function assembleWork(
  parts: readonly WorkPart[],
): { readonly work: WorkRecord; readonly parts: number } | null {
  const byRev = new Map(parts.map((part) => [part.rev, part]));
  const newestFirst = [...byRev.keys()].sort((a, b) => b - a);
  for (const rev of newestFirst) {
    const chain = chainOf(byRev, rev);
    if (chain !== null)
      return { work: chain.reduce(withPart, null) as WorkRecord, parts: chain.length };
  }
  return null;
}

export function partOf(row: Row): WorkPart {
  return {
    attempt: row.attempt as number,
    rev: row.rev as number,
    base: row.base as number | null,
    head: row.head as WorkHead,
    keepActs: row.keep_acts as number,
    acts: row.acts as WorkRecord['acts'],
    keepDesk: row.keep_desk as number,
    desk: row.desk as WorkRecord['desk'],
  };
}

/** From the whole one on; null where one is missing. */
function chainOf(byRev: ReadonlyMap<number, WorkPart>, newest: number): WorkPart[] | null {
  const chain: WorkPart[] = [];
  for (let rev: number | null = newest; rev !== null; ) {
    const part = byRev.get(rev);
    if (part === undefined) return null;
    chain.push(part);
    rev = part.base;
  }
  return chain.reverse();
}

function withPart(before: WorkRecord | null, part: WorkPart): WorkRecord {
  const { attempt, rev, head, keepActs, acts, keepDesk, desk } = part;
  return {
    ...head,
    attempt,
    rev,
    acts: [...(before?.acts.slice(0, keepActs) ?? []), ...acts],
    desk: [...(before?.desk.slice(0, keepDesk) ?? []), ...desk],
  };
}

function countSame(now: readonly unknown[], before: readonly unknown[]): number {
  let same = 0;
  while (same < now.length && same < before.length && now[same] === before[same]) same++;
  return same;
}
