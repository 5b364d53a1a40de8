import { nextUniform, type RandomState } from '../../../numeric/index.ts';
import type { PassedStep, TakenStart } from './start-record.ts';

const CALL_S = 60;
/** Steps that take less show nothing, s. */
const SHORTEST_S = 1.8;
/** Own weights: what is not as ever is asked about more often. */
const STRANGE = 8;
const AS_EVER = 1;

/** Steps that have come to an end after the call, in the order in which they are asked about. */
export function placesToAsk(
  { record: { passed } }: TakenStart,
  chance: RandomState,
): readonly number[] {
  return passed
    .flatMap((one, place) =>
      one.fromS >= CALL_S - 1 && one.step !== 'lockout' && one.toS - one.fromS >= SHORTEST_S
        ? [{ place, at: nextUniform(chance) / (isStrange(passed, place) ? STRANGE : AS_EVER) }]
        : [],
    )
    .sort((a, b) => a.at - b.at)
    .map(({ place }) => place);
}

/** It ends in lockout, or in a step that had been left before, or on the way down. */
export function isStrange(passed: readonly PassedStep[], place: number): boolean {
  const next = passed[place]?.next;
  if (next === undefined) return false;
  const isBack = passed.slice(0, place).some(({ step }) => step === next.step);
  return next.cause !== null || isBack || next.step === 'post-purge';
}
