/** Small made-up cases, and the definitions they are held to, written out at length. */
import fc from 'fast-check';
import {
  afterSeeing,
  type Belief,
  causeShares,
  type ObservationKey,
  type Particles,
  type SmallCase,
  SURPRISE,
  sharesOf,
} from '../../src/diagnosis/index.ts';

export interface Row {
  readonly fault: string;
  readonly priorWeight: number;
  /** One list of bins a particle. */
  readonly plants: readonly (readonly number[])[];
}

/** Each key is a check of its own unless `checks` says which belong together. */
export function particlesOf(rows: readonly Row[], checks?: readonly string[]): Particles {
  const plants = rows.flatMap(({ plants }) => plants);
  const width = plants[0]?.length ?? 0;
  const keys = Array.from({ length: width }, (_, k): ObservationKey => {
    const column = Uint8Array.from(plants, (plant) => plant[k] as number);
    const bins = Array.from({ length: Math.max(...column) + 1 }, (_, b) => `bin ${b}`);
    return { check: checks?.[k] ?? `check ${k}`, moment: 'lockout', aspect: `${k}`, bins, column };
  });
  return {
    causes: rows.map(({ fault, priorWeight }) => ({ fault, priorWeight })),
    causeOf: Uint16Array.from(rows.flatMap(({ plants }, cause) => plants.map(() => cause))),
    keys,
  };
}

export const someRows: fc.Arbitrary<readonly Row[]> = fc
  .tuple(fc.integer({ min: 2, max: 5 }), fc.integer({ min: 1, max: 5 }))
  .chain(([causes, keys]) =>
    fc.tuple(
      ...Array.from({ length: causes }, (_, cause) =>
        fc.record({
          fault: fc.constant(`fault ${cause}`),
          priorWeight: fc.integer({ min: 1, max: 9 }),
          plants: fc.array(
            fc.array(fc.integer({ min: 0, max: 2 }), { minLength: keys, maxLength: keys }),
            { minLength: 1, maxLength: 4 },
          ),
        }),
      ),
    ),
  );

export const someSmallCase: fc.Arbitrary<SmallCase> = fc
  .tuple(fc.integer({ min: 2, max: 6 }), fc.integer({ min: 1, max: 5 }))
  .chain(([kinds, questions]) =>
    fc.record({
      weights: fc
        .array(fc.integer({ min: 1, max: 9 }), { minLength: kinds, maxLength: kinds })
        .map((all) => all.map((one) => one / all.reduce((a, b) => a + b, 0))),
      causeOf: fc.array(fc.integer({ min: 0, max: 4 }), { minLength: kinds, maxLength: kinds }),
      questions: fc
        .array(
          fc.record({
            answers: fc.array(fc.integer({ min: 0, max: 2 }), {
              minLength: kinds,
              maxLength: kinds,
            }),
            cost: fc.integer({ min: 1, max: 20 }),
          }),
          { minLength: questions, maxLength: questions },
        )
        .map((all) => all.map((one, place) => ({ ...one, place }))),
    }),
  );

/** Expected gain from its definition: how uncertain before, less how uncertain after, answer by answer. */
export function gainByDefinition(
  particles: Particles,
  belief: Belief,
  answerOf: (particle: number) => string,
): number {
  const shares = sharesOf(belief);
  const answers = [...new Set(Array.from(particles.causeOf, (_, p) => answerOf(p)))];
  const likelihood = (p: number, answer: string) =>
    answerOf(p) === answer ? 1 - SURPRISE : SURPRISE / (answers.length - 1);
  const after = answers.map((answer) => {
    const joint = shares.map((share, p) => share * likelihood(p, answer));
    const chance = joint.reduce((a, b) => a + b, 0);
    return (
      chance *
      bitsByDefinition(
        causeShares(
          particles,
          joint.map((one) => one / chance),
        ),
      )
    );
  });
  return bitsByDefinition(causeShares(particles, shares)) - after.reduce((a, b) => a + b, 0);
}

export function bitsByDefinition(shares: Iterable<number>): number {
  let bits = 0;
  for (const share of shares) if (share > 0) bits -= share * Math.log2(share);
  return bits;
}

/** Cheapest expected way to the end, by trying every order of questions on every set of kinds. */
export function cheapestByTrying(
  small: SmallCase,
  kinds: readonly number[],
  unasked: readonly number[] = [...small.questions.keys()],
): number {
  const { weights, causeOf, questions } = small;
  const canBeTold = kinds.some((a) =>
    kinds.some(
      (b) =>
        causeOf[a] !== causeOf[b] && questions.some(({ answers }) => answers[a] !== answers[b]),
    ),
  );
  if (!canBeTold) return 0;
  const all = kinds.reduce((sum, kind) => sum + (weights[kind] ?? 0), 0);
  let least = Number.POSITIVE_INFINITY;
  for (const q of unasked) {
    const { answers = [], cost = 0 } = questions[q] ?? {};
    let value = cost;
    for (const answer of new Set(kinds.map((kind) => answers[kind]))) {
      const left = kinds.filter((kind) => answers[kind] === answer);
      const share = left.reduce((sum, kind) => sum + (weights[kind] ?? 0), 0) / all;
      const rest = unasked.filter((other) => other !== q);
      value += share * cheapestByTrying(small, left, rest);
    }
    least = Math.min(least, value);
  }
  return least;
}

export function seen(belief: Belief, particles: Particles, key: number, bin: number): Belief {
  return afterSeeing(belief, particles, [{ key, bin }]);
}
