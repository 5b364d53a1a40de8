import type { Act } from './trace-types.ts';

const LOOK = 'look';
const NAMED_LOOK = 'look: ';
const MIRROR = 'mirror and torch';

/** What a check of the log looks at; null where it is no look. */
export function lookedAt({ action }: Pick<Act, 'action'>): string | null {
  if (action.type !== 'check') return null;
  if (action.what === LOOK || action.what === MIRROR) return action.place;
  return action.what.startsWith(NAMED_LOOK) ? action.what.slice(NAMED_LOOK.length) : null;
}
