/** How a new value is written: as the shipped files write theirs. */
import { isGroup } from './edit-plain.ts';
import type { Plain } from './file-edit.ts';

const LINE = 100;
/** A group or list that says no more than this stands on one line. */
const SHORT = 72;
/** Text beyond this is no word of a list but a sentence. */
const WORD = 32;
const RESERVED = /^(?:true|false|null|yes|no|on|off|y|n|~|\.nan|[-+]?\.inf)$/i;

/** On one line and safe inside brackets. */
export function flowText(value: Plain): string {
  if (Array.isArray(value)) return `[${value.map(flowText).join(', ')}]`;
  if (isGroup(value)) {
    const pairs = Object.entries(value).map(([key, each]) => `${keyText(key)}: ${flowText(each)}`);
    return pairs.length === 0 ? '{}' : `{ ${pairs.join(', ')} }`;
  }
  if (typeof value !== 'string') return bare(value as number | boolean | null);
  return /^\p{L}[\p{L}\p{N} .'()/µ°-]*$/u.test(value) && isPlain(value)
    ? value
    : JSON.stringify(value);
}

/** `key: value` from a column on, without the end of its last line. */
export function pairText(key: string, value: Plain, column: number): string {
  return `${' '.repeat(column)}${keyText(key)}:${afterKey(value, column, keyText(key).length + 1)}`;
}

/** `- value` from a column on, without the end of its last line. */
export function entryText(value: Plain, column: number): string {
  return `${' '.repeat(column)}- ${afterDash(value, column)}`;
}

/** What stands after a hyphen at a column. */
export function afterDash(value: Plain, column: number): string {
  if (isGroup(value) && !isShort(value)) {
    return Object.entries(value)
      .map(([key, each]) => pairText(key, each, column + 2))
      .join('\n')
      .trimStart();
  }
  if (Array.isArray(value) && !isShort(value)) {
    return value
      .map((each) => entryText(each, column + 2))
      .join('\n')
      .trimStart();
  }
  return typeof value === 'string' ? textOf(value, column, 2) : flowText(value);
}

/** What stands after the colon of a key at a column, with the space or line that parts the two. */
export function afterKey(value: Plain, column: number, taken: number): string {
  if (typeof value === 'string') return ` ${textOf(value, column, taken + 1)}`;
  if (typeof value !== 'object' || value === null || isShort(value)) return ` ${flowText(value)}`;
  const lines = Array.isArray(value)
    ? value.map((each) => entryText(each, column + 2))
    : Object.entries(value).map(([key, each]) => pairText(key, each, column + 2));
  return `\n${lines.join('\n')}`;
}

/** A list of groups has a line for each, however short. */
function isShort(value: Plain): boolean {
  if (Array.isArray(value) && value.some((each) => typeof each === 'object')) return false;
  return flowText(value).length <= SHORT && longestText(value) <= WORD;
}

function longestText(value: Plain): number {
  if (typeof value === 'string') return value.length;
  if (typeof value !== 'object' || value === null) return 0;
  return Math.max(0, ...Object.values(value).map((each) => longestText(each as Plain)));
}

/** @param taken characters that already stand on the line after the column */
function textOf(value: string, column: number, taken: number): string {
  const fits = value.length + column + taken <= LINE && !value.includes('\n');
  if (fits) return isPlain(value) ? value : JSON.stringify(value);
  return isFoldable(value) ? folded(value, column + 2) : JSON.stringify(value);
}

/** Without quotes it is read as this very text. */
function isPlain(value: string): boolean {
  return (
    /^\p{L}/u.test(value) && !RESERVED.test(value) && !/: |:$| #|\s$|[\n\t\p{Cc}]/u.test(value)
  );
}

function isFoldable(value: string): boolean {
  return value !== '' && !/^\s|\s$|[^\S\n]\n|\n[^\S\n]|[^\S\n ]|[^\P{Cc}\n]/u.test(value);
}

/** Lines of one paragraph are joined by reading; where the text breaks, a line is left empty. */
function folded(value: string, column: number): string {
  const pad = ' '.repeat(column);
  const paragraphs = value.split(/(\n+)/).map((piece) => {
    if (piece.startsWith('\n')) return `\n${piece}`;
    return wrapped(piece, LINE - column)
      .map((line) => pad + line)
      .join('\n');
  });
  return `>-\n${paragraphs.join('')}`;
}

function wrapped(text: string, width: number): string[] {
  const lines: string[] = [];
  let line = '';
  // Only where one space stands between two words can a line end.
  for (const word of text.split(/(?<=\S) (?=\S)/)) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}

function keyText(key: string): string {
  return /^[A-Za-z][A-Za-z0-9-]*$/.test(key) ? key : JSON.stringify(key);
}

function bare(value: number | boolean | null): string {
  return Object.is(value, -0) ? '0' : String(value);
}
