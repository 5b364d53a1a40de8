import { type ObservationKey, type Particles, spansOf } from './particles.ts';
import { createPatternBook, type PatternBook, type Patterns } from './patterns.ts';

/** A check in one situation, as one question: its answer is all that it tells there at once. */
export interface Question {
  readonly check: string;
  readonly moment: string;
  /** Places in `particles.keys`. */
  readonly keys: readonly number[];
  /** The answer each particle would give, 0 to `answers` − 1. */
  readonly column: Uint16Array;
  readonly answers: number;
  /** The answer of all particles of a cause; -1 where they differ. */
  readonly answerOf: Int32Array;
  /** Of the causes whose particles differ, how: places in `patterns`, and the answers of their groups. */
  readonly patternsOf: Uint32Array;
  readonly answerOfGroup: Uint16Array;
  readonly patterns: Patterns;
  /** Questions that split the particles alike have the same; what one is worth, all are. */
  readonly split: number;
}

type Sorted = Pick<Question, 'column' | 'answers' | 'answerOf' | 'patternsOf' | 'answerOfGroup'>;

/**
 * Every check in every situation, in the order of the keys. Made once for an atlas.
 *
 * @param nameOf keys of the same name are one question, of the check and the moment of its first key
 */
export function questionsOf(
  particles: Particles,
  nameOf: (key: ObservationKey) => string = ({ check, moment }) => `${check}@${moment}`,
): readonly Question[] {
  const byName = new Map<string, number[]>();
  particles.keys.forEach((one, key) => {
    const name = nameOf(one);
    const keys = byName.get(name);
    if (keys === undefined) byName.set(name, [key]);
    else keys.push(key);
  });
  const spans = spansOf(particles);
  const splits = new Map<number, (Sorted & { readonly split: number })[]>();
  let count = 0;
  const book = createPatternBook();
  const all = [...byName.values()].map((keys) => {
    const { column, answers } = joined(particles, keys);
    // Answers are counted as they come up, so that the same split has the same column.
    const name = mixed(column);
    const alike = splits.get(name) ?? [];
    const known = alike.find((one) => isSame(one.column, column));
    if (known !== undefined) return { keys, ...known };
    const one = { ...sorted(spans, column, answers, book), split: count++ };
    splits.set(name, [...alike, one]);
    return { keys, ...one };
  });
  const patterns = book.close();
  return all.map((one) => {
    const { check, moment } = particles.keys[one.keys[0] as number] as Particles['keys'][number];
    return { check, moment, ...one, patterns };
  });
}

/** Answers cause by cause. */
function sorted(
  spans: Uint32Array,
  column: Uint16Array,
  answers: number,
  book: PatternBook,
): Sorted {
  const answerOf = new Int32Array(spans.length - 1);
  const patternsOf: number[] = [];
  const answerOfGroup: number[] = [];
  for (let cause = 0; cause < answerOf.length; cause++) {
    const from = spans[cause] as number;
    const to = spans[cause + 1] as number;
    const answer = from < to ? (column[from] as number) : 0;
    let alike = true;
    for (let p = from; p < to; p++) alike &&= column[p] === answer;
    answerOf[cause] = alike ? answer : -1;
    if (!alike) patternsOf.push(book.place(cause, from, to, column, answers, answerOfGroup));
  }
  return {
    column,
    answers,
    answerOf,
    patternsOf: Uint32Array.from(patternsOf),
    answerOfGroup: Uint16Array.from(answerOfGroup),
  };
}

/** A short name of a column; two may share it. */
function mixed(column: Uint16Array): number {
  let name = 0;
  for (let p = 0; p < column.length; p++) name = (Math.imul(name, 31) + (column[p] as number)) | 0;
  return name;
}

function isSame(a: Uint16Array, b: Uint16Array): boolean {
  for (let p = 0; p < a.length; p++) if (a[p] !== b[p]) return false;
  return true;
}

/** Bins of several keys as one number, counted in the order in which they come up. */
function joined(
  { keys: all, causeOf }: Particles,
  keys: readonly number[],
): { readonly column: Uint16Array; readonly answers: number } {
  const column = new Uint16Array(causeOf.length);
  let answers = 1;
  for (const key of keys) {
    const { column: bins, bins: names } = all[key] as Particles['keys'][number];
    const numbers = new Int32Array(answers * names.length).fill(-1);
    answers = 0;
    for (let p = 0; p < column.length; p++) {
      const both = (column[p] as number) * names.length + (bins[p] as number);
      if ((numbers[both] as number) < 0) numbers[both] = answers++;
      column[p] = numbers[both] as number;
    }
  }
  return { column, answers };
}
