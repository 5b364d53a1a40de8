/** Checks that a beginner would think of, and that tell nothing of the causes that are left. */
import { type Belief, partsOfCheck, REDUNDANT_BITS, sharesOf } from '../../../diagnosis/index.ts';
import type { SeededPlant } from '../../evidence/seeded-plant.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { ofFamilies } from './of-families.ts';
import { readableKeys } from './readable.ts';
import type { SoFar } from './so-far.ts';
import { allChecks, type CheckWorth } from './worth.ts';

export interface IdleCheck extends CheckWorth {
  /** What it would be worth to whoever knows less: only how the start ended, or what kind of fault it is, bits. */
  readonly bitsBefore: number;
}

/** So much of the belief lets it read one and the same. */
const SAME_SHARE = 0.9;
/** Worth something to whoever knows less. */
const LEAST_BEFORE = 0.05;
/** A check of the same kind, or at the same moment, is the likelier mistake; bits. */
const SAME_KIND = 0.6;
const SAME_MOMENT = 0.3;
/** The key has so many times the value of each other. */
export const CLEARLY_BETTER = 3;

/** The likeliest mistakes first, one of each check; all read as all causes left would let them read. */
export function idleChecks(
  plant: QuizPlant,
  seeded: SeededPlant,
  soFar: SoFar,
  key: CheckWorth,
): readonly IdleCheck[] {
  const shares = sharesOf(soFar.belief);
  const bitsBy = (belief: Belief) =>
    new Map(allChecks(plant, seeded, belief, soFar.made).map((one) => [one.question, one.bits]));
  const inWords = bitsBy(soFar.inWords);
  const ofKind = bitsBy(ofFamilies(plant, soFar.standing));
  const { what } = partsOfCheck(key.check);
  const likeness = ({ check, moment, bitsBefore }: IdleCheck) =>
    bitsBefore +
    (partsOfCheck(check).what === what ? SAME_KIND : 0) +
    (moment === key.moment ? SAME_MOMENT : 0);
  const found = allChecks(plant, seeded, soFar.belief, soFar.made)
    .map((one) => ({
      ...one,
      bitsBefore: Math.max(inWords.get(one.question) ?? 0, ofKind.get(one.question) ?? 0),
    }))
    .filter(
      (one) =>
        one.check !== key.check &&
        one.bitsInAll <= REDUNDANT_BITS &&
        one.bits <= REDUNDANT_BITS &&
        one.bitsBefore >= LEAST_BEFORE &&
        key.bits / key.cost >= (CLEARLY_BETTER * one.bits) / one.cost &&
        readableKeys(plant, one).length > 0 &&
        readsAsAllWould(plant, seeded, shares, one),
    )
    .sort((a, b) => likeness(b) - likeness(a));
  const checks = new Set<string>();
  return found.filter(({ check }) => !checks.has(check) && checks.add(check));
}

/** The one answer that nearly all plants left would give, and this one gives it. */
export function readsAsAllWould(
  { atlas }: QuizPlant,
  { bins }: SeededPlant,
  shares: Float64Array,
  { question }: CheckWorth,
): boolean {
  const sums = new Float64Array(question.answers);
  const first = new Int32Array(question.answers).fill(-1);
  question.column.forEach((answer, p) => {
    sums[answer] = (sums[answer] as number) + (shares[p] as number);
    if ((first[answer] as number) < 0) first[answer] = p;
  });
  const most = sums.indexOf(Math.max(...sums));
  const one = first[most] as number;
  return (
    (sums[most] as number) >= SAME_SHARE &&
    question.keys.every((key) => atlas.keys[key]?.column[one] === bins[key])
  );
}
