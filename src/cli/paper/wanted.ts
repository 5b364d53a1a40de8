/** What was asked for on the command line, checked against what there is. */
import { ITEM_KINDS, type ItemCard } from '../../quiz/index.ts';
import type { PaperChoice } from '../../records/index.ts';
import { type Library, nearest, type Phrase, phrase } from '../../scenario/index.ts';
import { type CommandSpec, inQuotes, numberWithin, perhaps } from '../arguments.ts';
import { isForm, PAPER_FORMS, type PaperForm } from './forms.ts';

export const COMMAND = 'paper';
const MOST_NUMBER = 9999;
const MOST_QUESTIONS = 50;
export const CHOICE_OPTIONS = {
  '--number': { value: phrase('usage.expect.whole', { min: 1, max: MOST_NUMBER }) },
  '--count': { value: phrase('usage.expect.whole', { min: 1, max: MOST_QUESTIONS }) },
  '--plant': { value: phrase('usage.expect.plants') },
  '--skill': { value: phrase('usage.expect.skills') },
  '--kind': { value: phrase('usage.expect.kinds') },
} as const satisfies CommandSpec['options'];
export const SPEC: CommandSpec = {
  command: COMMAND,
  options: {
    ...CHOICE_OPTIONS,
    '--as': { value: phrase('expected.one-of', { words: PAPER_FORMS }) },
    '--to': { value: phrase('usage.expect.file') },
  },
  least: 0,
  most: 0,
  expected: phrase('usage.expect.nothing'),
};
const DEFAULTS = { number: '1', count: '20', form: 'text' } as const;

export interface Wanted {
  readonly choice: PaperChoice;
  readonly form: PaperForm;
  /** Null: to the standard output. */
  readonly file: string | null;
}
export type Asked<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly mistake: Phrase };

export function wantedFrom(
  options: ReadonlyMap<string, string>,
  library: Library,
  cards: readonly ItemCard[],
): Asked<Wanted> {
  const choice = choiceFrom(COMMAND, options, library, cards);
  if (!choice.ok) return choice;
  const form = options.get('--as') ?? DEFAULTS.form;
  if (!isForm(form)) return unknownChoice(COMMAND, '--as', form, PAPER_FORMS);
  const file = options.get('--to') ?? null;
  if (form === 'qti' && file === null) {
    return { ok: false, mistake: phrase('usage.paper-needs-file', { command: COMMAND }) };
  }
  return { ok: true, value: { choice: choice.value, form, file } };
}

/** Which questions, and which of the many sets of them; the same for every command that draws them. */
export function choiceFrom(
  command: string,
  options: ReadonlyMap<string, string>,
  library: Library,
  cards: readonly ItemCard[],
): Asked<PaperChoice> {
  const number = whole(command, options, '--number', DEFAULTS.number, MOST_NUMBER);
  if (!number.ok) return number;
  const count = whole(command, options, '--count', DEFAULTS.count, MOST_QUESTIONS);
  if (!count.ok) return count;
  const plants = someOf(
    command,
    options,
    '--plant',
    library.plants.map(({ id }) => id),
  );
  if (!plants.ok) return plants;
  const skills = someOf(
    command,
    options,
    '--skill',
    [...new Set(cards.flatMap((card) => card.skills))].sort(),
  );
  if (!skills.ok) return skills;
  const kinds = someOf(command, options, '--kind', ITEM_KINDS);
  if (!kinds.ok) return kinds;
  const choice = {
    number: number.value,
    count: count.value,
    plants: plants.value,
    skills: skills.value,
    kinds: kinds.value,
  };
  return { ok: true, value: choice };
}

function whole(
  command: string,
  options: ReadonlyMap<string, string>,
  option: string,
  fallback: string,
  max: number,
): Asked<number> {
  const text = options.get(option) ?? fallback;
  const value = numberWithin(text, 1, max);
  if (value !== null && Number.isInteger(value)) return { ok: true, value };
  const expected = phrase('usage.expect.whole', { min: 1, max });
  const params = { command, option, found: inQuotes(text), expected };
  return { ok: false, mistake: phrase('usage.bad-value', params) };
}

/** Names with commas between them; none where the option is not given. */
function someOf<T extends string>(
  command: string,
  options: ReadonlyMap<string, string>,
  option: string,
  all: readonly T[],
): Asked<readonly T[]> {
  const text = options.get(option);
  if (text === undefined) return { ok: true, value: [] };
  const chosen: T[] = [];
  for (const name of text.split(',').map((one) => one.trim())) {
    const known = all.find((one) => one === name);
    if (known === undefined) return unknownChoice(command, option, name, all);
    chosen.push(known);
  }
  return { ok: true, value: chosen };
}

/** A word that is none of those an option may have. */
export function unknownChoice(
  command: string,
  option: string,
  found: string,
  all: readonly string[],
) {
  const expected = phrase('expected.one-of', { words: all });
  const mend = perhaps(nearest(found, all));
  const params = { command, option, found: inQuotes(found), expected, perhaps: mend };
  return { ok: false, mistake: phrase('usage.unknown-choice', params) } as const;
}
