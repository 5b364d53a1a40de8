import { readFileSync, statSync } from 'node:fs';
import {
  type Checked,
  type Issue,
  type LibraryFile,
  MAX_FILE_CHARACTERS,
  NOTHING_TO_ADD,
  phrase,
} from '../scenario/index.ts';

/** UTF-8 takes at most three bytes for a UTF-16 unit. */
const MOST_BYTES = 3 * MAX_FILE_CHARACTERS;

/** The text of a file, or one issue saying why it could not be read. */
export function readTextFile(path: string): Checked<LibraryFile> {
  const refused = (why: string): Checked<LibraryFile> => ({
    ok: false,
    issues: [notRead(path, why)],
  });
  try {
    const status = statSync(path);
    if (status.isDirectory()) return refused('found.file-folder');
    if (!status.isFile() && !status.isFIFO()) return refused('found.file-refused');
    const { size } = status;
    // Far too large to be worth reading: the length alone is told, as for any file too large.
    if (size > MOST_BYTES) return { ok: false, issues: [tooLarge(path, size)] };
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(
      readFileSync(path),
    );
    return { ok: true, value: { path, text } };
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === 'ENOENT' || code === 'ENOTDIR') return refused('found.file-missing');
    return refused(
      code === 'ERR_ENCODING_INVALID_ENCODED_DATA' ? 'found.file-not-text' : 'found.file-refused',
    );
  }
}

function notRead(file: string, why: string): Issue {
  const found = phrase(why);
  return {
    file,
    line: 1,
    column: 1,
    path: '',
    code: 'not-read',
    found,
    expected: NOTHING_TO_ADD,
    suggestion: null,
  };
}

function tooLarge(file: string, count: number): Issue {
  const found = phrase('found.characters', { count });
  const expected = phrase('expected.characters', { max: MAX_FILE_CHARACTERS });
  return {
    file,
    line: 1,
    column: 1,
    path: '',
    code: 'too-large',
    found,
    expected,
    suggestion: null,
  };
}
