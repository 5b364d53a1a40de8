/** All that the map says, made from the results that are kept. */
import type { Skill } from '../../../machines/job/index.ts';
import {
  type Exercise,
  type MasteryWord,
  masteryWord,
  nextOfSkill,
  nextToPractise,
  type Rating,
  ratingsOf,
  SKILL_ORDER,
  type Suggestion,
} from '../../diagnosis/mastery/index.ts';
import type { KeptResult } from './result-record.ts';

export interface SkillOnMap {
  readonly skill: Skill;
  readonly word: MasteryWord;
  /** Null where nothing is known. */
  readonly rating: Rating | null;
  /** Results that have to do with it. */
  readonly results: number;
  /** When the last of them was; null where there is none. */
  readonly lastISO: string | null;
  readonly next: Suggestion | null;
}

export interface LearnerMap {
  readonly skills: readonly SkillOnMap[];
  readonly next: readonly Suggestion[];
  /** The latest first. */
  readonly history: readonly KeptResult[];
}

/**
 * @param results in the order of time
 * @param exercises those that may be suggested
 */
export function learnerMap(
  results: readonly KeptResult[],
  exercises: readonly Exercise[],
): LearnerMap {
  const ratings = ratingsOf(results);
  return {
    skills: SKILL_ORDER.map((skill) => {
      const rating = ratings[skill];
      const past = results.filter((result) => concerns(result, skill));
      return {
        skill,
        word: masteryWord(rating),
        rating: rating ?? null,
        results: past.length,
        lastISO: past.at(-1)?.atISO ?? null,
        next: nextOfSkill(skill, ratings, exercises, results),
      };
    }),
    next: nextToPractise(ratings, exercises, results),
    history: [...results].reverse(),
  };
}

/** Whether a result moves the rating of a skill. Every job that was judged tells of conduct. */
export function concerns({ skills, conduct }: KeptResult, skill: Skill): boolean {
  return skills.includes(skill) || (skill === 'conduct' && conduct !== null);
}
