import type { ClassState } from '../../../machines/class/index.ts';
import type { SessionOpening } from '../session/session-types.ts';

export type ClassOpening = Pick<SessionOpening, 'id' | 'given' | 'seed'> & {
  readonly kind: Exclude<SessionOpening['kind'], 'quiz'>;
};

/** How a run of what the class is about is opened; null for a quiz, which has none. */
export function openingOf({ what, seed }: Pick<ClassState, 'what' | 'seed'>): ClassOpening | null {
  if (what === null || what.kind === 'quiz') return null;
  const kind = what.kind === 'start' ? 'watch' : what.kind;
  // The worker checks it; the server did when the class was opened.
  const { given } = what;
  return { kind, id: what.id, seed, ...(given === undefined ? {} : { given }) };
}
