/**
 * Saved work on a shelf: one record by exercise, with the branches made of it, and aside of them
 * what can no longer be opened or was begun anew. Nothing is thrown away but by `eraseWork`.
 */
import { WORK_KINDS } from '../session/work-protocol.ts';
import { isFull, type Shelf } from './shelf.ts';
import {
  nameOfWork,
  readWork,
  readWorkData,
  type WorkIssue,
  type WorkName,
  type WorkRecord,
  type WorkTrouble,
} from './work-record.ts';
import type { KeptAside, WorkEntry, WorkList } from './work-types.ts';

const PREFIX = 'flamewright.work.';
/** Not under the other: an older page takes what it finds there for work of its own kind. */
const BRANCH_PREFIX = 'flamewright.work-branch.';
const ASIDE_PREFIX = 'flamewright.work-aside.';
const ALL_PREFIXES = [PREFIX, BRANCH_PREFIX, ASIDE_PREFIX];
const FILE_WORD = 'flamewright work';

export function keyOfWork({ kind, id, branch }: WorkName): string {
  return branch === undefined
    ? `${PREFIX}${kind}.${id}`
    : `${BRANCH_PREFIX}${kind}.${branch}.${id}`;
}

export type Kept =
  | { readonly record: WorkRecord; readonly issue: null }
  | { readonly record: null; readonly issue: WorkIssue | null };

/** What is kept of an exercise. A broken record is put aside; one of a newer version is left where it is. */
export function readKept(shelf: Shelf, name: WorkName, nowISO: string): Kept {
  const text = shelf.get(keyOfWork(name));
  if (text === null) return { record: null, issue: null };
  const read = readWork(text);
  if (read.ok && isOf(read.record, name)) return { record: read.record, issue: null };
  const { trouble, detail } = read.ok ? { trouble: 'broken' as const, detail: 'name' } : read;
  const issue: WorkIssue = { trouble, name, detail };
  if (trouble === 'broken') putAside(shelf, name, trouble, detail, nowISO);
  return { record: null, issue };
}

/** @returns why it could not be kept; null when it is */
export function writeKept(shelf: Shelf, record: WorkRecord): WorkIssue | null {
  const name = nameOfWork(record);
  return trySet(shelf, keyOfWork(name), JSON.stringify(record), name);
}

/** Moves what is kept of an exercise aside, whatever it is. Where there is no room for that, it stays. */
export function putAside(
  shelf: Shelf,
  name: WorkName,
  why: KeptAside['why'],
  detail: string,
  nowISO: string,
): WorkIssue | null {
  const key = keyOfWork(name);
  const text = shelf.get(key);
  if (text === null) return null;
  // Away first: two copies may be more than the device has room for.
  shelf.remove(key);
  const aside = JSON.stringify({ name, why, detail, atISO: nowISO, text });
  const issue = trySet(shelf, freeAsideKey(shelf), aside, name);
  if (issue !== null) shelf.set(key, text);
  return issue;
}

export function listKept(shelf: Shelf, nowISO: string): WorkList {
  const issues: WorkIssue[] = [];
  const entries: WorkEntry[] = [];
  for (const key of shelf.keys()) {
    const name = nameIn(key);
    if (name === null) continue;
    const { record, issue } = readKept(shelf, name, nowISO);
    if (issue !== null) issues.push(issue);
    if (record !== null) entries.push(entryOf(record));
  }
  entries.sort((a, b) => b.savedISO.localeCompare(a.savedISO));
  return { entries, aside: listAside(shelf), issues };
}

/** Everything kept, as one file. */
export function exportKept(shelf: Shelf, nowISO: string): string {
  const { entries, aside } = listKept(shelf, nowISO);
  return JSON.stringify(
    {
      file: FILE_WORD,
      savedISO: nowISO,
      works: entries.flatMap((name) => readKept(shelf, name, nowISO).record ?? []),
      aside: aside.map(({ key }) => shelf.get(key) ?? ''),
    },
    null,
    1,
  );
}

export interface Imported {
  readonly taken: readonly WorkName[];
  readonly issues: readonly WorkIssue[];
}

/** Takes in a file of `exportKept`, or one record. Work of the same name that is here goes aside. */
export function importKept(shelf: Shelf, text: string, nowISO: string): Imported {
  const found = worksIn(text);
  if (found === null) {
    return { taken: [], issues: [{ trouble: 'not saved work', name: null, detail: '' }] };
  }
  const taken: WorkName[] = [];
  const issues: WorkIssue[] = [];
  for (const data of found) {
    const read = readWorkData(data);
    if (!read.ok) {
      issues.push({ trouble: read.trouble, name: nameOfData(data), detail: read.detail });
      continue;
    }
    const name = nameOfWork(read.record);
    const same = shelf.get(keyOfWork(name)) === JSON.stringify(read.record);
    const issue = same
      ? null
      : (putAside(shelf, name, 'replaced by import', '', nowISO) ?? writeKept(shelf, read.record));
    if (issue === null) taken.push(name);
    else issues.push(issue);
  }
  return { taken, issues };
}

/**
 * Throws away what is kept of one exercise with the branches made of it, one branch, one thing
 * that stands aside, or everything.
 */
export function eraseKept(shelf: Shelf, what: WorkName | { readonly key: string } | 'all'): void {
  if (what === 'all') {
    for (const key of shelf.keys()) {
      if (ALL_PREFIXES.some((prefix) => key.startsWith(prefix))) shelf.remove(key);
    }
  } else if ('key' in what) {
    if (what.key.startsWith(ASIDE_PREFIX)) shelf.remove(what.key);
  } else {
    shelf.remove(keyOfWork(what));
    if (what.branch === undefined) for (const key of branchKeys(shelf, what)) shelf.remove(key);
  }
}

function branchKeys(shelf: Shelf, { kind, id }: WorkName): string[] {
  return shelf.keys().filter((key) => {
    const name = key.startsWith(BRANCH_PREFIX) ? nameIn(key) : null;
    return name?.kind === kind && name.id === id;
  });
}

function trySet(shelf: Shelf, key: string, text: string, name: WorkName): WorkIssue | null {
  try {
    shelf.set(key, text);
    return null;
  } catch (error) {
    const trouble: WorkTrouble = isFull(error) ? 'no room' : 'storage refused';
    return { trouble, name, detail: error instanceof Error ? error.message : String(error) };
  }
}

function listAside(shelf: Shelf): KeptAside[] {
  return shelf
    .keys()
    .filter((key) => key.startsWith(ASIDE_PREFIX))
    .sort((a, b) => Number(a.slice(ASIDE_PREFIX.length)) - Number(b.slice(ASIDE_PREFIX.length)))
    .map((key) => asideAt(shelf, key));
}

function asideAt(shelf: Shelf, key: string): KeptAside {
  try {
    const { name, why, detail, atISO } = JSON.parse(shelf.get(key) ?? '') as Omit<KeptAside, 'key'>;
    return { key, name, why, detail, atISO };
  } catch {
    return { key, name: null, why: 'broken', detail: '', atISO: '' };
  }
}

function freeAsideKey(shelf: Shelf): string {
  const taken = shelf
    .keys()
    .filter((key) => key.startsWith(ASIDE_PREFIX))
    .map((key) => Number(key.slice(ASIDE_PREFIX.length)));
  return `${ASIDE_PREFIX}${Math.max(0, ...taken.filter(Number.isInteger)) + 1}`;
}

function entryOf(record: WorkRecord): WorkEntry {
  const { startedISO, savedISO, headS, desk, branchOf = null } = record;
  const closed = desk.some(({ type }) => type === 'close');
  return { ...nameOfWork(record), startedISO, savedISO, headS, closed, branchOf };
}

function nameIn(key: string): WorkName | null {
  const isBranch = key.startsWith(BRANCH_PREFIX);
  if (!isBranch && !key.startsWith(PREFIX)) return null;
  const [kindWord, ...rest] = key.slice((isBranch ? BRANCH_PREFIX : PREFIX).length).split('.');
  const kind = WORK_KINDS.find((one) => one === kindWord);
  if (kind === undefined) return null;
  if (!isBranch) return { kind, id: rest.join('.') };
  const branch = Number(rest[0]);
  return Number.isInteger(branch) ? { kind, id: rest.slice(1).join('.'), branch } : null;
}

function nameOfData(data: unknown): WorkName | null {
  const { kind, id } = (data ?? {}) as { readonly kind?: unknown; readonly id?: unknown };
  const known = WORK_KINDS.find((one) => one === kind);
  return known !== undefined && typeof id === 'string' ? { kind: known, id } : null;
}

function isOf(record: WorkRecord, name: WorkName): boolean {
  return keyOfWork(nameOfWork(record)) === keyOfWork(name);
}

function worksIn(text: string): readonly unknown[] | null {
  try {
    const data = JSON.parse(text) as { readonly file?: unknown; readonly works?: unknown } | null;
    if (data?.file === FILE_WORD && Array.isArray(data.works)) return data.works;
    return data !== null && typeof data === 'object' && 'v' in data ? [data] : null;
  } catch {
    return null;
  }
}
