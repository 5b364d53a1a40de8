/**
 * What to practise next, and why: the skill that is weakest or least known, and for it an exercise
 * that is neither beyond the learner nor known by heart.
 */
import type { Guidance, Skill } from '../../../machines/job/index.ts';
import { difficultyOfLevel } from './difficulty.ts';
import { type Exercise, expectedOf, guidanceOf, TOO_HARD, wasAlone } from './fading.ts';
import { NEWCOMER, type Ratings, spreadOf } from './rating.ts';
import { inOrder, type PractiseResult } from './results.ts';
import { SKILL_ORDER } from './skill-order.ts';

export const WHY_NEXT = [
  /** No result tells anything of the skill. */
  'not tried',
  /** It has only been done with help. */
  'only with help',
  /** Few results, and they do not say much yet. */
  'little known',
  /** Few other skills are weaker. */
  'weakest',
  /** All is well: it is worth seeing whether it stands without any help. */
  'without help',
] as const;
export type WhyNext = (typeof WHY_NEXT)[number];

export interface Suggestion {
  readonly kind: Exercise['kind'];
  readonly id: string;
  /** Null where an exercise knows no such steps. */
  readonly guidance: Guidance | null;
  /** What it is suggested for. */
  readonly skill: Skill;
  readonly why: WhyNext;
  /** Chance of doing well, help included; 0 to 1. */
  readonly expected: number;
}

/** In the middle of 0.6 to 0.8: success is likely, and there is something left to find out. */
const BEST_EXPECTED = 0.7;
/** As many results later an exercise may come again. */
const LATELY = 4;
/** What it takes to make an exercise that was done before as good as a fresh one. */
const STALE = 0.25;
/** What a chance below TOO_HARD counts, by each part: at one in four, more than that it was done lately. */
const HARDSHIP = 6;
/** By how much, in log-odds, a skill seems better for each of the last results that it was in. */
const RESTS = 0.5;
/** From here on it is better to see to another skill first. */
const POOR_FIT = 0.9;
/** Who did well alone is better served by an assessment, unless nothing else fits. */
const HELP_BEHIND = 0.1;
/** By how much each level counts against a job while its skill is untried: more than any chance does. */
const FIRST_STEEP = 0.4;
/** A question of two minutes trains less of a skill than a job. */
const DRILL_BEHIND = 0.06;
/** Log-odds either way: after some five jobs. A skill that is known no better is little known. */
const WELL_KNOWN = 0.6;

/**
 * @param done every result that there is, whatever its order
 * @param most how many suggestions; each is for another skill and another exercise
 * @returns the best first; fewer where the list of exercises gives no more
 */
export function nextToPractise(
  ratings: Ratings,
  exercises: readonly Exercise[],
  done: readonly PractiseResult[],
  most = 3,
): readonly Suggestion[] {
  const history = inOrder(done);
  const suggestions: Suggestion[] = [];
  // A skill for which nothing fits just now waits until the others have had their turn.
  for (const mostOff of [POOR_FIT, Number.POSITIVE_INFINITY]) {
    for (const skill of skillsByNeed(ratings, history)) {
      if (suggestions.length === most) return suggestions;
      if (suggestions.some((taken) => taken.skill === skill)) continue;
      const free = exercises.filter((each) => !suggestions.some((taken) => isSame(taken, each)));
      const found = forSkill(skill, ratings, free, history);
      if (found !== null && found.off < mostOff) suggestions.push(found.suggestion);
    }
  }
  return suggestions;
}

/** What is best practised of one skill; null where no exercise trains it. */
export function nextOfSkill(
  skill: Skill,
  ratings: Ratings,
  exercises: readonly Exercise[],
  done: readonly PractiseResult[],
): Suggestion | null {
  return forSkill(skill, ratings, exercises, inOrder(done))?.suggestion ?? null;
}

/**
 * By the lower end of what a rating may well be: what is weak and what is unknown both come first.
 * What was practised just now rests a while; skills taken in turn are learnt better than in blocks.
 */
function skillsByNeed(ratings: Ratings, history: readonly PractiseResult[]): readonly Skill[] {
  const lately = history.slice(-LATELY);
  const needs = SKILL_ORDER.map((skill) => {
    const rating = ratings[skill] ?? NEWCOMER;
    const times = lately.filter(({ skills }) => skills.includes(skill)).length;
    return { skill, at: rating.value - spreadOf(rating) + times * RESTS };
  });
  return needs.sort((a, b) => a.at - b.at).map(({ skill }) => skill);
}

interface Fit {
  readonly suggestion: Suggestion;
  /** How far it is from what would be just right; 0 is best. */
  readonly off: number;
}

function forSkill(
  skill: Skill,
  ratings: Ratings,
  exercises: readonly Exercise[],
  history: readonly PractiseResult[],
): Fit | null {
  const past = history.filter(({ skills }) => skills.includes(skill));
  const isAble = past.some(wasAlone);
  let best: Fit | null = null;
  for (const exercise of exercises) {
    if (!exercise.skills.includes(skill)) continue;
    const guidance = guidanceOf(exercise, ratings, past);
    const expected = expectedOf(exercise, guidance, ratings);
    const off =
      Math.abs(expected - BEST_EXPECTED) +
      stalenessOf(exercise, history) +
      HARDSHIP * Math.max(0, TOO_HARD - expected) +
      (exercise.kind === 'drill' ? DRILL_BEHIND : 0) +
      (isAble && guidance !== 'assessment' ? HELP_BEHIND : 0) +
      firstStep(exercise, past);
    if (best !== null && off >= best.off) continue;
    const { kind, id } = exercise;
    const why = whyOf(skill, ratings, past, guidance);
    best = { suggestion: { kind, id, guidance, skill, why, expected }, off };
  }
  return best;
}

/**
 * A lesson is where a skill is begun, and no place to come back to; then comes the easiest job. A
 * drill at first would be a guess.
 */
function firstStep({ kind, difficulty }: Exercise, past: readonly PractiseResult[]): number {
  const untried = past.length === 0;
  if (kind === 'lesson') return untried ? -1 : 1;
  if (!untried) return 0;
  return kind === 'drill' ? 1 : FIRST_STEEP * (difficulty - difficultyOfLevel(1));
}

function stalenessOf(exercise: Exercise, history: readonly PractiseResult[]): number {
  const times = history.filter((result) => isSame(result, exercise)).length;
  const lately = history.slice(-LATELY).some((result) => isSame(result, exercise));
  return times * STALE + (lately ? 1 : 0);
}

function whyOf(
  skill: Skill,
  ratings: Ratings,
  past: readonly PractiseResult[],
  guidance: Guidance | null,
): WhyNext {
  const rating = ratings[skill];
  if (rating === undefined) return 'not tried';
  if (guidance === 'assessment') return 'without help';
  const alone = past.some(({ kind, guidance: under }) => kind !== 'lesson' && under !== 'guided');
  if (!alone && guidance !== 'guided') return 'only with help';
  return spreadOf(rating) > WELL_KNOWN ? 'little known' : 'weakest';
}

type Named = Pick<PractiseResult, 'kind' | 'id'>;

function isSame(a: Named, b: Named): boolean {
  return a.kind === b.kind && a.id === b.id;
}
