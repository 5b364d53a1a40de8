/** A question as it is about to be asked: what everyone will read, and what only the instructor knows. */
import type { PollQuestion } from '../../../machines/class/index.ts';
import type { UnitSystem } from '../../quantity/index.ts';
import type { Item } from '../../quiz/index.ts';
import { type Names, type StartEvent, startWords, wordItem } from '../../wording/index.ts';

export const MOST_POLL_OPTIONS = 6;
/** Of a long start its end is what counts. */
const MOST_START_LINES = 10;

export interface PollDraft {
  readonly question: PollQuestion;
  /** Place of the right option; null where none is right. */
  readonly right: number | null;
  /** Said with the answers. */
  readonly why: string;
}

/** Null where the item is not one to choose an option of. */
export function draftOfItem(
  item: Item,
  names: Names,
  start: readonly StartEvent[],
  units: UnitSystem,
): PollDraft | null {
  if (item.answer !== 'choice' && item.answer !== 'spot') return null;
  const worded = wordItem(item, names, units, startWords(start));
  if (worded.answer !== 'choice' && worded.answer !== 'spot') return null;
  const { tells, start: lines, readings, asks, caution, options, key } = worded;
  if (key >= MOST_POLL_OPTIONS) return null;
  const stem = [
    ...tells,
    ...lines.slice(-MOST_START_LINES),
    ...readings,
    ...(caution === null ? [] : [caution]),
  ];
  return {
    question: {
      text: asks,
      stem,
      options: options.map(({ text }) => text).slice(0, MOST_POLL_OPTIONS),
      // By its name a page could make it and know the answer.
      item: null,
    },
    right: key,
    why: (options[key]?.why ?? []).join(' '),
  };
}

export interface OwnQuestion {
  readonly text: string;
  readonly options: readonly string[];
  readonly right: number | null;
  readonly why: string;
}

/** Null while it is no question yet: without its text, or with fewer than two options. */
export function draftOfOwn({ text, options, right, why }: OwnQuestion): PollDraft | null {
  const places = options.flatMap((option, place) => (option.trim() === '' ? [] : [place]));
  if (text.trim() === '' || places.length < 2) return null;
  const rightAt = right === null ? -1 : places.indexOf(right);
  return {
    question: {
      text: text.trim(),
      stem: [],
      options: places.map((place) => (options[place] ?? '').trim()),
      item: null,
    },
    right: rightAt < 0 ? null : rightAt,
    why: why.trim(),
  };
}
