import type { Issue, IssueCode } from './issue.ts';
import { issueAt } from './issue-at.ts';
import type { LibraryFile } from './library.ts';
import type { Phrase } from './phrase.ts';
import type { Path } from './place.ts';
import { readSource } from './read-source.ts';

/** An issue that only whoever ran what a file says could find; of a file that can be read. */
export function issueInFile(
  { path: name, text }: LibraryFile,
  path: Path,
  code: IssueCode,
  expected: Phrase,
): Issue[] {
  const read = readSource(text, name);
  return read.ok ? [issueAt(read.value, path, code, expected)] : [];
}
