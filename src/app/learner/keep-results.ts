/**
 * Results on a shelf. Each writing begins with what is there by then, so that two pages that are
 * open at once lose nothing of each other's. What cannot be read stands aside until it is erased.
 */
import { keyOfResult } from '../../diagnosis/mastery/index.ts';
import { isFull, type Shelf } from '../work/shelf.ts';
import {
  type KeptResult,
  mergeResults,
  type ResultsIssue,
  type ResultsRead,
  readResults,
  writeResults,
} from './result-record.ts';

export const RESULTS_KEY = 'flamewright.results';
const ASIDE_PREFIX = 'flamewright.results-aside.';

export type KeepTrouble = 'newer version' | 'no room' | 'storage refused';

export interface ResultsKept {
  readonly results: readonly KeptResult[];
  /** Null when all that is kept can be read; 'newer version' means that nothing may be written. */
  readonly trouble: 'broken' | 'newer version' | null;
  /** Something that could not be read stands aside. */
  readonly aside: boolean;
}

export function keptResults(shelf: Shelf): ResultsKept {
  const { results, issues } = read(shelf);
  const [first] = issues;
  const trouble = first === undefined ? null : troubleOf(first);
  const aside = shelf.keys().some((key) => key.startsWith(ASIDE_PREFIX));
  return { results, trouble, aside };
}

/** 'counted': it is among the results; 'erased': its attempt was begun before results were erased. */
export type Counted = 'counted' | 'erased' | KeepTrouble;

/** Takes one result in, unless it is there already. */
export function addResult(shelf: Shelf, result: KeptResult): Counted {
  const { results, erasedISO, issues } = read(shelf);
  if (issues.some(({ trouble }) => trouble === 'newer version')) return 'newer version';
  if (erasedISO !== null && result.startedISO <= erasedISO) return 'erased';
  const merged = mergeResults([...results, result]);
  const known = results.find((each) => keyOfResult(each) === keyOfResult(result));
  if (known !== undefined && merged.includes(known)) return 'counted';
  return put(shelf, merged, erasedISO, issues) ?? 'counted';
}

export interface ResultsImported {
  /** How many were not there before. */
  readonly taken: number;
  /** What is wrong with the file: then nothing of it was taken. */
  readonly issues: readonly ResultsIssue[];
  readonly trouble: KeepTrouble | null;
}

export function importResults(shelf: Shelf, text: string): ResultsImported {
  const brought = readResults(text);
  if (brought.issues.length > 0) return { taken: 0, issues: brought.issues, trouble: null };
  const { results, erasedISO, issues } = read(shelf);
  if (issues.some(({ trouble }) => trouble === 'newer version')) {
    return { taken: 0, issues: [], trouble: 'newer version' };
  }
  const merged = mergeResults([...results, ...brought.results]);
  const trouble = put(shelf, merged, erasedISO, issues);
  return { taken: trouble === null ? merged.length - results.length : 0, issues: [], trouble };
}

/** The text of a file with all results that can be read. */
export function exportResults(shelf: Shelf): string {
  return writeResults(read(shelf).results, null, 1);
}

/** Throws all of it away, what stands aside too. Attempts begun before then count no more. */
export function eraseResults(shelf: Shelf, nowISO: string): void {
  for (const key of shelf.keys()) if (key.startsWith(ASIDE_PREFIX)) shelf.remove(key);
  shelf.remove(RESULTS_KEY);
  tryPut(shelf, RESULTS_KEY, writeResults([], nowISO));
}

function read(shelf: Shelf): ResultsRead {
  const text = shelf.get(RESULTS_KEY);
  return text === null ? { results: [], erasedISO: null, issues: [] } : readResults(text);
}

/** What could not be read is kept aside before anything is written in its place. */
function put(
  shelf: Shelf,
  results: readonly KeptResult[],
  erasedISO: string | null,
  issues: readonly ResultsIssue[],
): KeepTrouble | null {
  const before = shelf.get(RESULTS_KEY);
  if (issues.length > 0 && before !== null) {
    const trouble = tryPut(shelf, freeAsideKey(shelf), before);
    if (trouble !== null) return trouble;
  }
  return tryPut(shelf, RESULTS_KEY, writeResults(results, erasedISO));
}

function freeAsideKey(shelf: Shelf): string {
  const taken = shelf.keys().filter((key) => key.startsWith(ASIDE_PREFIX));
  let n = taken.length + 1;
  while (taken.includes(`${ASIDE_PREFIX}${n}`)) n += 1;
  return `${ASIDE_PREFIX}${n}`;
}

function tryPut(shelf: Shelf, key: string, text: string): KeepTrouble | null {
  try {
    shelf.set(key, text);
    return null;
  } catch (error) {
    return isFull(error) ? 'no room' : 'storage refused';
  }
}

function troubleOf({ trouble }: ResultsIssue): 'broken' | 'newer version' {
  return trouble === 'newer version' ? 'newer version' : 'broken';
}
