import { isMessage, say } from '../../i18n/index.ts';
import type { ResultsImported } from './keep-results.ts';
import type { ResultsIssue } from './result-record.ts';

/** What came of an import, in sentences. */
export function importWords({ taken, issues, trouble }: ResultsImported): string {
  const [first] = issues;
  if (first !== undefined) return issueWords(first, issues.length - 1);
  if (trouble !== null) return say(`learner.counted.${slug(trouble)}`);
  if (taken === 0) return say('learner.imported.none');
  return taken === 1 ? say('learner.imported.one') : say('learner.imported.many', { count: taken });
}

function issueWords({ trouble, where }: ResultsIssue, others: number): string {
  if (trouble !== 'broken') return say(`learner.issue.${slug(trouble)}`);
  const told = {
    where: where === '' ? say('learner.issue.whole') : where,
    expected: expectedAt(where),
  };
  return others === 0
    ? say('learner.issue.broken', told)
    : say('learner.issue.broken-more', { ...told, count: others });
}

/** By the innermost name in the place that there is a sentence for. */
function expectedAt(where: string): string {
  const codes = where
    .split('.')
    .reverse()
    .map((name) => `learner.expected.${name}`);
  const code = codes.find((each) => isMessage(each) && each !== 'learner.expected.results');
  if (code !== undefined && isMessage(code)) return say(code);
  return say(where === 'results' ? 'learner.expected.results' : 'learner.expected.other');
}

type Slug<T extends string> = T extends `${infer Head} ${infer Tail}` ? `${Head}-${Slug<Tail>}` : T;

function slug<T extends string>(word: T): Slug<T> {
  return word.replaceAll(' ', '-') as Slug<T>;
}
