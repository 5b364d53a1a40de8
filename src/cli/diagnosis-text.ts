import { INPUTS } from '../../machines/burner/index.ts';
import {
  type CaseDiagnosed,
  type CauseFound,
  type PathStep,
  partsOfCheck,
} from '../diagnosis/index.ts';
import { isMessage, message } from '../i18n/index.ts';
import type { ExerciseCase } from './exercise-case.ts';
import { alignColumns } from './table.ts';

/** More that a start does not show than this is counted, not named. */
const MOST_NAMED = 8;

/** For an author: the way, what stays, and what would tell it. */
export function diagnosisText(
  { id, own, comesAndGoes }: Pick<ExerciseCase, 'id' | 'own' | 'comesAndGoes'>,
  { difficulty, minutes, rounds }: CaseDiagnosed,
): string {
  return [
    message('diagnose.heading', { id, difficulty, minutes: minutes.toFixed(0) }),
    ...(comesAndGoes ? [message('diagnose.comes-and-goes')] : []),
    ...rounds.flatMap((round, i) => ['', ...roundLines(round, i, own.length)]),
  ].join('\n');
}

function roundLines(round: CauseFound, place: number, faults: number): readonly string[] {
  const { path, found, inseparable, wouldSeparate } = round;
  const cause = causeNamed(round.cause);
  const rest = inseparable.map(causeNamed);
  const nothingShows = round.cause !== null && inseparable.includes(null);
  const heading = [
    ...(faults > 1 ? [message('diagnose.round', { number: place + 1, of: faults, cause })] : []),
  ];
  if (nothingShows) {
    return [...heading, message('diagnose.shows-nothing', { cause, count: rest.length })];
  }
  const steps = path.map((step, i) => [
    `${i + 1}`,
    nameOf(step.check),
    step.moment,
    message('diagnose.minutes', { minutes: step.minutes.toFixed(1) }),
    message('diagnose.bits', { bits: step.bits.toFixed(2) }),
    message('diagnose.share', { percent: Math.round(100 * step.share) }),
    toldInWords(step.told),
  ]);
  const known = place === 0 ? 'diagnose.path' : 'diagnose.path-after-repair';
  return [
    ...heading,
    message(path.length === 0 && found ? 'diagnose.at-once' : known),
    ...(steps.length === 0 ? [] : [alignColumns(steps)]),
    message(found ? 'diagnose.found' : 'diagnose.not-found'),
    rest.length === 0
      ? message('diagnose.all-told')
      : rest.length > MOST_NAMED
        ? message('diagnose.not-told-many', { count: rest.length })
        : message('diagnose.not-told', { faults: rest.join(', ') }),
    ...separation(rest.length, wouldSeparate),
  ];
}

function separation(rest: number, would: CauseFound['wouldSeparate']): string[] {
  if (rest === 0) return [];
  return would === null
    ? [message('diagnose.no-check-separates')]
    : [message('diagnose.would-separate', { check: nameOf(would.check), moment: would.moment })];
}

/** What eyes found is said in their words; beside these the numbers that go with them say nothing more. */
function toldInWords(told: PathStep['told']): string {
  if (told.length === 0) return message('diagnose.as-sound');
  const words = told.filter(({ aspect }) => aspect === 'words');
  const some = words.length > 0 ? words.slice(0, 1) : told;
  return some
    .map(({ aspect, word }) =>
      aspect === 'words'
        ? word
            .split('+')
            .map((code) => (isMessage(code) ? message(code) : code))
            .join(' ')
        : `${aspectNamed(aspect)}: ${word}`,
    )
    .join('; ');
}

/** Inputs of the controller are counted in the atlas; a check that tells one thing needs no name for it. */
function aspectNamed(aspect: string): string {
  const [, bit] = /^input (\d+)$/.exec(aspect) ?? [];
  if (bit !== undefined) return INPUTS[Number(bit)] ?? aspect;
  return aspect === 'value' ? message('diagnose.reading') : aspect;
}

function causeNamed(fault: string | null): string {
  return fault ?? message('diagnose.nothing-wrong');
}

function nameOf(check: string): string {
  const { what, place, other } = partsOfCheck(check);
  return [what, place, other].filter((part) => part !== '').join(', ');
}
