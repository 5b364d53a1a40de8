import { sayMessage } from '../i18n/index.ts';
import { type Issue, phraseOfIssue } from '../scenario/index.ts';

/** One line an issue, in the form that editors and terminals can jump to. */
export function issueLines(issues: readonly Issue[]): string {
  return issues
    .map(
      (issue) => `${issue.file}:${issue.line}:${issue.column}: ${sayMessage(phraseOfIssue(issue))}`,
    )
    .join('\n');
}
