/** What each check at each moment that the start came to would be worth next. */
import {
  type Belief,
  gainBits,
  keyName,
  type Question,
  questionCost,
  questionMinutes,
  questionsOf,
  sharesOf,
  uncertaintyOf,
  WATCH_A_START,
} from '../../../diagnosis/index.ts';
import type { SeededPlant } from '../../evidence/seeded-plant.ts';
import type { QuizPlant } from '../../item/maker.ts';

export interface CheckWorth {
  readonly check: string;
  readonly moment: string;
  /** Of the atlas, those that the start came to. */
  readonly keys: readonly number[];
  /** Expected gain of all that it tells at that moment, bits. */
  readonly bits: number;
  /** Kept up through the whole start, where it can be; else the same. */
  readonly bitsInAll: number;
  /** With surcharges. */
  readonly cost: number;
  /** Without. */
  readonly minutes: number;
  readonly question: Question;
}

/** Worth less than this beside its minutes is not looked at. */
const LEAST_BITS = 0.3;
const HISTORY = 'history|';

/** By bits for the minute, the best first; none that was made, or that the start shows by itself. */
export function worthOfChecks(
  plant: QuizPlant,
  seeded: SeededPlant,
  belief: Belief,
  made: readonly string[],
): readonly CheckWorth[] {
  return allChecks(plant, seeded, belief, made)
    .filter(({ bits }) => bits >= LEAST_BITS)
    .sort((a, b) => b.bits / b.cost - a.bits / a.cost);
}

/** In the order of the atlas. */
export function allChecks(
  plant: QuizPlant,
  seeded: SeededPlant,
  belief: Belief,
  made: readonly string[],
): readonly CheckWorth[] {
  const { atlas, questions } = plant;
  const uncertainty = uncertaintyOf(atlas, sharesOf(belief));
  const momentsOf = momentQuestions(plant);
  const known = new Map<number, number>();
  const bitsOf = (question: Question): number => {
    const bits = known.get(question.split) ?? gainBits(uncertainty, question);
    known.set(question.split, bits);
    return bits;
  };
  const ofMoments = new Map<number, number>();
  return questions.flatMap((whole): CheckWorth[] => {
    const { check } = whole;
    if (check === WATCH_A_START || check === HISTORY || made.includes(check)) return [];
    const bitsInAll = bitsOf(whole);
    return (momentsOf.get(whole) ?? []).flatMap((question): CheckWorth[] => {
      const { moment, keys, split } = question;
      if (!keys.every((key) => isReached(plant, seeded, key))) return [];
      const bits = ofMoments.get(split) ?? gainBits(uncertainty, question);
      ofMoments.set(split, bits);
      const cost = questionCost(atlas, question);
      const minutes = questionMinutes(atlas, question);
      return [{ check, moment, keys, bits, bitsInAll, cost, minutes, question }];
    });
  });
}

function isReached({ atlas }: QuizPlant, { sample }: SeededPlant, key: number): boolean {
  const at = atlas.keys[key];
  return at !== undefined && sample.has(keyName(at.check, at.moment, at.aspect));
}

const byPlant = new WeakMap<QuizPlant, ReadonlyMap<Question, readonly Question[]>>();

/** Of each question about a whole start, the same at each of its moments. */
function momentQuestions(plant: QuizPlant): ReadonlyMap<Question, readonly Question[]> {
  const known = byPlant.get(plant);
  if (known !== undefined) return known;
  const { atlas, questions } = plant;
  const wholeOf = new Map(questions.flatMap((one) => one.keys.map((key) => [key, one] as const)));
  const made = new Map<Question, Question[]>();
  for (const one of questionsOf(atlas)) {
    const whole = wholeOf.get(one.keys[0] as number);
    if (whole !== undefined) made.set(whole, [...(made.get(whole) ?? []), one]);
  }
  byPlant.set(plant, made);
  return made;
}
