import type { ClassWhat } from '../../../machines/class/index.ts';
import { exerciseSetup, withGiven } from '../../judging/work/index.ts';
import { QUIZ_MODES } from '../../quiz/taking/index.ts';
import { findWritten } from '../../quiz/written/index.ts';
import { type LearnerLibrary, readGiven, setupOf } from '../../scenario/index.ts';

export const WHAT_ERRORS = [
  'no such exercise',
  'no such item',
  'no such quiz mode',
  'given not understood',
  'does not run',
] as const;

export type WhatChecked =
  /** `seed`: its own; null where it has none. */
  | { readonly ok: true; readonly seed: number | null }
  | { readonly ok: false; readonly error: (typeof WHAT_ERRORS)[number]; readonly where: string };

/** Whether a class can work at it: it is shipped or comes along, and a run of it can be made. */
export function checkWhat(
  what: ClassWhat,
  shipped: LearnerLibrary,
  quizItems: () => ReadonlySet<string>,
): WhatChecked {
  const read = what.given === undefined ? null : readGiven(what.given);
  if (read?.ok === false) {
    const where = `what.given.${read.place}: ${read.message}`;
    return { ok: false, error: 'given not understood', where };
  }
  const library = read === null ? shipped : withGiven(shipped, read.given);
  if (what.kind === 'quiz') return checkQuiz(what, library, quizItems());
  try {
    const setup =
      what.kind === 'start'
        ? setupOf(library, what.id)
        : (exerciseSetup(library, what.kind, what.id)?.setup ?? null);
    if (setup !== null) return { ok: true, seed: setup.seed };
    return { ok: false, error: 'no such exercise', where: 'what.id' };
  } catch (error) {
    // Each thing by itself was in order, but they do not go together.
    const said = error instanceof Error ? error.message : '';
    return { ok: false, error: 'does not run', where: `what.given: ${said}` };
  }
}

function checkQuiz(
  { items = [], mode }: ClassWhat,
  { quizzes }: LearnerLibrary,
  known: ReadonlySet<string>,
): WhatChecked {
  if (!QUIZ_MODES.some((one) => one === mode)) {
    return { ok: false, error: 'no such quiz mode', where: 'what.mode' };
  }
  const wrong = items.findIndex((id) => !known.has(id) && findWritten(quizzes, id) === null);
  if (items.length > 0 && wrong < 0) return { ok: true, seed: null };
  return { ok: false, error: 'no such item', where: `what.items.${Math.max(0, wrong)}` };
}
