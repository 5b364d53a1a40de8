import { diagnoseCase } from '../author/diagnose-case.ts';
import type { CauseFound } from '../author/find-cause.ts';
import type { Case } from './case.ts';

const kept = new WeakMap<Case, readonly CauseFound[]>();

/** The best way to each cause, one after the other; none where nothing is known of the truth. */
export function roundsOf(theCase: Case): readonly CauseFound[] {
  const known = kept.get(theCase);
  if (known !== undefined) return known;
  const { sound, truthAfter, own, tools } = theCase;
  const made =
    truthAfter === null
      ? []
      : diagnoseCase({ atlas: sound, truth: truthAfter, own, tools, comesAndGoes: false }).rounds;
  kept.set(theCase, made);
  return made;
}
