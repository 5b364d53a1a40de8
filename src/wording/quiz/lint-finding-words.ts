import { type MessageCode, say, slugOf } from '../../i18n/index.ts';
import type { LintFinding } from '../../quiz/index.ts';

/** What is wrong and where, for whoever wrote the item. */
export function lintFindingWords({ rule, where }: LintFinding): string {
  return say(`quiz.lint.${slugOf(rule)}` as MessageCode, { where });
}
