import type { TimedAction } from '../engine/index.ts';
import type { Drill } from './drill-schema.ts';
import type { Job } from './job-schema.ts';

export interface FirstStart {
  /** On top of what people did before: heat is called for where nobody has touched the switch. */
  readonly actions: readonly TimedAction[];
  readonly untilS: number;
}

const LOOK_ROUND_S = 5;
/** Longer than any start of a plant from rest to modulation. */
const A_START_S = 360;

/** What a learner would be told of: the start that failed before the call, or the next one. */
export function firstStartOf(
  exercise: Pick<Job | Drill, 'arriveAt' | 'actions' | 'expect'>,
): FirstStart {
  const { arriveAt, actions, expect } = exercise;
  const touched = actions.some((action) => action.do === 'call-for-heat');
  if (touched) return { actions: [], untilS: Math.max(arriveAt, expect?.by ?? 0) };
  const t = arriveAt + LOOK_ROUND_S;
  return {
    actions: [{ t, type: 'call-for-heat', on: true }],
    untilS: expect?.by ?? t + A_START_S,
  };
}
