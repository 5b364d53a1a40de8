/** Branches of work: the same exercise, log and paper up to a moment, and from there on otherwise. */
import { toolUseOf } from '../../bench/index.ts';
import type { TimedAction } from '../../engine/index.ts';
import { keyOf } from '../session/meter-key.ts';
import { listKept, putAside, readKept, writeKept } from './keep-work.ts';
import type { Shelf } from './shelf.ts';
import { MOST_BRANCHES, type WorkIssue, type WorkName, type WorkRecord } from './work-record.ts';
import type { WorkEntry } from './work-types.ts';

/** Where a branch leaves the work it comes from. */
export interface Fork {
  /** What was done from then on is left out, s. */
  readonly t: number;
  /** So many desk entries stand before it. */
  readonly entries: number;
}

export type Branched =
  | { readonly name: WorkName; readonly issue: null }
  /** 'full': there are as many branches of this work as are kept. */
  | { readonly name: null; readonly issue: WorkIssue | 'full' };

/** The work it comes from is only read. */
export function makeBranch(shelf: Shelf, from: WorkRecord, fork: Fork, nowISO: string): Branched {
  const n = freePlace(shelf, from, nowISO);
  if (n === null) return { name: null, issue: 'full' };
  const record = branchRecord(from, fork, n, nowISO);
  const issue = writeKept(shelf, record);
  if (issue !== null) return { name: null, issue };
  return { name: { kind: from.kind, id: from.id, branch: n }, issue: null };
}

/** Those of this very work, the newest first. */
export function branchesOf(
  shelf: Shelf,
  { kind, id, startedISO }: Pick<WorkRecord, 'kind' | 'id' | 'startedISO'>,
  nowISO: string,
): readonly WorkEntry[] {
  return listKept(shelf, nowISO).entries.filter(
    (entry) => entry.kind === kind && entry.id === id && entry.branchOf?.startedISO === startedISO,
  );
}

/** The work a branch comes from; null when it is gone or was begun anew since. */
export function sourceOf(shelf: Shelf, branch: WorkRecord, nowISO: string): WorkRecord | null {
  const { kind, id, branchOf } = branch;
  const { record } = readKept(shelf, { kind, id }, nowISO);
  return record !== null && record.startedISO === branchOf?.startedISO ? record : null;
}

/** A number that is free; one of work that was begun anew since is made free. */
function freePlace(shelf: Shelf, from: WorkRecord, nowISO: string): number | null {
  const all = listKept(shelf, nowISO).entries.filter(
    ({ kind, id, branchOf }) => kind === from.kind && id === from.id && branchOf !== null,
  );
  const places = Array.from({ length: MOST_BRANCHES }, (_, place) => place + 1);
  const free = places.find((n) => all.every(({ branchOf }) => branchOf?.n !== n));
  if (free !== undefined) return free;
  const orphan = all.findLast(({ branchOf }) => branchOf?.startedISO !== from.startedISO);
  if (orphan?.branchOf == null) return null;
  const name = { kind: orphan.kind, id: orphan.id, branch: orphan.branchOf.n };
  return putAside(shelf, name, 'started anew', '', nowISO) === null ? name.branch : null;
}

function branchRecord(from: WorkRecord, fork: Fork, n: number, nowISO: string): WorkRecord {
  const { t, entries } = fork;
  // What a job does by itself it has done before anybody came.
  const log = from.log.filter((entry) => entry.t < t);
  return {
    v: from.v,
    kind: from.kind,
    id: from.id,
    seed: from.seed,
    startedISO: nowISO,
    savedISO: nowISO,
    log,
    pending: [],
    desk: from.desk.slice(0, entries),
    headS: t,
    hash: null,
    setupHash: from.setupHash,
    uses: usesThen(from, t),
    branchOf: { n, startedISO: from.startedISO, t },
  };
}

/**
 * The tools that were on then, as far as the log tells: when one is taken off it does not say. So
 * those that stayed to the end, and of the others of a kind the one put on last.
 */
export function usesThen(
  { log, uses }: Pick<WorkRecord, 'log' | 'uses'>,
  t: number,
): WorkRecord['uses'] {
  const before = log.filter((entry) => entry.t < t).flatMap(useIn);
  const stayed = uses.filter((use) => before.some((one) => keyOf(one) === keyOf(use)));
  const lastOfKind = before.filter(
    ({ tool }, place) =>
      stayed.every((use) => use.tool !== tool) &&
      before.slice(place + 1).every((later) => later.tool !== tool),
  );
  return [...stayed, ...lastOfKind];
}

function useIn(entry: TimedAction): WorkRecord['uses'] {
  const use = entry.type === 'check' ? toolUseOf(entry) : null;
  return use === null ? [] : [use];
}
