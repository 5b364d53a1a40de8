/** What stands in the key of a paper: the right answer and why, in words, the same in every format. */
import type { WordedItem, WordedNumber } from '../../quiz/index.ts';
import { filled, type PaperWords, plainNumber, unitAfter } from './paper.ts';

export interface Reason {
  /** What it is about: an option, a step; null for what stands alone. */
  readonly about: string | null;
  /** Null where there is nothing to be right or wrong. */
  readonly isRight: boolean | null;
  readonly why: readonly string[];
}
export interface AnswerKey {
  /** Short: letters of the options, or the number with its unit. */
  readonly right: string;
  readonly reasons: readonly Reason[];
}

export function answerKey(item: WordedItem, words: PaperWords): AnswerKey {
  switch (item.answer) {
    case 'choice':
    case 'spot':
      return {
        right: letterOf(item.key),
        reasons: item.options.map(({ text, why }, place) => ({
          about: lettered(text, place),
          isRight: place === item.key,
          why,
        })),
      };
    case 'order':
      return {
        right: item.key.map(letterOf).join(', '),
        reasons: item.key.map((place) => {
          const { text = '', why = [] } = item.steps[place] ?? {};
          return { about: lettered(text, place), isRight: null, why };
        }),
      };
    case 'number':
      return { right: item.said, reasons: numberReasons(item, words) };
  }
}

/** A, B, C… for the first, second, third… */
export function letterOf(place: number): string {
  return String.fromCharCode(65 + place);
}

/** What counts as right, how it is worked out, and what well-known slips make of it. */
export function numberReasons(
  { from, to, unit, working, mistakes }: WordedNumber,
  words: PaperWords,
): readonly Reason[] {
  const reach = { from: rounded(from), to: `${rounded(to)}${unitAfter(unit)}` };
  const alone = { about: null, isRight: null };
  return [
    { ...alone, why: [filled(words['counts-as-right'], reach)] },
    ...(working.length === 0 ? [] : [{ about: words.working, isRight: null, why: working }]),
    ...mistakes.map(({ said, why }) => ({ about: said, isRight: false, why: [why] })),
  ];
}

/** Four digits are enough for eyes. */
function rounded(value: number): string {
  return plainNumber(Number(value.toPrecision(4))).replace('-', '\u2212');
}

function lettered(text: string, place: number): string {
  return `${letterOf(place)}. ${text}`;
}
