/** Which package was asked for on the command line, checked against what there is. */
import type { ItemCard } from '../../quiz/index.ts';
import { composePaper, XAPI_VERSIONS, type XapiVersion } from '../../records/index.ts';
import {
  PACKAGE_FORMS,
  type Packaged,
  type PackageForm,
  packagedOf,
} from '../../records/lms/index.ts';
import { type Library, nearest, phrase } from '../../scenario/index.ts';
import { quizPackageWords } from '../../wording/index.ts';
import { type Arguments, type CommandSpec, inQuotes, numberWithin, perhaps } from '../arguments.ts';
import { type Asked, CHOICE_OPTIONS, choiceFrom, unknownChoice } from '../paper/wanted.ts';

export const COMMAND = 'package';
const QUIZ = 'quiz';
const MOST_TITLE = 200;
const NO_MASTERY = 'none';
const DEFAULTS = { form: 'scorm12', mastery: '70', xapi: '1.0.3' } as const;

export const SPEC: CommandSpec = {
  command: COMMAND,
  options: {
    '--to': { value: phrase('usage.expect.file') },
    '--form': { value: phrase('expected.one-of', { words: PACKAGE_FORMS }) },
    '--mastery': { value: phrase('usage.expect.mastery') },
    '--title': { value: phrase('usage.expect.title', { max: MOST_TITLE }) },
    '--xapi': { value: phrase('expected.one-of', { words: XAPI_VERSIONS }) },
    '--exam': {},
    ...CHOICE_OPTIONS,
  },
  least: 1,
  most: 1,
  expected: phrase('usage.expect.package'),
};

export interface WantedPackage {
  readonly packaged: Packaged;
  /** What it is, for the learning system's own pages. */
  readonly about: string;
  readonly file: string;
}

export function wantedPackage(
  { positionals, options }: Arguments,
  library: Library,
  cards: () => readonly ItemCard[] | null,
): Asked<WantedPackage> {
  const file = options.get('--to');
  if (file === undefined) return mistake('usage.package-needs-file');
  const form = options.get('--form') ?? DEFAULTS.form;
  if (!isForm(form)) return unknownChoice(COMMAND, '--form', form, PACKAGE_FORMS);
  const xapi = options.get('--xapi') ?? DEFAULTS.xapi;
  if (!isVersion(xapi)) return unknownChoice(COMMAND, '--xapi', xapi, XAPI_VERSIONS);
  const mastery = masteryFrom(options.get('--mastery') ?? DEFAULTS.mastery);
  if (!mastery.ok) return mistakeOf('--mastery', options.get('--mastery') ?? '');
  const [name = ''] = positionals;
  const exercise = name === QUIZ ? quizFrom(options, library, cards) : exerciseOf(library, name);
  if (!exercise.ok) return exercise;
  const title = options.get('--title') ?? exercise.value.title;
  if (title.trim() === '' || title.length > MOST_TITLE) {
    return mistake('usage.bad-value', {
      option: '--title',
      found: inQuotes(title),
      expected: phrase('usage.expect.title', { max: MOST_TITLE }),
    });
  }
  const wish = { form, xapi, title, mastery: mastery.value, exercise: exercise.value.exercise };
  return { ok: true, value: { packaged: packagedOf(wish), about: exercise.value.about, file } };
}

interface Named {
  readonly exercise: Packaged['exercise'];
  readonly title: string;
  readonly about: string;
}

function exerciseOf(library: Library, name: string): Asked<Named> {
  const { jobs, drills, lessons } = library;
  const all: readonly (Named & { readonly id: string })[] = [
    ...jobs.map((job) => named('job', job, job.card.complaint)),
    ...drills.map((drill) => named('drill', drill, drill.question)),
    ...lessons.map((lesson) => named('lesson', lesson, lesson.intro)),
  ];
  const found = all.find(({ id }) => id === name);
  if (found !== undefined) return { ok: true, value: found };
  return mistake('usage.unknown-exercise', {
    found: inQuotes(name),
    expected: phrase('usage.expect.package'),
    perhaps: perhaps(nearest(name, [QUIZ, ...all.map(({ id }) => id)])),
  });
}

function named(
  kind: 'job' | 'drill' | 'lesson',
  { id, title }: { readonly id: string; readonly title: string },
  about: string,
) {
  return { id, exercise: { kind, id }, title, about };
}

function quizFrom(
  options: ReadonlyMap<string, string>,
  library: Library,
  cards: () => readonly ItemCard[] | null,
): Asked<Named> {
  const have = cards();
  if (have === null) return mistake('usage.no-bank');
  const choice = choiceFrom(COMMAND, options, library, have);
  if (!choice.ok) return choice;
  const items = composePaper(choice.value, have);
  if (items.length === 0) return mistake('usage.no-questions');
  const mode = options.has('--exam') ? 'exam' : 'standard';
  const words = quizPackageWords(choice.value.number, items.length);
  return { ok: true, value: { exercise: { kind: 'quiz', mode, items: [...items] }, ...words } };
}

/** A share, or null where only having done it counts. */
function masteryFrom(text: string): { ok: true; value: number | null } | { ok: false } {
  if (text === NO_MASTERY) return { ok: true, value: null };
  const percent = numberWithin(text, 1, 100);
  return percent === null ? { ok: false } : { ok: true, value: Math.round(percent) / 100 };
}

function mistakeOf(option: string, found: string) {
  const expected = phrase('usage.expect.mastery');
  return mistake('usage.bad-value', { option, found: inQuotes(found), expected });
}

function mistake(code: string, params: Parameters<typeof phrase>[1] = {}) {
  return { ok: false, mistake: phrase(code, { command: COMMAND, ...params }) } as const;
}

function isForm(text: string): text is PackageForm {
  return (PACKAGE_FORMS as readonly string[]).includes(text);
}

function isVersion(text: string): text is XapiVersion {
  return (XAPI_VERSIONS as readonly string[]).includes(text);
}
