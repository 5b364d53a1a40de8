import type { Skill } from '../../../machines/job/index.ts';
import type { MasteryWord } from '../../diagnosis/mastery/index.ts';
import { say, sayWord } from '../../i18n/index.ts';
import type { SkillOnMap } from './learner-map.ts';

export function skillName(skill: Skill): string {
  return sayWord('job.skill', skill);
}

export function skillTitle(skill: Skill): string {
  return atStart(skillName(skill));
}

/** As a line begins. */
export function atStart(words: string): string {
  return `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`;
}

export function masteryName(word: MasteryWord): string {
  return sayWord('learner.word', word);
}

export function countWords(count: number): string {
  if (count === 0) return say('learner.results.none');
  return count === 1 ? say('learner.results.one') : say('learner.results.many', { count });
}

export function knownWords({ results, lastISO }: Pick<SkillOnMap, 'results' | 'lastISO'>): string {
  const count = countWords(results);
  return lastISO === null ? count : say('learner.known', { count, when: dayOf(lastISO) });
}

/** A day, its year only where it is another one than this. */
export function dayOf(atISO: string): string {
  const day = new Date(atISO);
  const year = day.getFullYear() === new Date().getFullYear() ? undefined : 'numeric';
  return day.toLocaleDateString(undefined, { day: 'numeric', month: 'short', year });
}
