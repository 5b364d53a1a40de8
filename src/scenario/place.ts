/** A position in a file as editors count it: lines and columns from 1, columns in UTF-16 units. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** The places of a text by offset; what lies beyond its end is at its end. */
export function placesIn(text: string): (offset: number) => Place {
  const starts = [0];
  for (let i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) starts.push(i + 1);
  return (offset) => {
    const here = Math.min(Math.max(0, offset), text.length);
    let low = 0;
    let high = starts.length;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if ((starts[middle] ?? 0) <= here) low = middle;
      else high = middle;
    }
    return { line: low + 1, column: here - (starts[low] ?? 0) + 1 };
  };
}

export type Path = readonly (string | number)[];

/** `['load', 0, 'at']` as `load[0].at`. */
export function pathText(path: Path): string {
  let text = '';
  for (const part of path) {
    if (typeof part === 'number') text += `[${part}]`;
    else text += text === '' ? part : `.${part}`;
  }
  return text;
}

/** `load[0]` of `load[0].at`; nothing of a key of the outermost group. */
export function parentOf(path: string): string {
  return path.slice(0, Math.max(0, path.lastIndexOf('.')));
}
