import { NO_FAULT } from '../../../machines/job/index.ts';
import type { Case } from './case.ts';
import { tablesOf } from './case-tables.ts';
import { FOUND_WAYS, type FoundWay, type JudgedClaim } from './reasoning.ts';
import { isSupported } from './support.ts';
import { arrivalOf, type Step, viewByReadings } from './way-so-far.ts';

/**
 * How the cause was come by: named or mended, and before that shown by readings or not. Where there are
 * several, the worst of them counts.
 *
 * @param claims those that stand at the end
 */
export function foundWay(
  theCase: Case,
  steps: readonly Step[],
  claims: readonly JudgedClaim[],
): FoundWay {
  const { own } = theCase;
  const ways =
    own.length === 0
      ? [wayOf(theCase, steps, claims, null)]
      : own.map((fault) => wayOf(theCase, steps, claims, fault));
  return FOUND_WAYS[Math.max(...ways.map((way) => FOUND_WAYS.indexOf(way)))] ?? 'not found';
}

function wayOf(
  theCase: Case,
  steps: readonly Step[],
  claims: readonly JudgedClaim[],
  fault: string | null,
): FoundWay {
  const { parts, groupOf } = tablesOf(theCase);
  const cause = theCase.atlas.causes.findIndex((one) => one.fault === fault);
  const group = cause < 0 ? [] : (groupOf()[cause] ?? [cause]);
  const right = new Set([
    ...(fault === null ? [NO_FAULT] : []),
    ...group.flatMap((one) => parts.names[one] ?? []),
  ]);
  const named = claims.filter(({ part }) => right.has(part));
  if (named.some(({ supported }) => supported)) return 'by readings';
  const mended = steps.findIndex(
    ({ decision }) =>
      decision.kind === 'work' && parts.endedBy(decision.part, decision.way).includes(cause),
  );
  const step = steps[mended];
  if (step?.decision.kind === 'work') {
    const { part } = step.decision;
    const view = viewByReadings(steps.slice(0, mended), step.before, part);
    if (isSupported(view, arrivalOf(steps) ?? view, part)) return 'by readings';
  }
  return named.length > 0 || step !== undefined ? 'by trying parts' : 'not found';
}
