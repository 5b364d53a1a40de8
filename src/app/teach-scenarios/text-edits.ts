/** What the keys of a text editor do to a text and its selection. */
export interface TextState {
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

const INDENT = '  ';

/** Spaces at the cursor; several lines that are selected go in together. */
export function indent({ text, from, to }: TextState): TextState {
  if (!text.slice(from, to).includes('\n')) {
    const column = from - lineStart(text, from);
    const pad = ' '.repeat(INDENT.length - (column % INDENT.length));
    return {
      text: text.slice(0, from) + pad + text.slice(to),
      from: from + pad.length,
      to: from + pad.length,
    };
  }
  return onLines({ text, from, to }, (line) => (line === '' ? line : INDENT + line));
}

export function outdent(state: TextState): TextState {
  return onLines(state, (line) => line.replace(/^ {1,2}/, ''));
}

/** A new line begins where the one before it began, behind a colon deeper. */
export function newLine({ text, from, to }: TextState): TextState {
  const line = text.slice(lineStart(text, from), from);
  const [pad = ''] = /^ */.exec(line) ?? [];
  const deeper = /(?:^|\s)(?:- )?[\w-]+:\s*(?:>-|\|-?)?$/.test(line) ? INDENT : '';
  const behindHyphen = /^ *- \S/.test(line) && !line.trimEnd().endsWith(':') ? INDENT : '';
  const put = `\n${pad}${deeper === '' ? behindHyphen : deeper}`;
  return {
    text: text.slice(0, from) + put + text.slice(to),
    from: from + put.length,
    to: from + put.length,
  };
}

function onLines({ text, from, to }: TextState, change: (line: string) => string): TextState {
  const start = lineStart(text, from);
  const last = to > from && text.charAt(to - 1) === '\n' ? to - 1 : to;
  const newline = text.indexOf('\n', last);
  const end = newline < 0 ? text.length : newline;
  const lines = text.slice(start, end).split('\n');
  const changed = lines.map(change);
  const first = (changed[0]?.length ?? 0) - (lines[0]?.length ?? 0);
  const grown = changed.join('\n').length - (end - start);
  return {
    text: text.slice(0, start) + changed.join('\n') + text.slice(end),
    from: Math.max(start, from + first),
    to: Math.max(start, to + grown),
  };
}

function lineStart(text: string, place: number): number {
  return text.lastIndexOf('\n', place - 1) + 1;
}

/** Lines and columns from 1. */
export function offsetAt(text: string, line: number, column: number): number {
  let start = 0;
  for (let count = 1; count < line; count += 1) {
    const newline = text.indexOf('\n', start);
    if (newline < 0) return text.length;
    start = newline + 1;
  }
  return Math.min(text.length, start + column - 1);
}

/** Behind what differs: where the eye should be after a change from elsewhere. */
export function endOfChange(before: string, after: string): number {
  let same = 0;
  const most = Math.min(before.length, after.length);
  while (
    same < most &&
    before.charCodeAt(before.length - 1 - same) === after.charCodeAt(after.length - 1 - same)
  ) {
    same += 1;
  }
  return after.length - same;
}
