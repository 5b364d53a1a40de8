import { partsOf } from '../../faults/index.ts';
import { nextUniform, type RandomState } from '../../numeric/index.ts';
import { checkName } from '../observe/reading.ts';
import { afterSeeing, causeShares, priorBelief, sharesOf } from '../reasoning/belief.ts';
import type { Case } from '../score/case.ts';
import type { Decision, DecisionAct } from '../score/decision.ts';
import type { Learner } from './learner.ts';
import { endedBy, type PlantNow, plantNow } from './plant-now.ts';
import { partsClaimed } from './work-on.ts';

const MOST_PARTS = 8;
const A_PART_S = 1800;
const HISTORY = checkName('history');

/**
 * No checks: new parts, the likelier ones by the words of the lockout sooner, and a start after each,
 * until it runs.
 */
export const partSwapper: Learner = { name: 'part-swapper', byChance: true, goThrough };

function goThrough(theCase: Case, chance: RandomState): readonly Decision[] {
  const before = plantNow(theCase, []);
  const decisions: Decision[] = [];
  let t = 0;
  const decide = (act: DecisionAct, seconds = 1) => {
    decisions.push({ t, ...act });
    t += seconds;
  };
  decide({ kind: 'arrive', seen: before.onArrival });
  let suspects = guesses(theCase, before);
  let mended: readonly string[] = [];
  for (let swapped = 0; swapped < MOST_PARTS; swapped++) {
    const part = drawn(suspects, chance);
    if (part === null) break;
    suspects = suspects.filter((one) => one.part !== part);
    const way = swapOf(theCase, part);
    if (way === null) continue;
    decide({ kind: 'work', part, way }, A_PART_S);
    mended = [...mended, ...endedBy(theCase, { part, way })];
    const after = plantNow(theCase, [...new Set(mended)]);
    decide({ kind: 'watch', seen: after.watched }, A_PART_S);
    const isLast = swapped === MOST_PARTS - 1;
    if (!after.starts && !isLast) continue;
    decide({ kind: 'claim', part, why: [] });
    break;
  }
  return decisions;
}

interface Guess {
  readonly part: string;
  readonly weight: number;
}

/** How often each part fails where the panel says this. */
function guesses(theCase: Case, { asks }: PlantNow): readonly Guess[] {
  const { atlas } = theCase;
  const told = asks
    .filter(({ question }) => question.check === HISTORY)
    .flatMap(({ seen }) => seen);
  const ofCause = causeShares(atlas, sharesOf(afterSeeing(priorBelief(atlas), atlas, told)));
  const parts = partsClaimed(theCase);
  const weights = new Map<string, number>();
  atlas.causes.forEach(({ fault }, c) => {
    if (fault === null) return;
    const part = parts[c] as string;
    weights.set(part, (weights.get(part) ?? 0) + (ofCause[c] as number));
  });
  return [...weights].map(([part, weight]) => ({ part, weight }));
}

function drawn(guessed: readonly Guess[], chance: RandomState): string | null {
  const all = guessed.reduce((sum, { weight }) => sum + weight, 0);
  let at = nextUniform(chance) * all;
  for (const { part, weight } of guessed) {
    at -= weight;
    if (at <= 0) return part;
  }
  return guessed.at(-1)?.part ?? null;
}

/** A new one where there is such a thing, else whatever is done to it first. */
function swapOf({ plant }: Case, part: string) {
  const ways = partsOf(plant).find((one) => one.part === part)?.ways ?? [];
  return ways.includes('replace') ? 'replace' : (ways[0] ?? null);
}
