/** What stands in the key of a paper: the right answer and why, in words, the same in every format. */
import type { WordedItem, WordedNumber } from '../../quiz/index.ts';
import { filled, type Paper, type PaperWords, plainNumber, unitAfter } from './paper.ts';

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

/** What is right, question by question. */
export function shortAnswers({ questions, words }: Paper): readonly string[] {
  return questions.map(({ item }) => answerKey(item, words).right);
}

/** How an item is answered on paper; null where there is only a place for a number. */
export function howToAnswer({ answer }: WordedItem, words: PaperWords): string | null {
  switch (answer) {
    case 'choice':
      return words.choose;
    case 'spot':
      return `${words['drawing-named']} ${words.choose}`;
    case 'order':
      return words['put-in-order'];
    case 'number':
      return null;
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
  const [least = '', greatest = ''] = rounded([from, to]);
  const reach = { from: least, to: `${greatest}${unitAfter(unit)}` };
  const alone = { about: null, isRight: null };
  return [
    { ...alone, why: [filled(words['counts-as-right'], reach)] },
    ...(working.length === 0 ? [] : [{ about: words.working, isRight: null, why: working }]),
    ...mistakes.map(({ said, why }) => ({ about: said, isRight: false, why: [why] })),
  ];
}

/** Four digits are enough for eyes; all of them with as many decimals, to be compared at a glance. */
function rounded(values: readonly number[]): string[] {
  const plain = values.map((value) => plainNumber(Number(value.toPrecision(4))));
  const decimals = Math.max(...plain.map((text) => text.split('.')[1]?.length ?? 0));
  return plain.map((text) => {
    const [whole = '', fraction = ''] = text.split('.');
    const said = decimals === 0 ? whole : `${whole}.${fraction.padEnd(decimals, '0')}`;
    return said.replace('-', '\u2212');
  });
}

function lettered(text: string, place: number): string {
  return `${letterOf(place)}. ${text}`;
}
