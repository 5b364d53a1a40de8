/** What a tile says of a seat, in words. */

import type { SeatState } from '../../classroom/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import type { BoardRow } from './board-rows.ts';

export function seatName({ seat, nickname }: Pick<BoardRow, 'seat' | 'nickname'>): string {
  return nickname === ''
    ? say('teach-class.seat', { seat })
    : say('teach-class.seat.named', { seat, name: nickname });
}

/** Where the run is, or that there is none yet. */
export function stepText({ standing, state, follows }: BoardRow): string {
  if (state === null || state.phase === 'waiting') return say('teach-class.step.waiting');
  if (standing === 'done') return say('teach-class.step.done');
  if (follows) return say('teach-class.step.follows');
  if (state.lockout !== null) {
    return say('teach-class.step.lockout', { cause: sayWord('cause', state.lockout) });
  }
  return state.step === '' ? '' : sayWord('step', state.step, '.title');
}

/** The step in two or three words, for a wall. */
export function stepShort({ standing, state, follows }: BoardRow): string {
  if (state === null || state.phase === 'waiting') return say('teach-class.step.waiting');
  if (standing === 'done') return say('teach-class.step.done');
  if (follows) return say('teach-class.step.follows');
  if (state.lockout !== null) return say('teach-class.step.locked-out');
  if (state.step === '') return quizText(state);
  return sayWord('step', state.step, '.title');
}

export function quizText({ answered, right }: SeatState): string {
  return right === 0
    ? say('teach-class.quiz.answered', { answered })
    : say('teach-class.quiz.right', { answered, right });
}

export function lastText({ state }: BoardRow): string {
  if (state === null || state.last === null) return '';
  const ago = Math.round(state.last.agoS);
  const what = lastActText(state.last);
  return ago < 60 ? what : say('teach-class.last.ago', { what, ago: agoText(ago) });
}

/** What was done last: the act in plain words, and with what. */
function lastActText({ type, what }: NonNullable<SeatState['last']>): string {
  const act = sayWord('teach-class.act', type);
  const words = act === type ? type.replaceAll('-', ' ') : act;
  return what === '' ? words : `${words}: ${what}`;
}

export function agoText(seconds: number): string {
  if (seconds < 60) return say('teach-class.seconds', { seconds: Math.round(seconds) });
  return say('teach-class.minutes', { minutes: Math.round(seconds / 60) });
}

/** Away, stuck and why, done: what stands in the corner of a tile. */
export function markText({ standing, stuck }: BoardRow): string {
  if (standing === 'stuck' && stuck !== null) return sayWord('teach-class.stuck', stuck);
  if (standing === 'working' || standing === 'waiting') return '';
  return sayWord('teach-class.standing', standing);
}
