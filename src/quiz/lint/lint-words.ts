import type { WordedItem, WordedOption } from '../item/worded.ts';
import type { LintFinding, LintRule } from './finding.ts';
import { folded } from './same-meaning.ts';

/** What a language calls what no item should say; all in small letters, without punctuation. */
export interface LintVocabulary {
  /** Words, or several in a row, that turn a question round. */
  readonly negatives: readonly string[];
  /** Answers that are only about the others. */
  readonly aboutOthers: readonly string[];
  /** Words of which a reason that says nothing is made. */
  readonly verdicts: readonly string[];
}

/** The longest of the options may have so many times the letters of the shortest, and so many more. */
const TIMES_AS_LONG = 2.2;
const LETTERS_MORE = 12;
/** A reason of fewer words than this gives none. */
const FEWEST_WORDS = 4;
const GAP = /\{\w*\}|\bundefined\b|\bNaN\b|\[object/;

/** What is wrong with the words of an item in one language; nothing where they are sound. */
export function lintWords(item: WordedItem, vocabulary: LintVocabulary): readonly LintFinding[] {
  const [name, options] = optionsOf(item);
  const folds = options.map(({ text }) => folded(text));
  return [
    ...askFindings(item, vocabulary),
    ...folds.flatMap((text, place) => [
      ...where('option repeated', `${name}.${place}`, folds.indexOf(text) < place),
      ...where(
        'all or none of the above',
        `${name}.${place}`,
        vocabulary.aboutOthers.some((words) => text.startsWith(words)),
      ),
    ]),
    ...where('alike in length', name, !alikeInLength(options)),
    ...options.flatMap(({ why }, place) =>
      where(
        'reason says nothing',
        `${name}.${place}.why`,
        !saysSomething(why.join(' '), vocabulary),
      ),
    ),
    ...textsOf(item).flatMap(([place, text]) =>
      where('gap in the words', place, text.trim() === '' || GAP.test(text)),
    ),
  ];
}

function askFindings({ asks, tells }: WordedItem, vocabulary: LintVocabulary): LintFinding[] {
  const words = ` ${folded(asks)} `;
  const marks = asks.split('?').length - 1;
  return [
    ...where(
      'negative question',
      'asks',
      vocabulary.negatives.some((negative) => words.includes(` ${negative} `)),
    ),
    ...where('one question', 'asks', marks !== 1 || !asks.trimEnd().endsWith('?')),
    ...tells.flatMap((tell, place) => where('one question', `tells.${place}`, tell.includes('?'))),
  ];
}

function optionsOf(item: WordedItem): readonly [string, readonly WordedOption[]] {
  if (item.answer === 'order') return ['steps', item.steps];
  return ['options', item.answer === 'number' ? [] : item.options];
}

function alikeInLength(options: readonly WordedOption[]): boolean {
  const lengths = options.map(({ text }) => text.length);
  return (
    lengths.length === 0 ||
    Math.max(...lengths) <= TIMES_AS_LONG * Math.min(...lengths) + LETTERS_MORE
  );
}

function saysSomething(why: string, { verdicts }: LintVocabulary): boolean {
  const words = folded(why).split(' ');
  return words.filter((word) => word !== '' && !verdicts.includes(word)).length >= FEWEST_WORDS;
}

function textsOf(item: WordedItem): readonly (readonly [string, string])[] {
  const [name, options] = optionsOf(item);
  const numbered = (head: string, texts: readonly string[]) =>
    texts.map((text, place) => [`${head}.${place}`, text] as const);
  return [
    ['asks', item.asks],
    ...numbered('tells', item.tells),
    ...numbered('start', item.start),
    ...numbered('readings', item.readings),
    ...(item.caution === null ? [] : [['caution', item.caution] as const]),
    ...options.flatMap(({ text, why }, place) => [
      [`${name}.${place}`, text] as const,
      ...numbered(`${name}.${place}.why`, why),
    ]),
    ...(item.answer === 'number'
      ? [
          ...numbered('working', item.working),
          ...numbered(
            'mistakes',
            item.mistakes.map(({ why }) => why),
          ),
        ]
      : []),
  ];
}

function where(rule: LintRule, place: string, isWrong: boolean): LintFinding[] {
  return isWrong ? [{ rule, where: place }] : [];
}
