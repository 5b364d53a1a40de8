import { createContext, useContext } from 'react';
import type { DeskEvent, DeskKind, DeskState, Refusal } from '../../../machines/job/index.ts';

/** The exercise that stands around a part of the page: what is on paper, and the pen. */
export interface Exercise {
  readonly kind: DeskKind;
  readonly id: string;
  readonly desk: DeskState;
  /** Writes one thing down, at the time of the plant; null when it was taken. */
  take(event: DeskEvent): Refusal | null;
  /** Erases what was done and begins again. */
  startAnew(): void;
}

const ExerciseContext = createContext<Exercise | null>(null);
export const ExerciseProvider = ExerciseContext.Provider;

export function useExercise(): Exercise {
  const exercise = useContext(ExerciseContext);
  if (exercise === null) throw new Error('no exercise around this part of the page');
  return exercise;
}
