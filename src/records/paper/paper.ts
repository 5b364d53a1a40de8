/** A paper: questions in words, in their order, with what stands around them. Plain data. */
import type { WordedItem } from '../../quiz/index.ts';

export interface PaperQuestion {
  readonly item: WordedItem;
  /** What skill it is about, in words. */
  readonly category: string;
  /** What was read, line by line as in the item, but in two columns. */
  readonly readings: readonly ReadingRow[];
}
export interface ReadingRow {
  /** What was done, where and when. */
  readonly of: string;
  readonly said: string;
}
export interface Paper {
  /** The same number and choices give the same questions anywhere. */
  readonly number: number;
  readonly questions: readonly PaperQuestion[];
  readonly words: PaperWords;
}

export const PAPER_PHRASES = [
  /** `{number}` */
  'title',
  /** The same for where there is little room. */
  'foot',
  /** At the foot of the key, so that its sheets are not handed out. */
  'key-foot',
  'name',
  'date',
  /** `{count}`; before where a teacher writes how many are right. */
  'score',
  /** That its numbers are training values, and whom to ask at a real plant. */
  'caution',
  /** `{number}` */
  'question',
  'start',
  'readings',
  'reading-of',
  'reading-said',
  'choose',
  /** Where things of a drawing are asked for: it does not leave the program. */
  'drawing-named',
  'put-in-order',
  /** Before where an answer is written. */
  'answer',
  'key',
  /** Every right answer, without its reasons. */
  'in-short',
  'right',
  'not-right',
  /** `{text}` */
  'right-answer',
  /** `{text}` */
  'right-order',
  /** `{from}`, `{to}` */
  'counts-as-right',
  'working',
  /** `{place}` */
  'place-in-order',
] as const;
/** What a paper says beside its questions; a `{name}` is filled in. */
export type PaperWords = Readonly<Record<(typeof PAPER_PHRASES)[number], string>>;

export function filled(
  sentence: string,
  places: Readonly<Record<string, string | number>>,
): string {
  return sentence.replace(/\{(\w+)\}/g, (place, name: string) => String(places[name] ?? place));
}

export function titleOf({ number, words }: Paper): string {
  return filled(words.title, { number });
}

/** The title as the beginning of a file's name. */
export function fileWords(paper: Paper): string {
  return titleOf(paper)
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}

/** A number as plain digits, as a reader of these formats takes it; six of them count. */
export function plainNumber(value: number): string {
  const text = String(Number(value.toPrecision(6)));
  // Not every reader knows an exponent.
  return text.includes('e') ? value.toFixed(20).replace(/\.?0+$/, '') : text;
}

/** A unit as it stands behind a number. */
export function unitAfter(unit: string): string {
  return unit === '' || unit === '°' ? unit : ` ${unit}`;
}
