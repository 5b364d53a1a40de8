import type { Issue } from './issue.ts';
import { issueAt } from './issue-at.ts';
import { phrase } from './phrase.ts';
import type { Path } from './place.ts';
import type { Source } from './read-source.ts';

/** One right answer that is there, and a reason for each. */
export function checkChoice(
  { right, why }: { readonly right?: number | undefined; readonly why?: string[] | undefined },
  options: readonly string[],
  source: Source,
  path: Path,
): Issue[] {
  const issues: Issue[] = [];
  if (right === undefined || right >= options.length) {
    const expected = phrase('expected.right-option', { last: options.length - 1 });
    const code = right === undefined ? 'missing-key' : 'out-of-range';
    issues.push(issueAt(source, [...path, 'right'], code, expected));
  }
  if (why === undefined || why.length !== options.length) {
    const expected = phrase('expected.why-each', { count: options.length });
    const code = why === undefined ? 'missing-key' : 'wrong-length';
    issues.push(issueAt(source, [...path, 'why'], code, expected));
  }
  return issues;
}
