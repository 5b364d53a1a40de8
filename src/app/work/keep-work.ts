/**
 * Saved work on a shelf: one record by exercise, and aside of them what can no longer be opened
 * or was begun anew. Nothing is thrown away but by `eraseWork`.
 */
import { WORK_KINDS } from '../session/work-protocol.ts';
import { isFull, type Shelf } from './shelf.ts';
import {
  readWork,
  readWorkData,
  type WorkIssue,
  type WorkName,
  type WorkRecord,
  type WorkTrouble,
} from './work-record.ts';
import type { KeptAside, WorkEntry, WorkList } from './work-types.ts';

const PREFIX = 'flamewright.work.';
const ASIDE_PREFIX = 'flamewright.work-aside.';
const FILE_WORD = 'flamewright work';

export function keyOfWork({ kind, id }: WorkName): string {
  return `${PREFIX}${kind}.${id}`;
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
  const { trouble, detail } = read.ok ? { trouble: 'broken' as const, detail: 'kind, id' } : read;
  const issue: WorkIssue = { trouble, name, detail };
  if (trouble === 'broken') putAside(shelf, name, trouble, detail, nowISO);
  return { record: null, issue };
}

/** @returns why it could not be kept; null when it is */
export function writeKept(shelf: Shelf, record: WorkRecord): WorkIssue | null {
  const { kind, id } = record;
  return trySet(shelf, keyOfWork(record), JSON.stringify(record), { kind, id });
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
  for (const key of shelf.keys().filter((one) => one.startsWith(PREFIX))) {
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
    const { kind, id } = read.record;
    const same = shelf.get(keyOfWork(read.record)) === JSON.stringify(read.record);
    const issue = same
      ? null
      : (putAside(shelf, { kind, id }, 'replaced by import', '', nowISO) ??
        writeKept(shelf, read.record));
    if (issue === null) taken.push({ kind, id });
    else issues.push(issue);
  }
  return { taken, issues };
}

/** Throws away what is kept of one exercise, one thing that stands aside, or everything. */
export function eraseKept(shelf: Shelf, what: WorkName | { readonly key: string } | 'all'): void {
  if (what === 'all') {
    for (const key of shelf.keys()) {
      if (key.startsWith(PREFIX) || key.startsWith(ASIDE_PREFIX)) shelf.remove(key);
    }
  } else if ('key' in what) {
    if (what.key.startsWith(ASIDE_PREFIX)) shelf.remove(what.key);
  } else shelf.remove(keyOfWork(what));
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

function entryOf({ kind, id, startedISO, savedISO, headS, desk }: WorkRecord): WorkEntry {
  const closed = desk.some(({ type }) => type === 'close');
  return { kind, id, startedISO, savedISO, headS, closed };
}

function nameIn(key: string): WorkName | null {
  const [kindWord, ...id] = key.slice(PREFIX.length).split('.');
  const kind = WORK_KINDS.find((one) => one === kindWord);
  return kind === undefined ? null : { kind, id: id.join('.') };
}

function nameOfData(data: unknown): WorkName | null {
  const { kind, id } = (data ?? {}) as { readonly kind?: unknown; readonly id?: unknown };
  const known = WORK_KINDS.find((one) => one === kind);
  return known !== undefined && typeof id === 'string' ? { kind: known, id } : null;
}

function isOf(record: WorkRecord, { kind, id }: WorkName): boolean {
  return record.kind === kind && record.id === id;
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
