import { NOTHING_TO_ADD, type Phrase, type PhraseValue, phrase } from './phrase.ts';
import { type Place, parentOf } from './place.ts';

export const ISSUE_CODES = [
  'syntax',
  'not-read',
  'too-large',
  'too-deep',
  'too-many-nodes',
  'byte-order-mark',
  'control-character',
  'directive',
  'anchor',
  'alias',
  'tag',
  'bad-key',
  'reserved-key',
  'duplicate-key',
  'empty-file',
  'unknown-key',
  'decimal-comma',
  'missing-key',
  'wrong-type',
  'unknown-choice',
  'out-of-range',
  'wrong-length',
  'bad-format',
  'exclusive-keys',
  'duplicate-id',
  'unknown-name',
  'not-sorted',
  'not-applicable',
  'not-allowed',
  'inconsistent',
  'lint',
  'not-proved',
] as const;
export type IssueCode = (typeof ISSUE_CODES)[number];

/** One thing wrong with a file: where, what was found, what was expected, what was perhaps meant. */
export interface Issue extends Place {
  readonly file: string;
  readonly path: string;
  readonly code: IssueCode;
  readonly found: Phrase;
  readonly expected: Phrase;
  readonly suggestion: string | null;
}

/** Their sentences name the key itself, so the path that leads them is that of the group. */
const ABOUT_A_KEY: ReadonlySet<IssueCode> = new Set([
  'unknown-key',
  'decimal-comma',
  'duplicate-key',
  'reserved-key',
]);

export type Checked<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** The whole issue but its position, as one phrase for the catalogue. */
export function phraseOfIssue(issue: Issue): Phrase {
  const path = ABOUT_A_KEY.has(issue.code) ? parentOf(issue.path) : issue.path;
  const params: Record<string, PhraseValue> = {
    where: path === '' ? NOTHING_TO_ADD : phrase('issue.where', { path }),
    found: issue.found,
    expected: issue.expected,
    perhaps:
      issue.suggestion === null
        ? NOTHING_TO_ADD
        : phrase('issue.perhaps', { word: issue.suggestion }),
  };
  return phrase(`issue.${issue.code}`, params);
}

export function inOrder(issues: readonly Issue[]): Issue[] {
  return [...issues].sort(
    (a, b) =>
      (a.file < b.file ? -1 : a.file > b.file ? 1 : 0) || a.line - b.line || a.column - b.column,
  );
}
