import type { ClassState } from '../../../machines/class/index.ts';
import type { Session } from '../session/session-types.ts';
import type { Told } from '../session/told.ts';
import type { Moment } from '../teach-poll/ask-here.ts';
import { openingOf } from './exercise-of-class.ts';

/** Where a run stands that is shown; null for a quiz, which has none, and before it is open. */
export function momentOfRun(run: Session, book: ClassState): Moment | null {
  const opening = openingOf(book);
  let now: Told | null = null;
  // Told at once of what is there.
  run.onLead((told) => {
    now = told;
  })();
  const told = now as Told | null;
  if (opening === null || told === null) return null;
  const { shownS } = run.store.read();
  const log = told.log.filter(({ t }) => t <= shownS);
  const { kind, id, given, seed } = opening;
  return { kind, id, given, seed, log, atS: shownS };
}
