/** Results of a class in words, alike on the page, on paper and in files. */
import { NO_FAULT } from '../../../machines/job/index.ts';

import type { MessageCode } from '../../i18n/index.ts';
import { isMessage, message, say, sayWord, slugOf } from '../../i18n/index.ts';
import {
  CLASS_COLUMNS,
  type ClassColumnWords,
  type ClassResult,
  type ClassXapiWords,
  PRACTICE_PHRASES,
  type PracticeLine,
  type PracticePage,
  type PracticeWords,
  RESULT_KINDS_OF_CLASS,
  type ResultRemark,
} from '../../records/class/index.ts';
import { xapiWords } from '../paper/xapi-words.ts';

export interface ClassResultWords extends ClassXapiWords {
  readonly columns: ClassColumnWords;
  readonly practice: PracticeWords;
}

/** Needs the catalogues `class-result`, `quiz` and `quiz-paper`. */
export function classResultWords(): ClassResultWords {
  const exercises = RESULT_KINDS_OF_CLASS.map((kind) => [kind, say(`class-result.kind.${kind}`)]);
  const columns = CLASS_COLUMNS.map((column) => [column, say(`class-result.column.${column}`)]);
  return {
    ...xapiWords(),
    columns: Object.fromEntries(columns) as ClassColumnWords,
    exercises: Object.fromEntries(exercises) as ClassXapiWords['exercises'],
    classAbout: say('class-result.class-about'),
    practice: practiceWords(),
  };
}

export function practiceWords(): PracticeWords {
  return Object.fromEntries(
    PRACTICE_PHRASES.map((phrase) => [phrase, say(`class-result.record.${phrase}`)]),
  ) as PracticeWords;
}

export interface OfPractice {
  readonly classTitle: string;
  readonly printed: string;
  /** An instant as people of the place write it. */
  readonly whenOf: (iso: string) => string;
}

/** A page for each seat that handed something in, in the order of seats. */
export function practicePages(
  results: readonly ClassResult[],
  { classTitle, printed, whenOf }: OfPractice,
): readonly PracticePage[] {
  const seats = [...new Set(results.map(({ seat }) => seat))].sort((a, b) => a - b);
  return seats.map((seat) => {
    const own = results.filter((result) => result.seat === seat);
    const learner = own.at(-1)?.nickname ?? '';
    const lines = own.map((result) => practiceLine(result, whenOf));
    return { learner, seat, classTitle, printed, lines };
  });
}

/** Needs the catalogues `class-result` and `conduct`. */
export function practiceLine(result: ClassResult, whenOf: (iso: string) => string): PracticeLine {
  const { what, attempt, startedISO, handedInISO, parts, conduct, remarks, missed } = result;
  const { title } = what;
  return {
    exercise: attempt > 1 ? say('class-result.attempt', { title, attempt }) : title,
    when:
      handedInISO === null
        ? say('class-result.not-handed-in', { when: whenOf(startedISO) })
        : whenOf(handedInISO),
    outcome: outcomeWords(result.outcome),
    how: howWords(result),
    minutes:
      parts.minutes === null
        ? say('class-result.no-minutes')
        : say('class-result.minutes', { minutes: Math.ceil(parts.minutes) }),
    conduct: conduct.map(conductWords),
    remarks: [
      ...(missed.length === 0
        ? []
        : [say('class-result.not-named', { parts: missed.map(partWords).join(', ') })]),
      ...remarks.map(remarkWords),
    ],
  };
}

export function outcomeWords(outcome: number | null): string {
  if (outcome === null) return say('class-result.outcome.none');
  return say('class-result.outcome', { percent: Math.round(outcome * 100) });
}

/** How the cause was found, how many were right; empty where neither is known. */
export function howWords({ parts, quiz }: Pick<ClassResult, 'parts' | 'quiz'>): string {
  if (quiz !== null) {
    return say('class-result.right-of', { right: quiz.right, asked: quiz.asked });
  }
  if (parts.found === null) return '';
  const found = sayWord('class-result.found', parts.found);
  if (parts.pathScore === null) return found;
  const path = say('class-result.path', { percent: Math.round(parts.pathScore * 100) });
  return `${found}, ${path}`;
}

export function conductWords({
  rule,
  severity,
  what,
}: Pick<ClassResult['conduct'][number], 'rule' | 'severity' | 'what'>): string {
  // What an earlier version of the program has found may be said in words that are gone.
  const said = isMessage(what.code)
    ? message(what.code, what.params as Parameters<typeof message>[1])
    : rule;
  return say(`class-result.conduct.${severity}`, { what: said });
}

export function remarkWords({ code, where, detail, claimed, found }: ResultRemark): string {
  return say(`class-result.remark.${slugOf(code)}` as MessageCode, {
    where: where === '' ? say('class-result.remark.nothing') : where,
    detail,
    claimed: figure(claimed),
    found: figure(found),
  });
}

function figure(value: ResultRemark['claimed']): string {
  return typeof value === 'number' ? outcomeWords(value) : (value ?? '');
}

function partWords(part: string): string {
  return part === NO_FAULT ? say('class-result.no-fault') : part;
}
