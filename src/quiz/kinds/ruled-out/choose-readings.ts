/** One reading that rules a cause out, and two of the same kind that do not. */

import type { Belief } from '../../../diagnosis/index.ts';
import type { RandomState } from '../../../numeric/index.ts';
import { shuffled } from '../../../numeric/index.ts';
import { causeSharesOf } from '../../evidence/belief-of.ts';
import type { SeededPlant } from '../../evidence/seeded-plant.ts';
import type { QuizPlant, Rejection } from '../../item/maker.ts';
import { kindOfReading, type ReadingOn, readingsOn, shareAfterAll } from './readings-on.ts';

export interface ChosenReadings {
  readonly key: ReadingOn;
  readonly others: readonly ReadingOn[];
}

/** What is left of a cause that is ruled out, and by how much it fell. */
export const RULED_OUT = 0.05;
export const TENFOLD = 10;
/** What is left, of what it was, of one that is not. */
export const KEPT = 0.8;
/** So many of its plants would read the same, and so few. */
const ALIKE = 0.7;
const UNLIKE = 0.1;
/** Own weights of what makes a reading look as if it mattered; the last for each share of plants that differ. */
const STRANGE = 0.5;
const SAME_MOMENT = 0.3;
const TELLING = 4;

export function chooseReadings(
  plant: QuizPlant,
  seeded: SeededPlant,
  belief: Belief,
  cause: number,
  chance: RandomState,
): ChosenReadings | Rejection {
  const before = causeSharesOf(plant, belief)[cause] as number;
  const all = readingsOn(plant, seeded, belief, cause);
  const inAll = (one: ReadingOn) => shareAfterAll(plant, seeded, belief, cause, one);
  const isOut = (share: number) => share <= RULED_OUT && share <= before / TENFOLD;
  const out = all.filter(({ after, alike }) => isOut(after) && alike <= UNLIKE);
  const kept = all.filter(({ after, alike }) => after >= KEPT * before && alike >= ALIKE);
  if (out.length === 0) return 'key not proved';
  // What says the answer itself comes last, what is strange first.
  const rank = (one: ReadingOn) => (one.saysIt ? -2 : 0) + (one.strange ? 1 : 0);
  const drawn = shuffled(out, chance).sort((a, b) => rank(b) - rank(a));
  const checks = new Set<string>();
  for (const key of drawn) {
    if (checks.has(key.check) || checks.size >= MOST_KEYS) continue;
    checks.add(key.check);
    if (!isOut(inAll(key))) continue;
    const likeness = (one: ReadingOn) =>
      (one.strange ? STRANGE : 0) +
      (one.moment === key.moment ? SAME_MOMENT : 0) +
      Math.min(1, TELLING * one.telling);
    const alike = shuffled(
      kept.filter((one) => one.check !== key.check && kindOfReading(one) === kindOfReading(key)),
      chance,
    ).sort((a, b) => likeness(b) - likeness(a));
    const others: ReadingOn[] = [];
    for (const one of alike) {
      if (others.length === 2) break;
      if (others.some(({ check }) => check === one.check)) continue;
      if (inAll(one) >= KEPT * before) others.push(one);
    }
    if (others.length === 2) return { key, others };
  }
  return 'too few neighbours';
}
const MOST_KEYS = 8;
