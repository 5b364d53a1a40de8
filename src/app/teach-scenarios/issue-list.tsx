import { say } from '../../i18n/index.ts';
import type { SaidIssue } from './said-issue.ts';

interface Props {
  /** Null while the text is being looked at for the first time. */
  readonly issues: readonly SaidIssue[] | null;
  readonly isOld: boolean;
  readonly trouble: string | null;
  readonly onGoTo: (issue: SaidIssue) => void;
}

/** What is wrong, each a way to its place. */
export function IssueList({ issues, isOld, trouble, onGoTo }: Props) {
  return (
    <section className="author-issues" aria-labelledby="author-issues" data-old={isOld}>
      <h2 id="author-issues">
        <span role="status">
          {trouble !== null
            ? say('author.issues.trouble', { detail: trouble })
            : issues === null
              ? say('author.issues.looking')
              : issues.length === 0
                ? say('author.issues.none')
                : issues.length === 1
                  ? say('author.issues.one')
                  : say('author.issues.some', { count: issues.length })}
        </span>
      </h2>
      {issues === null || issues.length === 0 ? null : (
        <ol>
          {issues.map((issue) => (
            <li key={`${issue.line} ${issue.column} ${issue.says}`}>
              <button type="button" className="author-issue" onClick={() => onGoTo(issue)}>
                <span className="author-issue-line">
                  {say('author.issues.line', { line: issue.line })}
                </span>{' '}
                {issue.says}
              </button>
            </li>
          ))}
        </ol>
      )}
    </section>
  );
}
