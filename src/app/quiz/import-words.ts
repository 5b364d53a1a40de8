import { isMessage, say } from '../../i18n/index.ts';
import type { RecordIssue } from '../../records/answers/index.ts';
import type { AnswersImported, KeepTrouble } from './keep-answers.ts';

/** What came of an import, in sentences. */
export function importWords({ taken, issues, trouble }: AnswersImported): string {
  const [first] = issues;
  if (first !== undefined) return issueWords(first, issues.length - 1);
  if (trouble !== null) return troubleWords(trouble);
  if (taken === 0) return say('quiz.imported.none');
  return taken === 1 ? say('quiz.imported.one') : say('quiz.imported.many', { count: taken });
}

export function troubleWords(trouble: KeepTrouble): string {
  return say(`quiz.kept.${trouble.replaceAll(' ', '-') as TroubleSlug}`);
}

function issueWords({ trouble, where }: RecordIssue, others: number): string {
  if (trouble === 'not answers') return say('quiz.issue.not-answers');
  if (trouble === 'newer version') return say('quiz.issue.newer-version');
  const told = {
    where: where === '' ? say('quiz.issue.whole') : where,
    expected: expectedAt(where),
  };
  return others === 0
    ? say('quiz.issue.broken', told)
    : say('quiz.issue.broken-more', { ...told, count: others });
}

/** By the innermost name in the place that there is a sentence for. */
function expectedAt(where: string): string {
  const code = where
    .split('.')
    .reverse()
    .map((name) => `quiz.expected.${name}`)
    .find(isMessage);
  return code === undefined || !isMessage(code) ? say('quiz.expected.other') : say(code);
}

type TroubleSlug = 'newer-version' | 'no-room' | 'storage-refused';
