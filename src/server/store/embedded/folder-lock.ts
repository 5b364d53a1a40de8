/**
 * One process to a data folder: two would silently write over each other.
 *
 * The file names its holder. One that was left behind by a process that is gone is taken over;
 * across machines (or containers) that share a folder, one that has not been touched for long.
 */
import {
  constants,
  copyFileSync,
  linkSync,
  mkdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { storeFailure } from '../failure.ts';
import { processStart } from './process-start.ts';

export interface FolderLock {
  free(): void;
}

interface Holder {
  readonly pid: number;
  readonly start: string;
  readonly host: string;
  /** Unlike that of every other lock ever taken. */
  readonly mark: string;
}

export const LOCK_FILE = 'in-use';
const TOUCH_EVERY_MS = 2000;
const ABANDONED_MS = 15_000;

/** @throws StoreFailure 'folder taken', or what the file system has against it */
export function lockFolder(folder: string): FolderLock {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, LOCK_FILE);
  const mark = `${process.pid}-${crypto.randomUUID()}`;
  const start = processStart(process.pid) ?? 'unknown';
  const own: Holder = { pid: process.pid, start, host: hostname(), mark };
  if (!tryToWrite(path, own)) {
    const before = readHolder(path);
    if (before !== null && isThere(before, path)) throw taken(folder, path, before);
    setAside(folder, path, before, mark);
    if (!tryToWrite(path, own)) throw taken(folder, path, readHolder(path));
  }
  const touch = setInterval(() => touchQuietly(path), TOUCH_EVERY_MS);
  touch.unref();
  return {
    free() {
      clearInterval(touch);
      if (readHolder(path)?.mark === mark) rmSync(path, { force: true });
    },
  };
}

/** False where the file is there already. */
function tryToWrite(path: string, holder: Holder): boolean {
  const draft = `${path}.${holder.mark}`;
  try {
    // Linked when it is whole, so that nobody reads half of it.
    writeFileSync(draft, JSON.stringify(holder));
    linkOrCopy(draft, path);
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    return false;
  } finally {
    rmSync(draft, { force: true });
  }
}

/** Not every file system has links. */
function linkOrCopy(draft: string, path: string): void {
  try {
    linkSync(draft, path);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') throw error;
    copyFileSync(draft, path, constants.COPYFILE_EXCL);
  }
}

/** Null where it is gone or not to be read: then nobody holds the folder. */
function readHolder(path: string): Holder | null {
  try {
    const { pid, start, host, mark } = JSON.parse(readFileSync(path, 'utf8')) as Partial<Holder>;
    const isWhole = Number.isSafeInteger(pid) && host !== undefined && mark !== undefined;
    return isWhole ? { pid: pid as number, start: start ?? 'unknown', host, mark } : null;
  } catch {
    return null;
  }
}

function isThere({ pid, start, host }: Holder, path: string): boolean {
  if (host !== hostname()) {
    try {
      return Date.now() - statSync(path).mtimeMs < ABANDONED_MS;
    } catch {
      return false;
    }
  }
  const now = processStart(pid);
  return now !== null && (now === 'unknown' || start === 'unknown' || now === start);
}

/** Out of the way, unless somebody else has taken it over meanwhile: then it is put back. */
function setAside(folder: string, path: string, before: Holder | null, mark: string): void {
  const aside = `${path}.old-${mark}`;
  try {
    renameSync(path, aside);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return;
    throw error;
  }
  const holder = readHolder(aside);
  const isOther = holder !== null && holder.mark !== before?.mark;
  try {
    if (isOther) linkSync(aside, path);
  } catch {
    // A third one has it by now.
  } finally {
    rmSync(aside, { force: true });
  }
  if (isOther) throw taken(folder, path, holder);
}

function touchQuietly(path: string): void {
  try {
    const now = new Date();
    utimesSync(path, now, now);
  } catch {
    // The next time.
  }
}

function taken(folder: string, path: string, holder: Holder | null) {
  const who = holder === null ? 'another process' : `process ${holder.pid} on ${holder.host}`;
  const mend = `stop it, or give this one another DATA folder; if it is gone, remove ${path}`;
  return storeFailure('folder taken', new Error(`${folder} is in use by ${who}: ${mend}`));
}
