import { type CsvCell, csvText } from '../csv/csv-text.ts';
import type { RecordFile } from '../file.ts';
import type { ClassResult } from './class-result.ts';
import { inOrder } from './summary.ts';

export const CLASS_COLUMNS = [
  'seat',
  'nickname',
  'kind',
  'exercise',
  'title',
  'plant',
  'attempt',
  'started',
  'handed-in',
  /** 1 or 0, so that a column can be summed. */
  'finished',
  /** 0 to 1. */
  'outcome',
  'found',
  'path',
  'minutes',
  'redundant',
  'premature',
  'unsafe',
  'careless',
  /** Rules, each with how it was judged. */
  'conduct',
  'claims-right',
  'claims-wrong',
  'missed',
  'quiz-right',
  'quiz-asked',
  /** 1 where something was not believed. */
  'refused',
  'remarks',
] as const;
export type ClassColumn = (typeof CLASS_COLUMNS)[number];
export type ClassColumnWords = Readonly<Record<ClassColumn, string>>;

/** Without it many a spreadsheet takes UTF-8 for something else. */
const BYTE_ORDER_MARK = '\ufeff';

/** A heading, then a line for each attempt, seat by seat; RFC 4180. */
export function classToCsv(results: readonly ClassResult[], words: ClassColumnWords): string {
  const lines = [...results].sort(inOrder).map((result) => {
    const cells = cellsOf(result);
    return CLASS_COLUMNS.map((column) => cells[column]);
  });
  return csvText([CLASS_COLUMNS.map((column) => words[column]), ...lines]);
}

export function classCsv(results: readonly ClassResult[], words: ClassColumnWords): RecordFile {
  return {
    name: 'flamewright-class.csv',
    type: 'text/csv;charset=utf-8',
    data: `${BYTE_ORDER_MARK}${classToCsv(results, words)}`,
  };
}

function cellsOf(result: ClassResult): Record<ClassColumn, CsvCell> {
  const { what, parts, conduct, claims, quiz } = result;
  const countOf = (severity: string) => conduct.filter((one) => one.severity === severity).length;
  return {
    seat: result.seat,
    nickname: result.nickname,
    kind: what.kind,
    exercise: what.id,
    title: what.title,
    plant: what.plant,
    attempt: result.attempt,
    started: result.startedISO,
    'handed-in': result.handedInISO,
    finished: result.finished ? 1 : 0,
    outcome: result.outcome,
    found: parts.found,
    path: parts.pathScore,
    minutes: parts.minutes,
    redundant: parts.redundant,
    premature: parts.premature,
    unsafe: countOf('unsafe'),
    careless: countOf('careless'),
    conduct: listed(conduct.map(({ rule, severity }) => `${rule} ${severity}`)),
    'claims-right': listed(claims.filter(({ right }) => right).map(({ part }) => part)),
    'claims-wrong': listed(claims.filter(({ right }) => !right).map(({ part }) => part)),
    missed: listed(result.missed),
    'quiz-right': quiz?.right ?? null,
    'quiz-asked': quiz?.asked ?? null,
    refused: result.refused ? 1 : 0,
    remarks: listed(result.remarks.map(remarkText)),
  };
}

function remarkText({ code, where, claimed, found }: ClassResult['remarks'][number]): string {
  const place = where === '' ? '' : ` (${where})`;
  const figures = claimed === null && found === null ? '' : `: ${claimed ?? '-'} / ${found ?? '-'}`;
  return `${code}${place}${figures}`;
}

function listed(words: readonly string[]): string | null {
  return words.length === 0 ? null : words.join('; ');
}
