import { bitsLeft, type SmallCase, separates, splitBy, weightOf } from './small-case.ts';

/** The question with the largest gain for its cost; null where none tells two causes apart. */
export function greedyQuestion(small: SmallCase, kinds: readonly number[]): number | null {
  const before = bitsLeft(small, kinds);
  const all = weightOf(small, kinds);
  let best: number | null = null;
  let most = 0;
  small.questions.forEach((question, i) => {
    if (!separates(small, question, kinds)) return;
    const after = splitBy(question, kinds).reduce(
      (bits, part) => bits + (weightOf(small, part) / all) * bitsLeft(small, part),
      0,
    );
    const worth = (before - after) / question.cost;
    if (best === null || worth > most) {
      most = worth;
      best = i;
    }
  });
  return best;
}

/** What is to be expected of asking like that to the end, minutes. */
export function greedyValue(
  small: SmallCase,
  kinds: readonly number[] = [...small.weights.keys()],
): number {
  const best = greedyQuestion(small, kinds);
  if (best === null) return 0;
  const question = small.questions[best] as SmallCase['questions'][number];
  const all = weightOf(small, kinds);
  return splitBy(question, kinds).reduce(
    (value, part) => value + (weightOf(small, part) / all) * greedyValue(small, part),
    question.cost,
  );
}
