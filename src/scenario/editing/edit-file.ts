import { MAX_FILE_CHARACTERS } from '../bounds.ts';
import { readSource } from '../read-source.ts';
import { editInPlace } from './edit-in-place.ts';
import { editPlain } from './edit-plain.ts';
import type { FileEdit, KeyOrder, Plain } from './file-edit.ts';
import { parseFile } from './nodes-in-text.ts';

export interface EditedFile {
  readonly text: string;
  /** Whether all that was not changed stands as it stood; else its layout may be another, comments kept. */
  readonly inPlace: boolean;
}

const NO_ORDER: KeyOrder = () => [];
const LINE = 100;

/**
 * Changes one thing that a file says, and leaves its other lines, comments and order alone.
 *
 * @returns null where the text cannot be read
 */
export function editFile(
  text: string,
  edit: FileEdit,
  order: KeyOrder = NO_ORDER,
): EditedFile | null {
  const before = text === '' || text.endsWith('\n') ? text : `${text}\n`;
  const data = dataIn(before);
  if (data === undefined) return null;
  const wanted = editPlain(data, edit);
  // What says the same already is left to the letter.
  if (isSame(data, wanted)) return { text, inPlace: true };
  const placed = editInPlace(before, parseFile(before).contents, edit, order);
  if (placed !== null && says(placed, wanted)) return { text: placed, inPlace: true };
  const whole = writeAnew(before, edit, wanted);
  return { text: whole, inPlace: false };
}

/** What a text says, as plain data; undefined where it cannot be read. An empty one says nothing. */
export function dataIn(text: string): Plain | undefined {
  if (
    text.length <= MAX_FILE_CHARACTERS &&
    text.split('\n').every((line) => /^\s*(?:#|$)/.test(line))
  )
    return {};
  const read = readSource(text, '');
  return read.ok ? (read.value.data as Plain) : undefined;
}

/** By way of the parsed document: for what is written in a way that no hand would write it. */
function writeAnew(text: string, edit: FileEdit, wanted: Plain): string {
  const document = parseFile(text);
  const { path } = edit;
  if (edit.do === 'set') document.setIn(path, document.createNode(edit.value));
  else if (edit.do === 'remove') document.deleteIn(path);
  else document.setIn(path, document.createNode(valueAlong(wanted, path)));
  const written = document.toString({ lineWidth: LINE });
  if (says(written, wanted)) return written;
  // What it says counts before how it looks.
  document.contents = document.createNode(wanted) as typeof document.contents;
  return document.toString({ lineWidth: LINE });
}

function valueAlong(data: Plain, path: FileEdit['path']): unknown {
  return path.reduce<unknown>(
    (value, part) => (value as Record<string | number, unknown>)[part],
    data,
  );
}

function says(text: string, wanted: Plain): boolean {
  const data = dataIn(text);
  return data !== undefined && isSame(data, wanted);
}

/** Whatever order keys stand in. */
function isSame(a: unknown, b: unknown): boolean {
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return a === b;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every(
      (key) =>
        Object.hasOwn(b, key) &&
        isSame((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key]),
    )
  );
}
