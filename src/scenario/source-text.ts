import { MAX_FILE_CHARACTERS } from './bounds.ts';
import type { IssueCode } from './issue.ts';
import { NOTHING_TO_ADD, type Phrase, phrase } from './phrase.ts';
import { type Place, placesIn } from './place.ts';

export interface Unreadable {
  readonly code: IssueCode;
  readonly place: Place;
  readonly found: Phrase;
  readonly expected: Phrase;
}

/** Why a text is not worth parsing, or null. */
export function unreadableText(text: string): Unreadable | null {
  const start = { line: 1, column: 1 };
  if (text.length > MAX_FILE_CHARACTERS) {
    return {
      code: 'too-large',
      place: start,
      found: phrase('found.characters', { count: text.length }),
      expected: phrase('expected.characters', { max: MAX_FILE_CHARACTERS }),
    };
  }
  const none = NOTHING_TO_ADD;
  if (text.startsWith('\uFEFF')) {
    return { code: 'byte-order-mark', place: start, found: none, expected: none };
  }
  const control =
    // biome-ignore lint/suspicious/noControlCharactersInRegex: finding them is the point
    /[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\uFEFF\uFFFD\u2028\u2029]|\r(?!\n)|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/.exec(
      text,
    );
  if (control === null) return null;
  const hex = (control[0].codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
  return {
    code: 'control-character',
    place: placesIn(text)(control.index),
    found: phrase('found.character', { code: `U+${hex}` }),
    expected: none,
  };
}
