/** How help fades as a skill is practised: guided, then by oneself, then without feedback. */
import type { Guidance, Skill } from '../../../machines/job/index.ts';
import { helpGiven } from './difficulty.ts';
import { expectedScore, meanValue, type Ratings } from './rating.ts';
import type { PractiseResult } from './results.ts';

/** Something that can be practised; the list's order decides between equals. */
export interface Exercise {
  readonly kind: 'job' | 'drill' | 'lesson';
  readonly id: string;
  readonly skills: readonly Skill[];
  /** Log-odds, without help. */
  readonly difficulty: number;
}

/** Below this someone would mostly fail: better with help, and better not at all while there is anything else. */
export const TOO_HARD = 0.5;
/** From here on one should be able to do without feedback. */
const ABLE = 0.6;
/** An outcome from which the help may fade: no trying of parts comes so far. */
const WENT_WELL = 0.55;

/** @param past results of the skill that it is suggested for */
export function guidanceOf(
  exercise: Exercise,
  ratings: Ratings,
  past: readonly PractiseResult[],
): Guidance | null {
  if (exercise.kind !== 'job') return null;
  if (!past.some(wentWell)) return 'guided';
  const alone = expectedOf(exercise, 'practice', ratings);
  if (alone < TOO_HARD) return 'guided';
  return past.some(wasAlone) && expectedOf(exercise, 'assessment', ratings) >= ABLE
    ? 'assessment'
    : 'practice';
}

function wentWell({ kind, outcome }: PractiseResult): boolean {
  return kind === 'job' && outcome >= WENT_WELL;
}

/** A job that went well without being guided. */
export function wasAlone(result: PractiseResult): boolean {
  return wentWell(result) && result.guidance !== 'guided';
}

/** Chance of doing well with that much help, 0 to 1. */
export function expectedOf(
  exercise: Exercise,
  guidance: Guidance | null,
  ratings: Ratings,
): number {
  const { ease } = helpGiven({ kind: exercise.kind, guidance, hints: 0, repeated: false });
  return expectedScore(meanValue(ratings, exercise.skills), exercise.difficulty - ease);
}
