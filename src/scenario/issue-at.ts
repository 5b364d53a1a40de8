import type { Issue, IssueCode } from './issue.ts';
import type { Phrase } from './phrase.ts';
import { type Path, pathText } from './place.ts';
import type { Source } from './read-source.ts';

/** An issue that is known only once a file's parts, or several files, are seen together. */
export function issueAt(
  source: Source,
  path: Path,
  code: IssueCode,
  expected: Phrase,
  suggestion: string | null = null,
): Issue {
  return {
    file: source.file,
    ...source.place(path),
    path: pathText(path),
    code,
    found: source.found(path),
    expected,
    suggestion,
  };
}
