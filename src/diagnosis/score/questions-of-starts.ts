import type { Atlas } from '../atlas/atlas.ts';
import { AT_REST, ISOLATED, LOCKED_OUT, STANDING } from '../observe/moment.ts';
import { checkName } from '../observe/reading.ts';
import { type Question, questionsOf } from '../reasoning/questions.ts';

export const WATCH_A_START = checkName('watch one start');
const START = 'a start';
const NOT_OF_A_START: ReadonlySet<string> = new Set([AT_REST, ISOLATED, LOCKED_OUT, STANDING]);

/** Whether it is a step that a start has to come to. */
export function isStepOfStart(moment: string): boolean {
  return !NOT_OF_A_START.has(moment);
}

/** A tool hangs on, and eyes stay on the panel, for a whole start: its steps are one situation. */
export function situationOf(check: string, moment: string): string {
  if (check === WATCH_A_START && moment === AT_REST) return START;
  return isStepOfStart(moment) ? START : moment;
}

export function questionsOfStarts(atlas: Atlas): readonly Question[] {
  return questionsOf(atlas, ({ check, moment }) => nameOfAsk(check, moment));
}

export function nameOfAsk(check: string, moment: string): string {
  return `${check}@${situationOf(check, moment)}`;
}
