import { type DeskEntry, NO_FAULT } from '../../../machines/job/index.ts';
import type { AnswerCause, ExerciseAnswer } from '../../scenario/index.ts';
import type { ClaimVerdict } from './verdict.ts';

type ClaimEntry = Extract<DeskEntry, { type: 'claim' }>;

/** Claims that stand at the end: those withdrawn are gone. */
export function standingClaims(desk: readonly DeskEntry[]): readonly ClaimEntry[] {
  const claims: ClaimEntry[] = [];
  for (const entry of desk) {
    if (entry.type === 'claim') claims.push(entry);
    if (entry.type === 'withdraw') claims.pop();
  }
  return claims;
}

/** Each claim, right or wrong, and the parts of causes that none of them named. */
export function judgeClaims(
  answer: ExerciseAnswer,
  claims: readonly Pick<ClaimEntry, 'part' | 'why'>[],
): { readonly claims: ClaimVerdict[]; readonly missed: string[] } {
  const judged = claims.map((claim) => judgeClaim(answer, claim));
  return { claims: judged, missed: missedOf(answer, claims) };
}

function judgeClaim(
  { causes, accepted }: ExerciseAnswer,
  { part, why }: Pick<ClaimEntry, 'part' | 'why'>,
): ClaimVerdict {
  const supported = why.length > 0;
  if (causes.length === 0) {
    return { part, right: part === NO_FAULT, supported, another: false, fault: null };
  }
  const itself = causes.find((cause) => cause.part === part || cause.component === part);
  const found = itself ?? naming(causes, part)[0] ?? naming(accepted, part)[0];
  return {
    part,
    right: found !== undefined,
    supported,
    another: itself === undefined && found !== undefined,
    fault: found?.fault ?? null,
  };
}

/** A claim that is right only by an accepted fault stands for the first cause that nothing else names. */
function missedOf(
  { causes, accepted, each }: ExerciseAnswer,
  claims: readonly Pick<ClaimEntry, 'part'>[],
): string[] {
  if (causes.length === 0) return claims.some(({ part }) => part === NO_FAULT) ? [] : [NO_FAULT];
  const unnamed = causes.filter(({ parts }) => !claims.some(({ part }) => parts.includes(part)));
  const instead = claims.filter(
    ({ part }) => naming(causes, part).length === 0 && naming(accepted, part).length > 0,
  );
  const found = causes.length - unnamed.length + instead.length;
  const missed = !each && found > 0 ? [] : unnamed.slice(instead.length);
  return [...new Set(missed.map(({ part }) => part))];
}

function naming(causes: readonly AnswerCause[], part: string): readonly AnswerCause[] {
  return causes.filter(({ parts }) => parts.includes(part));
}
