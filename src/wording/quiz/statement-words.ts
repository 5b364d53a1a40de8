import { message, say, sayWord } from '../../i18n/index.ts';
import type { UnitSystem } from '../../quantity/index.ts';
import type { Statement, Term } from '../../quiz/index.ts';
import { answerWords, type Names } from '../answer-words.ts';
import {
  checkWords,
  momentWords,
  partWords,
  pointName,
  readMoment,
  sourceWords,
} from '../check-words.ts';
import { lowerFirst, stepWords } from '../plain-words.ts';
import { quantityText } from '../quantity-text.ts';

type Thing = Exclude<Term, string | number>;

const MINUS = '\u2212';

/** A statement as it stands by itself: its first letter is a capital. */
export function statementWords(
  statement: Statement,
  names: Names,
  units: UnitSystem = 'SI',
): string {
  return upperFirst(within(statement, names, units));
}

/** Several things in a row, as a sentence has them: "a, b and c". */
export function listWords(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  if (words.length < 2) return last;
  const head = words.slice(0, -1).join(say('quiz.list.between'));
  return `${head}${say('quiz.list.before-last')}${last}`;
}

/** One thing that was read, as one sentence: what eyes found in several stands in a row. */
export function readingWords(
  names: Names,
  told: Extract<Thing, { is: 'reading' }>['told'],
  units: UnitSystem = 'SI',
): string {
  const what = sourceWords(names, told.check);
  const said = asOneSentence(answerWords(names, told, units));
  const moment = readMoment(told);
  return moment === ''
    ? say('told.all', { what, said })
    : say('told.all-at', { what, moment, said });
}

function asOneSentence(text: string): string {
  return text.replace(/\.$/, '').split('. ').map(lowerFirst).join('; ');
}

function within(statement: Statement, names: Names, units: UnitSystem): string {
  const parts: Record<string, string> = {};
  for (const [name, term] of Object.entries(statement.with ?? {})) {
    parts[name] = termWords(term, names, units);
  }
  return message(statement.code, parts);
}

/** As it stands within a sentence. */
function termWords(term: Term, names: Names, units: UnitSystem): string {
  if (typeof term === 'string') return term;
  if (typeof term === 'number') return String(term).replace('-', MINUS);
  const words = thingWords(term, names, units);
  // It is quoted, or is an option by itself.
  return term.is === 'reading' ? words : lowerFirst(words);
}

function thingWords(term: Thing, names: Names, units: UnitSystem): string {
  switch (term.is) {
    case 'cause':
      return term.fault ?? say('quiz.nothing-wrong');
    case 'part':
      return partWords(term.part);
    case 'check':
      return checkAt(names, term.check, term.moment);
    case 'reading':
      return readingWords(names, term.told, units);
    case 'said':
      return asOneSentence(answerWords(names, term.told, units));
    case 'amount':
      return amountWords(term, units);
    case 'step':
      return stepWords(term.step);
    case 'word':
      return sayWord(term.of, term.word, term.suffix);
    case 'place':
      return pointName(names, term.place, term.tool);
    case 'statement':
      return within(term.statement, names, units);
    case 'list':
      return listWords(term.of.map((one) => termWords(one, names, units)));
  }
}

/** A limit in whole seconds has no digits behind the point. */
function amountWords({ value, of }: Extract<Thing, { is: 'amount' }>, units: UnitSystem): string {
  const words = quantityText(value, of, units);
  return of === 'time' && Number.isInteger(value) ? words.replace(/\.0(?= )/, '') : words;
}

/** What stands the same all the time needs no moment. */
function checkAt(names: Names, check: string, moment: string): string {
  const what = checkWords(names, check);
  const isHistory = check.startsWith('history');
  return moment === '' || moment === 'standing' || isHistory
    ? what
    : say('quiz.check-at', { what, moment: momentWords(moment) });
}

function upperFirst(text: string): string {
  return /^[a-z]/.test(text) ? `${text.charAt(0).toUpperCase()}${text.slice(1)}` : text;
}
