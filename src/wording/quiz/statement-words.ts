import { message, say, sayWord } from '../../i18n/index.ts';
import type { UnitSystem } from '../../quantity/index.ts';
import type { Statement, Term } from '../../quiz/index.ts';
import { answerWords, type Names } from '../answer-words.ts';
import { checkWords, momentWords, partWords, pointName, toldWords } from '../check-words.ts';
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
  return lowerFirst(thingWords(term, names, units));
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
      // What eyes found is a sentence of its own; here it stands within one.
      return toldWords(names, term.told, units).replace(/\.$/, '');
    case 'said':
      return answerWords(names, term.told, units).replace(/\.$/, '');
    case 'amount':
      return quantityText(term.value, term.of, units);
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
