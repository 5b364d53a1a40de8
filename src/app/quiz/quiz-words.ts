import type { Skill } from '../../../machines/job/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import type { ItemKind, QuizMode } from '../../quiz/index.ts';
import { plantTitle } from '../library/exercises.ts';

export function modeName(mode: QuizMode): string {
  return sayWord('quiz.mode', mode);
}

/** What a quiz was, as in 'One skill: flame sensing'. */
export function quizTitle(mode: QuizMode, skill: Skill | null): string {
  if (skill === null) return modeName(mode);
  return say('quiz.mode.of', { mode: modeName(mode), skill: sayWord('job.skill', skill) });
}

export function kindName(kind: ItemKind): string {
  return sayWord('quiz.kind', kind);
}

/** Empty where an item is about no plant. */
export function plantName(plant: string): string {
  return plant === '' ? '' : plantTitle(plant);
}

export function percentOf(share: number): number {
  return Math.round(100 * share);
}
