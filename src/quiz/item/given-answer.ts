/** One answer as it is kept and exported. */
import type { Skill } from '../../../machines/job/index.ts';
import type { ItemKind } from './item.ts';
import type { Confidence, Response } from './response.ts';

export const QUIZ_MODES = ['short', 'standard', 'exam', 'one skill', 'got wrong', 'due'] as const;
export type QuizMode = (typeof QUIZ_MODES)[number];

export interface GivenAnswer {
  readonly item: string;
  readonly kind: ItemKind;
  readonly plant: string;
  readonly topic: string;
  readonly skills: readonly Skill[];
  /** Log-odds, when it was answered. */
  readonly difficulty: number;
  readonly mode: QuizMode;
  readonly quizStartedISO: string;
  readonly atISO: string;
  readonly response: Response;
  readonly right: boolean;
  readonly confidence: Confidence;
}
