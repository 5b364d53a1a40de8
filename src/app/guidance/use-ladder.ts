import { useState } from 'react';
import { HINT_RUNGS, type HintRung } from '../../../machines/job/index.ts';
import type { Advice } from '../../diagnosis/index.ts';
import { useExercise } from '../job/exercise-context.tsx';
import { useGuidance } from './guidance-context.tsx';
import { isLeftBehind, type Ladder, ladderAfter, rungsOf } from './ladder.ts';

/** The hint that stands now, and how much of it has been told. */
export interface LadderNow {
  /** Null where nothing is left to be told apart, or nothing is known yet. */
  readonly advice: Advice | null;
  /** What can be told has been told. */
  readonly spent: boolean;
  readonly rungs: readonly HintRung[];
  readonly leftBehind: boolean;
  climb(): void;
}

export function useLadder(): LadderNow {
  const { reasoning } = useGuidance();
  const { desk, take } = useExercise();
  const [before, setBefore] = useState<Ladder | null>(null);
  const ladder = ladderAfter(before, reasoning, desk);
  if (ladder !== before) setBefore(ladder);
  const rungs = rungsOf(ladder, desk);
  const advice = ladder?.advice ?? null;
  return {
    advice,
    spent: ladder !== null && advice === null,
    rungs,
    leftBehind: advice !== null && isLeftBehind(advice, desk.tools),
    climb() {
      const rung = HINT_RUNGS[rungs.length];
      if (rung !== undefined && advice !== null) take({ type: 'hint', rung });
    },
  };
}
