/** The parts of a result in words: how the cause was found, the way, conduct, help. */
import { say, slugOf } from '../../i18n/index.ts';
import type { KeptResult } from './result-record.ts';

/** From these shares on a way is called straight, or one with detours. */
const STRAIGHT = 0.75;
const DETOURS = 0.45;

export function foundWords({ kind, outcome, parts }: KeptResult): string {
  const { found } = parts;
  if (kind === 'lesson') return say('learner.found.lesson', { percent: percent(outcome) });
  if (kind !== 'job') return say(outcome >= 0.5 ? 'learner.found.right' : 'learner.found.wrong');
  if (found === null) return say('learner.found.unknown');
  return say(`learner.found.${slugOf(found) as FoundSlug}`);
}

/** Empty where no way is known. */
export function pathWords({ parts: { pathScore } }: KeptResult): string {
  if (pathScore === null) return '';
  const word = pathScore >= STRAIGHT ? 'straight' : pathScore >= DETOURS ? 'detours' : 'long';
  return say(`learner.path.${word}`, { percent: percent(pathScore) });
}

export function conductWords({ conduct }: KeptResult): string {
  return conduct === null ? '' : say(`learner.conduct.${conduct}`);
}

export function helpWords({ guidance, hints }: KeptResult): string {
  if (guidance === null) return '';
  const word = say(`learner.guidance.${guidance}`);
  if (hints === 0) return word;
  return hints === 1
    ? say('learner.help.hints-one', { guidance: word })
    : say('learner.help.hints', { guidance: word, count: hints });
}

function percent(share: number): number {
  return Math.round(100 * share);
}

type FoundSlug = 'by-readings' | 'by-trying-parts' | 'not-found';
