import type { ToolUse } from '../../bench/index.ts';

/** The same tool at the same place, set the same way, is one connected tool. */
export function keyOf({ tool, place, other, range }: ToolUse): string {
  return JSON.stringify([tool, place, other ?? '', range ?? '']);
}
