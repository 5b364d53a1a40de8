import type { Answers } from '../../classroom/index.ts';
import type { LiveClass } from './live-class.ts';

/** What a page asks for that found a gap. */
export function entriesSince(one: LiveClass, n: number): Answers['since'] {
  return { ok: true, entries: one.entries.slice(n) };
}
