import type { PlainGroup } from './file-edit.ts';
import { pairText } from './value-text.ts';

/** A whole file out of what it is to say, keys in the order given. */
export function fileText(data: PlainGroup): string {
  return Object.entries(data)
    .map(([key, value]) => `${pairText(key, value, 0)}\n`)
    .join('');
}
