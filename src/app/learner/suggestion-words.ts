import type { Suggestion } from '../../diagnosis/mastery/index.ts';
import { say, sayWord, slugOf } from '../../i18n/index.ts';
import { exerciseTitle, jobOf } from '../library/exercises.ts';
import { hrefOf } from '../shell/route.ts';
import { skillName } from './skill-words.ts';

export function suggestionHref({ kind, id, guidance }: Suggestion): string {
  return hrefOf({ page: kind, id, ...(guidance === null ? {} : { guidance }) });
}

export function suggestionTitle({ kind, id }: Suggestion): string {
  return exerciseTitle(kind, id) ?? id;
}

/** What it is: kind, level, and the help that is suggested. */
export function suggestionFacts({ kind, id, guidance }: Suggestion): string {
  const level = kind === 'job' ? jobOf(id)?.level : undefined;
  return [
    sayWord('job.kind', kind),
    ...(level === undefined ? [] : [say('learner.next.level', { level })]),
    ...(guidance === null ? [] : [say(`learner.guidance.${guidance}`)]),
  ].join(' · ');
}

export function whyWords({ why, kind, skill }: Suggestion): string {
  const named = { skill: skillName(skill) };
  if (why === 'not tried') return say(`learner.why.not-tried.${kind}`, named);
  return say(`learner.why.${slugOf(why) as WhySlug}`, named);
}

type WhySlug = 'only-with-help' | 'little-known' | 'weakest' | 'without-help';
