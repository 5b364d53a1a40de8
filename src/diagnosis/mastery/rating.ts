/**
 * What results say of a skill: an Elo rating in log-odds.
 *
 * Equation: the chance of doing well is 1 / (1 + e^−(rating − difficulty)), as of Elo and of Rasch.
 * A result moves the rating by the gain × (outcome − chance). The gain is the variance that is
 * left after so many results, so that the first move it far and later ones little.
 *
 * Left out: that skills are forgotten, that exercises of one level differ. All numbers are own
 * training values; each says what it stands for.
 */
import type { Skill } from '../../../machines/job/index.ts';
import { exactExp } from '../../numeric/index.ts';

export interface Rating {
  /** Log-odds, −4 to 4; 0 is as hard as a job of level 3. */
  readonly value: number;
  /** Results that speak for it, each by its weight; a job of several skills is less than one to each. */
  readonly count: number;
}
/** A skill that has no result is left out. */
export type Ratings = Readonly<Partial<Record<Skill, Rating>>>;

export interface Result {
  /** Each once. */
  readonly skills: readonly Skill[];
  /** Log-odds, help already taken off. */
  readonly difficulty: number;
  /** 0 nothing of it to 1 all of it. */
  readonly outcome: number;
  /** How much it tells, 0 to 1; a whole job without help is 1. */
  readonly weight: number;
}

/** Beyond this no exercise of the library tells more: at level 5, one failure in eight is expected. */
const BOUND = 4;
/** A newcomer may expect to do well in seven of ten jobs of level 1, and that is where to begin. */
const FIRST_VALUE = -1;
/** Newcomers differ by a level and a half either way; some have worked at burners for years. */
const FIRST_VARIANCE = 2.25;
/**
 * What one result tells. A single success or failure at a chance of seven in ten would tell
 * p(1−p) = 0.21; less is taken, for people learn meanwhile and exercises of one level differ.
 */
const TOLD_BY_ONE = 0.15;
/** After some twenty results the last ones must still be able to move a rating. */
const LEAST_VARIANCE = 0.3;

/** Half of a normal distribution lies within so many of its standard deviations. */
const PROBABLE = 0.674;

export const NEWCOMER: Rating = { value: FIRST_VALUE, count: 0 };

/** The chance of doing well, 0 to 1. Both in log-odds. */
export function expectedScore(rating: number, difficulty: number): number {
  return 1 / (1 + exactExp(difficulty - rating));
}

/** How far off a rating may well be, log-odds: as likely less as more, by the normal distribution. */
export function spreadOf({ count }: Rating): number {
  return PROBABLE * Math.sqrt(varianceAfter(count));
}

/**
 * The ratings once one more result is known. Skills of one exercise have been tried together: their
 * mean is what met the difficulty, and they share the move. Each takes 1/√n of it: nobody knows which
 * of them it was, yet who does two things together well can do either.
 */
export function afterResult(ratings: Ratings, result: Result): Ratings {
  const { skills, difficulty } = result;
  const weight = within(0, result.weight, 1);
  if (skills.length === 0 || weight === 0) return ratings;
  const surprise =
    within(0, result.outcome, 1) - expectedScore(meanValue(ratings, skills), difficulty);
  const share = weight / Math.sqrt(skills.length);
  const next: Partial<Record<Skill, Rating>> = { ...ratings };
  for (const skill of skills) {
    const { value, count } = ratings[skill] ?? NEWCOMER;
    const moved = value + varianceAfter(count) * share * surprise;
    next[skill] = { value: within(-BOUND, moved, BOUND), count: count + share };
  }
  return next;
}

/** What meets an exercise that asks for these skills. */
export function meanValue(ratings: Ratings, skills: readonly Skill[]): number {
  let sum = 0;
  for (const skill of skills) sum += (ratings[skill] ?? NEWCOMER).value;
  return skills.length === 0 ? FIRST_VALUE : sum / skills.length;
}

function varianceAfter(count: number): number {
  return Math.max(LEAST_VARIANCE, 1 / (1 / FIRST_VARIANCE + TOLD_BY_ONE * count));
}

function within(least: number, value: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}
