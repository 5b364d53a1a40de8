/** What is asked of the judge, and what it finds. Plain data: it crosses to a thread and back. */
import type { Action } from '../../engine/index.ts';
import type { Claimed, GivenLibrary } from '../../judging/index.ts';
import type { JudgedParts } from '../../records/class/index.ts';
import type { ExerciseKind } from '../../scenario/index.ts';

/** Work at an exercise, as it was handed in: nothing of it is believed. */
export interface ExerciseTask {
  readonly of: 'exercise';
  readonly kind: ExerciseKind;
  readonly id: string;
  /** In place of the exercise's own. */
  readonly seed?: number | undefined;
  /** What the shipped library has not got. */
  readonly given?: GivenLibrary | undefined;
  readonly log: readonly unknown[];
  readonly desk: readonly unknown[];
  readonly untilS: number;
  /** Of the setup that the page had; left out: not compared. */
  readonly setupHash?: string | undefined;
  /** Acts that the class ordered for this seat. */
  readonly ordered: readonly Action[];
  readonly claimed: Claimed | null;
}

export interface QuizTask {
  readonly of: 'quiz';
  readonly items: readonly string[];
  readonly mode: string;
  /** Of machines/quiz, as they were handed in. */
  readonly entries: readonly unknown[];
  readonly claimed: Pick<Claimed, 'outcome'> | null;
}

export type JudgeTask = ExerciseTask | QuizTask;

/** `hash` of the run as the server ran it; null where it did not, and for a quiz. */
export type Judged = JudgedParts & { readonly hash: string | null };
