import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  afterSeeing,
  ambiguityGroups,
  causeShares,
  costMinutes,
  entropyBits,
  gainBits,
  greedyQuestion,
  greedyValue,
  priorBelief,
  questionsOf,
  rankChecks,
  rankedSuspects,
  sharesOf,
  smallCaseOf,
  solveCase,
  suspectsBy,
  uncertaintyOf,
} from '../../src/diagnosis/index.ts';
import {
  bitsByDefinition,
  cheapestByTrying,
  gainByDefinition,
  particlesOf,
  seen,
  someRows,
  someSmallCase,
} from './small-particles.ts';

const SEED = { seed: 20261128 };

describe('belief', () => {
  it('begins with the prior, however many particles a cause has', () => {
    const particles = particlesOf([
      { fault: 'a', priorWeight: 3, plants: [[0], [0], [1], [1], [1]] },
      { fault: 'b', priorWeight: 1, plants: [[0]] },
    ]);
    const shares = causeShares(particles, sharesOf(priorBelief(particles)));
    expect(shares[0]).toBeCloseTo(0.75, 12);
  });

  it('follows the rule of agreement and surprise', () => {
    const particles = particlesOf([
      { fault: 'a', priorWeight: 1, plants: [[0]] },
      { fault: 'b', priorWeight: 1, plants: [[1]] },
      { fault: 'c', priorWeight: 2, plants: [[2]] },
    ]);
    const shares = causeShares(particles, sharesOf(seen(priorBelief(particles), particles, 0, 0)));
    // Weights 1·0.98, 1·0.01 and 2·0.01: two bins share what is left of a surprise.
    expect(shares[0]).toBeCloseTo(0.98 / 1.01, 12);
    expect(shares[2]).toBeCloseTo(0.02 / 1.01, 12);
  });

  it('does not depend on the order in which things were seen', () => {
    fc.assert(
      fc.property(someRows, (rows) => {
        const particles = particlesOf(rows);
        const all = particles.keys.map((_, key) => ({ key, bin: 0 }));
        const one = sharesOf(afterSeeing(priorBelief(particles), particles, all));
        const other = sharesOf(afterSeeing(priorBelief(particles), particles, all.toReversed()));
        one.forEach((share, p) => {
          expect(Math.abs(share - (other[p] ?? 0))).toBeLessThan(1e-12);
        });
      }),
      SEED,
    );
  });

  it('takes a reading that no particle has as no evidence for any', () => {
    const particles = particlesOf([
      { fault: 'a', priorWeight: 2, plants: [[0]] },
      { fault: 'b', priorWeight: 1, plants: [[1]] },
    ]);
    const before = priorBelief(particles);
    expect(seen(before, particles, 0, -1)).toEqual(before);
  });

  it('stays in order after ten thousand readings, where plain products would be nought', () => {
    const particles = particlesOf([
      { fault: 'a', priorWeight: 1, plants: [[0, 0]] },
      { fault: 'b', priorWeight: 1, plants: [[1, 1]] },
    ]);
    let belief = priorBelief(particles);
    const both = [
      { key: 0, bin: 0 },
      { key: 1, bin: 1 },
    ];
    for (let k = 0; k < 5000; k++) belief = afterSeeing(belief, particles, both);
    const even = sharesOf(belief);
    expect(even[0]).toBeCloseTo(0.5, 9);
    const told = sharesOf(seen(belief, particles, 0, 0));
    expect(told[0]).toBeCloseTo(0.98, 9);
    expect(Math.min(...told)).toBeGreaterThan(0);
  });

  it('evidence for a fault never lowers its rank when it had predicted it and its rivals had not', () => {
    fc.assert(
      fc.property(someRows, fc.nat(), fc.nat(), fc.nat(), (rows, who, what, before) => {
        const particles = particlesOf(rows);
        const cause = who % rows.length;
        const key = what % particles.keys.length;
        const bins = particles.keys[key]?.bins ?? [];
        const column = particles.keys[key]?.column ?? [];
        const own = [...column].filter((_, p) => particles.causeOf[p] === cause);
        const bin = own[0] as number;
        fc.pre(own.every((one) => one === bin));
        fc.pre([...column].every((one, p) => particles.causeOf[p] === cause || one !== bin));
        fc.pre(bins.length > 1);
        const earlier = { key: before % particles.keys.length, bin: before % 3 };
        const belief = afterSeeing(priorBelief(particles), particles, [earlier]);
        const rankIn = (at: typeof belief) => {
          const shares = causeShares(particles, sharesOf(at));
          return shares.filter((share) => share > (shares[cause] as number) * (1 + 1e-12)).length;
        };
        expect(rankIn(seen(belief, particles, key, bin))).toBeLessThanOrEqual(rankIn(belief));
      }),
      { ...SEED, numRuns: 300 },
    );
  });

  it('ranks suspects by fault and by what is mended', () => {
    const particles = particlesOf([
      { fault: 'valve coil open', priorWeight: 2, plants: [[0]] },
      { fault: 'fan stopped', priorWeight: 3, plants: [[0]] },
      { fault: 'valve stuck', priorWeight: 2, plants: [[0]] },
    ]);
    const suspects = rankedSuspects(particles, priorBelief(particles));
    expect(suspects.map(({ fault }) => fault)).toEqual([
      'fan stopped',
      'valve coil open',
      'valve stuck',
    ]);
    const parts = suspectsBy(suspects, (fault) => fault?.split(' ')[0] ?? null);
    expect(parts.map(({ name }) => name)).toEqual(['valve', 'fan']);
    expect(parts[0]?.share).toBeCloseTo(4 / 7, 12);
  });
});

describe('worth of a check', () => {
  it('is as by its definition, also where a check tells several things at once', () => {
    fc.assert(
      fc.property(someRows, fc.nat(), (rows, bin) => {
        const checks = (rows[0]?.plants[0] ?? []).map((_, k) => `check ${k % 2}`);
        const particles = particlesOf(rows, checks);
        const belief = seen(priorBelief(particles), particles, 0, bin % 3);
        const uncertainty = uncertaintyOf(particles, sharesOf(belief));
        for (const question of questionsOf(particles)) {
          const answerOf = (p: number) =>
            question.keys.map((key) => particles.keys[key]?.column[p]).join();
          const expected = question.answers < 2 ? 0 : gainByDefinition(particles, belief, answerOf);
          const bits = gainBits(uncertainty, question);
          // Sums of a few dozen terms of either sign, near 1 each.
          expect(Math.abs(bits - Math.max(0, expected))).toBeLessThan(1e-10);
        }
      }),
      { ...SEED, numRuns: 200 },
    );
  });

  it('is never more than there is to know', () => {
    fc.assert(
      fc.property(someRows, (rows) => {
        const particles = particlesOf(rows);
        const shares = sharesOf(priorBelief(particles));
        const all = rankChecks(particles, priorBelief(particles), questionsOf(particles), () => 1);
        const bits = entropyBits(causeShares(particles, shares));
        expect(bits).toBeCloseTo(bitsByDefinition(causeShares(particles, shares)), 12);
        for (const one of all) expect(one.bits).toBeLessThanOrEqual(bits + 1e-12);
      }),
      SEED,
    );
  });

  it('is set against what it costs', () => {
    const particles = particlesOf([
      { fault: 'a', priorWeight: 1, plants: [[0, 0]] },
      { fault: 'b', priorWeight: 1, plants: [[0, 1]] },
      { fault: 'c', priorWeight: 1, plants: [[1, 2]] },
    ]);
    const costOf = ({ check }: { check: string }) => (check === 'check 1' ? 40 : 2);
    const ranked = rankChecks(particles, priorBelief(particles), questionsOf(particles), costOf);
    expect(ranked.map(({ question }) => question.check)).toEqual(['check 0', 'check 1']);
    expect(ranked[1]?.bits).toBeGreaterThan(ranked[0]?.bits ?? 0);
  });

  it('costs more where something is opened, someone may be hurt, one waits or a part is used', () => {
    const look = { minutes: 2, invasive: false, risk: 'none' } as const;
    expect(costMinutes(look)).toBe(2);
    expect(costMinutes({ ...look, invasive: true })).toBeGreaterThan(2);
    expect(costMinutes({ ...look, risk: 'live parts' })).toBeGreaterThan(2);
    expect(costMinutes(look, 3)).toBe(5);
    expect(costMinutes(look, 0, 0.5)).toBe(32);
  });
});

describe('policy', () => {
  const whole = ({ weights }: { weights: readonly number[] }) => [...weights.keys()];

  it('the exact optimum is that of trying every order of questions', () => {
    fc.assert(
      fc.property(someSmallCase, (small) => {
        const optimum = solveCase(small);
        expect(optimum?.value(whole(small))).toBeCloseTo(cheapestByTrying(small, whole(small)), 9);
      }),
      { ...SEED, numRuns: 300 },
    );
  });

  it('its best question is worth its value, and no other is worth more', () => {
    fc.assert(
      fc.property(someSmallCase, (small) => {
        const optimum = solveCase(small);
        if (optimum === null) throw new Error('too large for a test');
        const value = optimum.value(whole(small));
        const best = optimum.best(whole(small));
        if (best === null) {
          expect(value).toBe(0);
          return;
        }
        expect(optimum.valueAfter(whole(small), best)).toBeCloseTo(value, 9);
        small.questions.forEach((_, q) => {
          expect(optimum.valueAfter(whole(small), q)).toBeGreaterThan(value - 1e-9);
        });
      }),
      { ...SEED, numRuns: 200 },
    );
  });

  it('greedy is never better than the optimum, and within a tenth of it on the whole', () => {
    const sums = { greedy: 0, optimum: 0 };
    fc.assert(
      fc.property(someSmallCase, (small) => {
        const greedy = greedyValue(small);
        const optimum = solveCase(small)?.value(whole(small)) ?? Number.NaN;
        expect(greedy).toBeGreaterThan(optimum - 1e-9);
        sums.greedy += greedy;
        sums.optimum += optimum;
      }),
      { ...SEED, numRuns: 400 },
    );
    expect(sums.greedy / sums.optimum).toBeLessThan(1.1);
  });

  it('greedy asks nothing where no question tells two causes apart', () => {
    const small = {
      weights: [0.5, 0.5],
      causeOf: [0, 0],
      questions: [{ answers: [0, 1], cost: 1, place: 0 }],
    };
    expect(greedyQuestion(small, [0, 1])).toBeNull();
  });

  it('a small case is made of the questions worth asking and the plants that are still likely', () => {
    const particles = particlesOf([
      { fault: 'a', priorWeight: 1, plants: [[0, 0, 0]] },
      { fault: 'b', priorWeight: 1, plants: [[0, 1, 1]] },
      {
        fault: 'c',
        priorWeight: 1,
        plants: [
          [1, 2, 2],
          [1, 2, 2],
        ],
      },
    ]);
    const questions = questionsOf(particles);
    let belief = priorBelief(particles);
    const before = smallCaseOf(particles, belief, questions, ({ check }) =>
      check === 'check 1' ? 5 : 1,
    );
    // Two plants of c are alike; check 1 splits as check 2 does, and costs more.
    expect(before?.causeOf).toEqual([0, 1, 2]);
    expect(before?.weights[2]).toBeCloseTo(1 / 3, 9);
    expect(before?.questions.map(({ place }) => place)).toEqual([2, 0]);
    for (let k = 0; k < 3; k++) belief = seen(belief, particles, 0, 0);
    const after = smallCaseOf(particles, belief, questions, () => 1);
    expect(after?.causeOf).toEqual([0, 1]);
  });
});

describe('ambiguity', () => {
  const particles = particlesOf([
    {
      fault: 'a',
      priorWeight: 1,
      plants: [
        [0, 0],
        [0, 1],
      ],
    },
    {
      fault: 'b',
      priorWeight: 1,
      plants: [
        [0, 0],
        [0, 1],
      ],
    },
    {
      fault: 'c',
      priorWeight: 1,
      plants: [
        [1, 0],
        [1, 1],
      ],
    },
  ]);

  it('holds those together that read alike everywhere', () => {
    expect(ambiguityGroups(particles)).toEqual([[0, 1], [2]]);
  });

  it('grows when a check is not permitted', () => {
    expect(ambiguityGroups(particles, (key) => key === 1)).toEqual([[0, 1, 2]]);
  });

  it('does not take a cause for another because one odd plant of it reads the same', () => {
    const odd = particlesOf([
      { fault: 'a', priorWeight: 1, plants: [[0], [0], [0], [1]] },
      { fault: 'b', priorWeight: 1, plants: [[1], [1]] },
    ]);
    expect(ambiguityGroups(odd)).toEqual([[0], [1]]);
  });
});
