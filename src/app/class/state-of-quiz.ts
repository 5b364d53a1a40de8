import type { QuizState } from '../../../machines/quiz/index.ts';
import type { SeatState } from '../../classroom/index.ts';

export type OwnState = Omit<SeatState, 'asksHelp'>;

/** Of a seat at which nothing has begun. */
export const STATE_AT_FIRST: OwnState = {
  phase: 'waiting',
  step: '',
  stepS: 0,
  runS: 0,
  running: false,
  lockout: null,
  last: null,
  suspects: [],
  flags: 0,
  readings: 0,
  resets: 0,
  lockouts: 0,
  progress: 0,
  answered: 0,
  right: 0,
  applied: 0,
};

/** How a quiz stands, for the board; what is right is not told while it goes on. */
export function stateOfQuiz({ phase, answers, items }: QuizState, applied: number): OwnState {
  const answered = answers.filter((answer) => answer !== null).length;
  return {
    ...STATE_AT_FIRST,
    phase: phase === 'over' ? 'done' : 'working',
    progress: items.length === 0 ? 0 : Math.min(1, answered / items.length),
    answered,
    applied,
  };
}
