import type { Path } from '../../../scenario/editing/index.ts';

/** `faults[0].severity` as it leads there. */
export function pathOfText(text: string): Path {
  return (text.match(/[^.[\]]+|\[\d+\]/g) ?? []).map((part) =>
    part.startsWith('[') ? Number(part.slice(1, -1)) : part,
  );
}
