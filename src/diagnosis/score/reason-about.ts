import { entropyBits } from '../reasoning/gain.ts';
import { adviceOn } from './advice.ts';
import { calibrationOf } from './calibration.ts';
import type { Case } from './case.ts';
import type { Decision } from './decision.ts';
import { decisiveMoments } from './decisive-moments.ts';
import { knowingAfter, knowingNothing } from './follow-belief.ts';
import { foundWay } from './found-way.ts';
import { idealWay } from './ideal-way.ts';
import { judgeClaim } from './judge-claim.ts';
import { judgeDecision } from './judge-decision.ts';
import type { JudgedClaim, JudgedDecision, Reasoning } from './reasoning.ts';
import { costToKnow } from './regret.ts';
import { boardOf } from './suspects-board.ts';
import { type View, viewOf } from './view-of-knowing.ts';
import { arrivalOf, type Step } from './way-so-far.ts';

/** No case is easier than this, minutes. */
const LEAST_BEST_MINUTES = 5;

/** How someone went about finding the cause of a case, each decision against what was known by then. */
export function reasonAbout(theCase: Case, decisions: readonly Decision[]): Reasoning {
  const steps = stepsOf(theCase, decisions);
  const judged = steps.map((_, place) => judgeDecision(theCase, steps, place));
  const claims = steps.flatMap(({ decision, before }, place): JudgedClaim[] =>
    decision.kind === 'claim' ? [judgeClaim(steps.slice(0, place), before, decision)] : [],
  );
  const last = steps.at(-1)?.after ?? viewOf(theCase, knowingNothing(theCase));
  const { ideal, alike } = idealWay(theCase);
  return {
    decisions: judged,
    found: foundWay(theCase, steps, standing(steps, claims)),
    path: pathOf(judged, bestMinutes(arrivalOf(steps) ?? last, ideal)),
    claims,
    calibration: calibrationOf(steps),
    board: boardOf(last, suspectedIn(decisions)),
    next: adviceOn(last),
    moments: decisiveMoments(
      judged.map((one, i) => ({ judged: one, learnt: learntBy(steps[i] as Step) })),
    ),
    ideal,
    alike,
  };
}

function stepsOf(theCase: Case, decisions: readonly Decision[]): readonly Step[] {
  let knowing = knowingNothing(theCase);
  let view = viewOf(theCase, knowing);
  return decisions.map((decision) => {
    const before = view;
    knowing = knowingAfter(theCase, knowing, decision);
    if (knowing !== before.knowing) view = viewOf(theCase, knowing);
    return { decision, before, after: view };
  });
}

function bestMinutes(arrived: View, ideal: Reasoning['ideal']): number {
  const way = ideal.reduce((sum, { minutes }) => sum + minutes, 0);
  return Math.max(LEAST_BEST_MINUTES, way, costToKnow(arrived));
}

function pathOf(judged: readonly JudgedDecision[], bestMinutes: number): Reasoning['path'] {
  const regretMinutes = judged.reduce((sum, one) => sum + one.regretMinutes, 0);
  return {
    score: bestMinutes / (bestMinutes + regretMinutes),
    bestMinutes,
    regretMinutes,
    redundant: judged.filter(({ redundant }) => redundant).length,
    premature: judged.filter(({ premature }) => premature).length,
  };
}

/** Who withdraws takes back the last claim that stands. */
function standing(steps: readonly Step[], claims: readonly JudgedClaim[]): readonly JudgedClaim[] {
  const all = [...claims];
  const left: JudgedClaim[] = [];
  for (const { decision } of steps) {
    if (decision.kind === 'claim') {
      const claim = all.shift();
      if (claim !== undefined) left.push(claim);
    }
    if (decision.kind === 'withdraw') left.pop();
  }
  return left;
}

function suspectedIn(decisions: readonly Decision[]): readonly string[] {
  return decisions.reduce<readonly string[]>(
    (last, decision) => (decision.kind === 'suspect' ? decision.ranked : last),
    [],
  );
}

function learntBy({ before, after }: Step): number {
  return entropyBits(before.ofCause) - entropyBits(after.ofCause);
}
