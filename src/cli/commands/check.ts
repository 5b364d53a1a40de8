import { sayMessage } from '../../i18n/index.ts';
import {
  buildLibrary,
  EMPTY_LIBRARY,
  type Issue,
  kindOfText,
  type Library,
  type LibraryFile,
  phrase,
} from '../../scenario/index.ts';
import { type CommandSpec, parseArguments } from '../arguments.ts';
import { atlasFolder } from '../atlas/files.ts';
import { issueLines } from '../issue-lines.ts';
import { readLibrary } from '../library.ts';
import { type Outcome, refuse, succeed } from '../outcome.ts';
import { checkWritten } from '../quiz/check-written.ts';
import { readTextFile } from '../read-text-file.ts';

const SPEC: CommandSpec = {
  command: 'check',
  options: {},
  least: 1,
  most: Number.POSITIVE_INFINITY,
  expected: phrase('usage.expect.check'),
};

/** Every mistake in the files, which are checked with each other and with the shipped ones. */
export function check(words: readonly string[], root: string): Outcome {
  const parsed = parseArguments(words, SPEC);
  if (!parsed.ok) return refuse(sayMessage(parsed.mistake));
  const files: LibraryFile[] = [];
  const issues: Issue[] = [];
  for (const path of new Set(parsed.value.positionals)) {
    const read = readTextFile(path);
    if (read.ok) files.push(read.value);
    else issues.push(...read.issues);
  }
  const shipped = readLibrary(root);
  const built = buildLibrary(files, { base: shipped.ok ? shipped.value : EMPTY_LIBRARY });
  if (built.ok) issues.push(...writtenIssues(files, built.value, atlasFolder(root)));
  else issues.push(...built.issues);
  if (issues.length > 0) return refuse(issueLines(issues));
  return succeed(files.map(inOrderLine).join('\n'));
}

/** What is asked in words is linted, and proved where it says what is wrong. */
function writtenIssues(
  files: readonly LibraryFile[],
  library: Library,
  atlases: string,
): readonly Issue[] {
  return files.flatMap((file) => {
    if (kindOfText(file.path, file.text) !== 'quiz') return [];
    const only = buildLibrary([file], { base: library });
    const [quiz] = only.ok ? only.value.quizzes.slice(-1) : [];
    return quiz === undefined ? [] : checkWritten(file, quiz, library, atlases);
  });
}

function inOrderLine({ path, text }: LibraryFile): string {
  const kind = phrase(`kind.${kindOfText(path, text) ?? 'scenario'}`);
  return sayMessage(phrase('check.in-order', { file: path, kind }));
}
